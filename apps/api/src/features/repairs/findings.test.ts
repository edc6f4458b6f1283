import request from 'supertest'
import { v7 } from 'uuid'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { testChain, testJob, testService, type TestChain, type TestJob, type TestService } from '../../../../../tests/support/index.ts'

let service: TestService
let chain: TestChain
let job: TestJob
const call = (method: 'get' | 'post' | 'put', path: string, body?: object, token = chain.mill.technician.token) => {
  const sent = request(service.server)[method](path).set('authorization', `Bearer ${token}`)
  return body === undefined ? sent : sent.send(body)
}
const found = (fault: string, cylinders: number[], more: object = {}) => call('post', `/v1/jobs/${job.id}/findings`, { fault, cylinders, seen: 'seen at strip-down', ...more })

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  job = await testJob(service, chain.mill)
  const session = (await call('post', `/v1/jobs/${job.id}/sessions`, { conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' }, tester: job.tester })).body.id as string
  const keep = (reading: object) => call('put', `/v1/sessions/${session}/readings/${v7()}`, { reading, takenAt: new Date().toISOString() })
  for (const [at, value] of [155, 160, 95, 150].entries()) await keep({ test: 'compression', cylinder: at + 1, pressure: { value, unit: 'psi' } })
  await keep({ test: 'leakage', cylinder: 3, held: { value: 30, unit: 'psi' }, heard: { exhaust: 3, crankcase: 0, intake: 0 } })
  const { evaluation } = (await call('get', `/v1/jobs/${job.id}/evaluation`)).body
  await call('post', `/v1/jobs/${job.id}/suggestions`, { decision: 'declined', suggestion: evaluation.next[0] ?? { tests: [{ test: 'borescope', cylinders: [3] }], bits: 0.1, minutes: 4, bitsPerMinute: 0.02, says: 'Look.' }, reason: 'clear enough' })
})
afterAll(() => service.close())

test('a finding is kept with the probability that the deciding evaluation gave it', async () => {
  const { body, status } = await found('exhaust-valve-leak', [3])
  expect(status).toBe(201)
  const stored = (await call('get', `/v1/evaluations/${body.evaluation}`)).body.evaluation
  expect(body.believed).toBe(stored.cylinders[2].faults.find(({ fault }: { fault: string }) => fault === 'exhaust-valve-leak').probability)
  expect((await found('nothing', [1])).body.believed).toBe(stored.cylinders[0].sound)
  expect((await found('gasket-between', [2, 3])).body.believed).toBe(stored.neighbours.find(({ cylinders }: { cylinders: number[] }) => cylinders[0] === 2).probability)
  expect((await found('worn-evenly', [])).body.believed).toBe(stored.engine.find(({ cause }: { cause: string }) => cause === 'worn-evenly').probability)
  const several = await found('ring-wear', [1, 2])
  expect(several.body.believed).toBe(Math.min(...[0, 1].map((at) => stored.cylinders[at].faults.find(({ fault }: { fault: string }) => fault === 'ring-wear').probability)))
})

test.each([
  ['a cylinder that the engine lacks', 'ring-wear', [5], '/cylinders/0'],
  ['a cylinder twice', 'ring-wear', [1, 1], '/cylinders/1'],
  ['a gasket between one', 'gasket-between', [1], '/cylinders'],
  ['a fault of no cylinder', 'ring-wear', [], '/cylinders'],
  ['a cause of one cylinder', 'worn-evenly', [1], '/cylinders'],
  ['a fault of no list', 'bad-luck', [1], '/fault'],
])('%s is refused with its path', async (_what, fault, cylinders, path) => {
  const { status, body } = await found(fault, cylinders)
  expect([status, body.errors?.[0]?.path]).toEqual([400, path])
})

test('a finding is corrected once, by another, and never changed', async () => {
  const wrong = (await found('intake-valve-leak', [3])).body.id as string
  const right = await found('valve-sticking', [3], { replaces: wrong })
  expect(right.body.replaces).toBe(wrong)
  const twice = await found('rod-bent', [3], { replaces: wrong })
  expect([twice.status, twice.body.type]).toEqual([409, '/docs/problems/already-replaced'])
  expect((await found('rod-bent', [3], { replaces: v7() })).body.errors[0].path).toBe('/replaces')
  await expect(service.database.pool.query("UPDATE finding SET fault = 'nothing'")).rejects.toMatchObject({ code: '23001' })
})

test("another garage's staff reads findings and records none", async () => {
  expect((await call('get', `/v1/jobs/${job.id}/findings`, undefined, chain.harbour.technician.token)).body.items.length).toBeGreaterThan(0)
  const theirs = await call('post', `/v1/jobs/${job.id}/findings`, { fault: 'nothing', cylinders: [1], seen: 'x' }, chain.harbour.technician.token)
  expect(theirs.status).toBe(404)
})

test('the report counts findings that stand, against what had been believed', async () => {
  const { body } = await call('get', `/v1/garages/${chain.mill.id}/reliability`, undefined, chain.mill.manager.token)
  // Seven findings stand, of which one names two cylinders; the replaced one does not count.
  expect(body).toMatchObject({ garage: chain.mill.id, findings: 7, overrides: { declined: 1, turnedOutRight: 0 } })
  expect(body.bins.reduce((sum: number, { count }: { count: number }) => sum + count, 0)).toBeGreaterThan(50)
  expect((await call('get', `/v1/garages/${chain.mill.id}/reliability`)).status).toBe(403)
})
