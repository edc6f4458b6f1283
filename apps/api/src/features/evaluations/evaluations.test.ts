import { evaluationSchema, type Evaluation } from '@evenbore/contract'
import request from 'supertest'
import { v7 } from 'uuid'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { testApp, testChain, testJob, testService, type TestChain, type TestJob, type TestService } from '../../../../../tests/support/index.ts'
import { noteJob } from './notes.ts'

let service: TestService
let chain: TestChain
const HOT = { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 8 }
const dry = (cylinder: number, value: number) => ({ test: 'compression', cylinder, pressure: { value, unit: 'psi' } })
const asTechnician = () => ({ authorization: `Bearer ${chain.mill.technician.token}` })
const get = (path: string) => request(service.server).get(path).set(asTechnician())
const post = (path: string, body: object) => request(service.server).post(path).set(asTechnician()).send(body)

/** A job with a session of dry readings, in the order of the cylinders. */
async function jobWith(values: readonly number[]): Promise<{ job: TestJob; session: string; readings: string[] }> {
  const job = await testJob(service, chain.mill)
  const session = (await post(`/v1/jobs/${job.id}/sessions`, { conditions: HOT, gauge: job.gauge })).body.id as string
  const readings: string[] = []
  for (const [at, value] of values.entries()) readings.push(await keep(session, dry(at + 1, value)))
  return { job, session, readings }
}

async function keep(session: string, reading: object, more: object = {}): Promise<string> {
  const id = v7()
  const answer = await request(service.server).put(`/v1/sessions/${session}/readings/${id}`).set(asTechnician()).send({ reading, takenAt: new Date().toISOString(), ...more })
  expect(answer.status).toBe(201)
  return id
}

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
})
afterAll(() => service.close())

test('a job is evaluated on its current readings, with its gauge and the air of its garage', async () => {
  const { job, session, readings } = await jobWith([155, 160, 140, 145])
  const { body } = await get(`/v1/jobs/${job.id}/evaluation`)
  expect(body.readingIds).toEqual(readings)
  expect(body.case.sessions[session]).toMatchObject({ conditions: { altitudeM: 120 }, gauge: { accuracyClass: 1.6 } })
  // The trade's own case: (160 - 140) / 160 = 12.5 percent, more than a tenth. Common practice, no source.
  expect(body.evaluation.consistency).toMatchObject({ session, spreadPercent: 12.5, asRead: 'outside' })
  expect(body.evaluation.next.length).toBeGreaterThan(0)
  await keep(session, dry(3, 152), { replaces: readings[2], reason: 'adaptor was not seated' })
  const later = await get(`/v1/jobs/${job.id}/evaluation?ranking=false`)
  expect(later.body.readingIds).not.toContain(readings[2])
  expect(later.body.evaluation).toMatchObject({ consistency: { spreadPercent: 9.375, asRead: 'inside' }, next: [] })
})

test('the trail keeps, behind each reading, what the model made of the case with it', async () => {
  const { job, session, readings } = await jobWith([155, 160])
  await noteJob(service.database, job.id)
  const third = await keep(session, dry(3, 120))
  await noteJob(service.database, job.id)
  expect(await noteJob(service.database, job.id)).toBe(false)
  const { body } = await get(`/v1/jobs/${job.id}/trail`)
  const notes = body.items.filter(({ kind }: { kind: string }) => kind === 'evaluation')
  expect(notes.flatMap(({ body: note }: { body: { readings: string[] } }) => note.readings)).toEqual([...readings, third])
  expect(notes.at(-1)).toMatchObject({ actor: { kind: 'model' }, body: { summary: { consistency: { spreadPercent: expect.closeTo(25, 9), asRead: 'outside' } } } })
  expect(notes.at(-1).body.summary.cylinders).toHaveLength(4)
  expect((await get(`/v1/engines/${job.engine}/trail/check`)).body.whole).toBe(true)
})

test('notes are written by themselves soon after a reading', async () => {
  const { job } = await jobWith([155])
  await expect.poll(async () => (await get(`/v1/jobs/${job.id}/trail`)).body.items.map(({ kind }: { kind: string }) => kind), { timeout: 45_000 }).toContain('evaluation')
})

test('a suggestion is taken or declined, and what was shown then is kept', async () => {
  const { job } = await jobWith([155, 160, 140, 145])
  const evaluation = (await get(`/v1/jobs/${job.id}/evaluation`)).body.evaluation as Evaluation
  const suggestion = evaluation.next[0]
  const taken = await post(`/v1/jobs/${job.id}/suggestions`, { decision: 'taken', suggestion })
  expect(taken.status).toBe(201)
  const bare = await post(`/v1/jobs/${job.id}/suggestions`, { decision: 'declined', suggestion })
  expect([bare.status, bare.body.errors[0].path]).toEqual([400, '/reason'])
  const declined = await post(`/v1/jobs/${job.id}/suggestions`, { decision: 'declined', suggestion, reason: 'no air today', instead: 'wet test' })
  expect(declined.body).toMatchObject({ decision: 'declined', reason: 'no air today', instead: 'wet test', by: { name: chain.mill.technician.name } })
  expect((await get(`/v1/jobs/${job.id}/suggestions`)).body.items).toHaveLength(2)
  const stored = await get(`/v1/evaluations/${taken.body.evaluation}`)
  expect(stored.body.evaluation).toEqual(evaluation)
  await expect(service.database.pool.query('UPDATE evaluation SET model = $1', ['other'])).rejects.toMatchObject({ code: '23001' })
})

test('a decision that a tablet sends again, because the answer got lost, counts once', async () => {
  const { job } = await jobWith([155, 160, 140, 145])
  const path = `/v1/jobs/${job.id}/suggestions`
  const suggestion = (await get(`/v1/jobs/${job.id}/evaluation`)).body.evaluation.next[0] as Evaluation['next'][number]
  const send = (body: object) => post(path, body).set('idempotency-key', 'decision-of-this-tablet')
  const answers = await Promise.all([1, 2, 3].map(() => send({ decision: 'taken', suggestion })))
  expect(answers.map(({ status, body }) => [status, body.id])).toEqual(answers.map(() => [201, answers[0]!.body.id]))
  expect((await get(path)).body.items).toHaveLength(1)
  expect((await send({ decision: 'declined', suggestion, reason: 'no air today' })).status).toBe(409)
})

test('any case is evaluated without being kept; a bad one is answered with the path of every bad field', async () => {
  const given = { engine: { fuel: 'petrol', layout: 'inline', cylinders: 4 }, conditions: HOT, readings: [dry(1, 155), dry(2, 160)] }
  const good = await post('/v1/evaluations', given)
  expect(good.status).toBe(200)
  expect(evaluationSchema.safeParse(good.body).success).toBe(true)
  const bad = await post('/v1/evaluations', { ...given, readings: [dry(5, 155), { ...dry(1, 150), colour: 'red' }] })
  expect([bad.status, bad.body.type, bad.body.errors.map(({ path }: { path: string }) => path)]).toEqual([422, '/docs/problems/invalid-case', expect.arrayContaining(['/readings/1/colour'])])
  const fifth = await post('/v1/evaluations', { ...given, readings: [dry(5, 155)] })
  expect(fifth.body.errors[0].path).toBe('/readings/0/cylinder')
  const app = await testApp(service, ['jobs:read'])
  expect((await request(service.server).post('/v1/evaluations').set('authorization', `Bearer ${app.token}`).send(given)).status).toBe(403)
})
