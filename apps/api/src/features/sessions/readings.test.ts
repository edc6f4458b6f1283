import request from 'supertest'
import { v7 } from 'uuid'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { testChain, testJob, testPerson, testService, type TestChain, type TestJob, type TestService } from '../../../../../tests/support/index.ts'

let service: TestService
let chain: TestChain
let job: TestJob
let session: string

const HOT = { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 8 }
const dry = (cylinder: number, value: number) => ({ test: 'compression', cylinder, pressure: { value, unit: 'psi' } })
const body = (reading: object, more: object = {}) => ({ reading, takenAt: '2026-05-06T10:20:00.000Z', ...more })
const as = (token: string) => ({ authorization: `Bearer ${token}` })
const put = (id: string, sent: object | string, into = session, token = chain.mill.technician.token) =>
  request(service.server).put(`/v1/sessions/${into}/readings/${id}`).set(as(token)).set('content-type', 'application/json').send(sent)
const open = async (more: object = {}) => {
  const answer = await request(service.server).post(`/v1/jobs/${job.id}/sessions`).set(as(chain.mill.technician.token)).send({ conditions: HOT, gauge: job.gauge, tester: job.tester, ...more })
  expect(answer.status).toBe(201)
  return answer.body.id as string
}
const close = (id: string) => request(service.server).post(`/v1/sessions/${id}/close`).set(as(chain.mill.technician.token))
const read = async (id: string) => (await request(service.server).get(`/v1/sessions/${id}`).set(as(chain.mill.technician.token))).body

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  job = await testJob(service, chain.mill)
  session = await open()
})
afterAll(() => service.close())

test('a reading is kept once and the same request is answered in the same words', async () => {
  const id = v7()
  const first = await put(id, body(dry(1, 155)))
  expect(first.status).toBe(201)
  expect(first.body).toMatchObject({ id, state: 'placed' })
  const again = await put(id, JSON.stringify({ takenAt: '2026-05-06T10:20:00.000Z', reading: { pressure: { unit: 'psi', value: 155 }, cylinder: 1, test: 'compression' } }))
  expect(again.status).toBe(200)
  expect(again.body).toEqual(first.body)
})

test('another body under the same id is refused, and so is the same id in another session', async () => {
  const id = v7()
  await put(id, body(dry(2, 160)))
  const other = await put(id, body(dry(2, 161)))
  expect([other.status, other.body.type]).toEqual([409, '/docs/problems/id-reused'])
  const elsewhere = await put(id, body(dry(2, 160)), await open())
  expect([elsewhere.status, elsewhere.body.type]).toEqual([409, '/docs/problems/id-reused'])
})

test('into a closed session a live reading is refused and one made offline waits to be placed', async () => {
  const closed = await open()
  const before = v7()
  await put(before, body(dry(3, 140)), closed)
  await close(closed)
  const live = await put(v7(), body(dry(3, 141)), closed)
  expect([live.status, live.body.type]).toEqual([409, '/docs/problems/session-closed'])
  const late = v7()
  const offline = await put(late, body(dry(3, 141), { offline: true }), closed)
  expect([offline.status, offline.body.state]).toEqual([201, 'unplaced'])
  expect((await put(before, body(dry(3, 140)), closed)).status).toBe(200)
  const waiting = await request(service.server).get(`/v1/jobs/${job.id}/unplaced-readings`).set(as(chain.mill.technician.token))
  expect(waiting.body.items.map((reading: { id: string }) => reading.id)).toEqual([late])
  const placed = await put(v7(), body(dry(3, 141), { replaces: late, reason: 'taken before the session was closed' }))
  expect([placed.status, placed.body.state]).toEqual([201, 'placed'])
  expect((await request(service.server).get(`/v1/jobs/${job.id}/unplaced-readings`).set(as(chain.mill.technician.token))).body.items).toEqual([])
})

test('a reading is replaced once, with a reason', async () => {
  const wrong = v7()
  await put(wrong, body(dry(4, 145)))
  const noReason = await put(v7(), body(dry(3, 145), { replaces: wrong }))
  expect([noReason.status, noReason.body.errors[0].path]).toEqual([400, '/reason'])
  const right = v7()
  const fix = body(dry(3, 145), { replaces: wrong, reason: 'it was cylinder 3' })
  expect((await put(right, fix)).status).toBe(201)
  expect((await put(right, fix)).status).toBe(200)
  const twice = await put(v7(), body(dry(2, 145), { replaces: wrong, reason: 'it was cylinder 2' }))
  expect([twice.status, twice.body.type]).toEqual([409, '/docs/problems/already-replaced'])
  const shown = (await read(session)).readings as { id: string; current: boolean; replacedBy: string | null }[]
  expect(shown.find(({ id }) => id === wrong)).toMatchObject({ current: false, replacedBy: right })
  expect(shown.find(({ id }) => id === right)).toMatchObject({ current: true })
})

test('a withdrawal names what it withdraws and carries no reading', async () => {
  const twice = v7()
  await put(twice, body(dry(1, 150)))
  const nothing = await put(v7(), { takenAt: '2026-05-06T10:21:00Z', withdrawn: true })
  expect([nothing.status, nothing.body.errors[0].path]).toEqual([400, '/replaces'])
  const withdrawn = await put(v7(), { takenAt: '2026-05-06T10:21:00Z', withdrawn: true, replaces: twice, reason: 'the same crank noted twice' })
  expect(withdrawn.status).toBe(201)
  expect((await read(session)).readings.find(({ id }: { id: string }) => id === twice).current).toBe(false)
})

test.each([
  ['a cylinder that the engine does not have', dry(5, 150), '/reading/cylinder'],
  ['cylinder 0', dry(0, 150), '/reading/cylinder'],
  ['10000 psi', dry(1, 10_000), '/reading/pressure/value'],
  ['a negative pressure', dry(1, -1), '/reading/pressure/value'],
  ['an unknown unit', { ...dry(1, 150), pressure: { value: 150, unit: 'mmHg' } }, '/reading/pressure/unit'],
  ['no strokes', { ...dry(1, 150), strokeCount: 0 }, '/reading/strokeCount'],
  ['a stroke count unlike the strokes', { ...dry(1, 150), strokes: [{ value: 150, unit: 'psi' }], strokeCount: 3 }, '/reading/strokeCount'],
  ['more held than supplied', { test: 'leakage', cylinder: 1, held: { value: 85, unit: 'psi' } }, '/reading/held/value'],
  ['an unknown field', { ...dry(1, 150), colour: 'red' }, '/reading/colour'],
])('%s is refused with its path', async (_what, reading, path) => {
  const id = v7()
  const answer = await put(id, body(reading))
  expect([answer.status, answer.body.errors?.[0]?.path]).toEqual([400, path])
  expect(answer.body.errors[0].expected).not.toBe('')
  expect((await put(id, body(dry(1, 152)))).status).toBe(201)
})

test('ids that name nothing are refused', async () => {
  expect((await put(v7(), body(dry(1, 150)), v7())).status).toBe(404)
  expect((await put('7b0c2f7e-5b0c-4d2e-8a3f-0e2b6f1c9d11', body(dry(1, 150)))).body.errors[0].path).toBe('/params/reading')
  expect((await put(v7(), body(dry(1, 150), { takenBy: v7() }))).body.errors[0].path).toBe('/takenBy')
  expect((await put(v7(), body(dry(1, 150), { replaces: v7(), reason: 'none' }))).body.errors[0].path).toBe('/replaces')
})

test("another garage's technician does not find the session to write into; the front desk may not", async () => {
  expect((await put(v7(), body(dry(1, 150)), session, chain.harbour.technician.token)).status).toBe(404)
  expect((await put(v7(), body(dry(1, 150)), session, chain.mill.frontDesk.token)).status).toBe(403)
  const both = await testPerson(service, 'Bea Both', [{ garage: chain.mill.id, role: 'technician' }, { garage: chain.harbour.id, role: 'technician' }])
  expect((await put(v7(), body(dry(1, 150)), session, both.token)).status).toBe(201)
})

test('a reading moved to the job of another engine stands in both trails', async () => {
  const id = v7()
  await put(id, body(dry(1, 158)))
  const other = await testJob(service, chain.mill)
  const there = await request(service.server).post(`/v1/jobs/${other.id}/sessions`).set(as(chain.mill.technician.token)).send({ conditions: HOT })
  const moved = await put(v7(), body(dry(1, 158), { replaces: id, reason: 'wrong car' }), there.body.id)
  expect(moved.status).toBe(201)
  const entries = await service.database.prisma.trailEntry.findMany({ where: { body: { contains: 'wrong car' } } })
  expect(entries.map(({ engineId }) => engineId).sort()).toEqual([job.engine, other.engine].sort())
})

test('the same id sent twice at once is kept once, and a hundred writers leave one whole chain', async () => {
  const same = v7()
  const twice = await Promise.all([put(same, body(dry(1, 149))), put(same, body(dry(1, 149)))])
  expect(twice.map(({ status }) => status).sort()).toEqual([200, 201])
  const correction = v7()
  const fix = body(dry(1, 150), { replaces: same, reason: 'misread' })
  expect((await Promise.all([put(correction, fix), put(correction, fix)])).map(({ status }) => status).sort()).toEqual([200, 201])
  const rivals = await Promise.all([1, 2].map((value) => put(v7(), body(dry(1, value), { replaces: correction, reason: 'misread again' }))))
  expect(rivals.map(({ status }) => status).sort()).toEqual([201, 409])

  const second = await open()
  const answers = await Promise.all(Array.from({ length: 100 }, (_, at) => put(v7(), body(dry(1 + (at % 4), 150 + (at % 9))), at % 2 ? session : second)))
  expect(answers.every(({ status }) => status === 201)).toBe(true)
  const entries = await service.database.prisma.trailEntry.findMany({ where: { engineId: job.engine }, orderBy: { seq: 'asc' } })
  expect(entries.map(({ seq }) => Number(seq))).toEqual(entries.map((_, at) => at + 1))
  entries.forEach((entry, at) => expect(entry.previousHash).toBe(at === 0 ? '0'.repeat(64) : entries[at - 1]!.hash))
})

test('the database itself refuses to change or remove a reading', async () => {
  await expect(service.database.pool.query("UPDATE reading SET reason = 'x'")).rejects.toMatchObject({ code: '23001' })
  await expect(service.database.pool.query('DELETE FROM trail_entry')).rejects.toMatchObject({ code: '23001' })
})
