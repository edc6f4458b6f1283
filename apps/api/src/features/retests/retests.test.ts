import request from 'supertest'
import { v7 } from 'uuid'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { testChain, testJob, testService, type TestChain, type TestJob, type TestPerson, type TestService } from '../../../../../tests/support/index.ts'

let service: TestService
let chain: TestChain
let job: TestJob

const HOT = { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 8 }
async function call(who: TestPerson, method: 'get' | 'post' | 'put', path: string, body?: object, headers: Record<string, string> = {}) {
  const sent = request(service.server)[method](path).set('authorization', `Bearer ${who.token}`).set({ 'idempotency-key': v7(), ...headers })
  return body === undefined ? sent : sent.send(body)
}
const technician = (method: 'get' | 'post' | 'put', path: string, body?: object, headers?: Record<string, string>) => call(chain.mill.technician, method, path, body, headers)
const problemOf = ({ status, body }: { status: number; body: { type?: string } }) => [status, body.type?.split('/').at(-1)]

async function measure(purpose: string, values: readonly number[], conditions: object = HOT): Promise<string> {
  const opened = await technician('post', `/v1/jobs/${job.id}/sessions`, { purpose, conditions, gauge: job.gauge })
  expect([opened.status, opened.body.id ?? opened.body]).toEqual([201, expect.any(String)])
  for (const [at, value] of values.entries()) {
    await technician('put', `/v1/sessions/${opened.body.id}/readings/${v7()}`, { reading: { test: 'compression', cylinder: at + 1, pressure: { value, unit: 'psi' } }, takenAt: new Date().toISOString() })
  }
  return opened.body.id as string
}

/** A job whose repair is finished: its release retest is owed. */
async function repaired(): Promise<{ retest: string; baseline: string }> {
  job = await testJob(service, chain.mill)
  const baseline = await measure('test', [155, 160, 120, 150])
  await agreeAndRepair()
  const { body } = await technician('get', `/v1/jobs/${job.id}/retests`)
  return { retest: body.items.find(({ outcome }: { outcome: string | null }) => outcome === null).id, baseline }
}

async function agreeAndRepair(): Promise<void> {
  await technician('put', `/v1/jobs/${job.id}/quote/draft`, { lines: [{ kind: 'part', text: 'Valve', quantity: 1, rateMinor: 1_000, taxBasisPoints: 0 }] }, { 'if-none-match': '*' })
  const version = (await technician('post', `/v1/jobs/${job.id}/quote/versions`)).body.id as string
  await call(chain.mill.manager, 'post', `/v1/quote-versions/${version}/approval`, {})
  await call(chain.mill.frontDesk, 'post', `/v1/quote-versions/${version}/authorisations`, { kind: 'given', personName: 'Cora', method: 'in-person', givenAt: new Date().toISOString() })
  expect((await technician('post', `/v1/jobs/${job.id}/repair`)).status).toBe(201)
  expect((await technician('post', `/v1/jobs/${job.id}/repair/finish`, { operations: ['head-valves'] })).status).toBe(200)
}
const state = async () => (await technician('get', `/v1/jobs/${job.id}`)).body.standing.state as string

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
})
afterAll(() => service.close())

describe('a release retest', () => {
  test('that failed ends approval and repair: the job is testing again, on the readings of the repaired engine alone', async () => {
    const { retest, baseline } = await repaired()
    expect(problemOf(await technician('post', `/v1/jobs/${job.id}/repair`))).toEqual([409, 'wrong-state'])
    const wrong = await technician('post', `/v1/retests/${retest}/outcome`, { outcome: 'passed', session: baseline })
    expect(wrong.body.errors[0]).toMatchObject({ path: '/session', expected: 'a session opened after the repair was finished' })
    const empty = await measure('release', [])
    expect((await technician('post', `/v1/retests/${retest}/outcome`, { outcome: 'passed', session: empty })).body.errors[0].expected).toBe('a session with at least one reading')
    const session = await measure('release', [155, 160, 122, 150])
    const failed = await technician('post', `/v1/retests/${retest}/outcome`, { outcome: 'failed', session, reason: 'Still low' })
    expect(failed.body).toMatchObject({ outcome: 'failed', outcomeReason: 'Still low', session })
    expect(await state()).toBe('testing')
    expect(problemOf(await technician('post', `/v1/jobs/${job.id}/repair`))).toEqual([409, 'wrong-state'])
    const { body } = await technician('get', `/v1/jobs/${job.id}/evaluation?ranking=false`)
    expect(Object.keys(body.case.sessions)).not.toContain(baseline)
    expect(body.readingIds).toHaveLength(4)
    await agreeAndRepair()
    expect(await state()).toBe('retest-due')
    expect(problemOf(await technician('post', `/v1/retests/${retest}/outcome`, { outcome: 'passed', session }))).toEqual([409, 'wrong-state'])
  }, 60_000)

  test('is waived by a manager with a reason, not by a technician', async () => {
    const { retest } = await repaired()
    expect((await technician('post', `/v1/retests/${retest}/waiver`, { reason: 'no time' })).status).toBe(403)
    const bare = await call(chain.mill.manager, 'post', `/v1/retests/${retest}/waiver`, {})
    expect([bare.status, bare.body.errors[0].path]).toEqual([400, '/reason'])
    expect((await call(chain.mill.manager, 'post', `/v1/retests/${retest}/waiver`, { reason: 'Towed to the owner’s own shop' })).body).toMatchObject({ outcome: 'waived' })
    expect(await state()).toBe('ready')
    expect(problemOf(await technician('post', `/v1/jobs/${job.id}/sessions`, { purpose: 'release', conditions: HOT }))).toEqual([409, 'wrong-state'])
  })

  test('under other conditions is compared with an objection, and what was shown is kept with the outcome', async () => {
    const { retest } = await repaired()
    const session = await measure('release', [156, 158, 155, 157], { ...HOT, throttle: 'closed' })
    const shown = await technician('get', `/v1/retests/${retest}/comparison`)
    expect(shown.body).toMatchObject({ session, comparison: { comparable: false } })
    expect(shown.body.comparison.objections.length).toBeGreaterThan(0)
    await technician('post', `/v1/retests/${retest}/outcome`, { outcome: 'passed', session })
    const { comparison } = await service.database.prisma.retest.findUniqueOrThrow({ where: { id: retest } })
    expect(JSON.parse(comparison!)).toEqual(shown.body.comparison)
  })
})

describe('a follow-up retest', () => {
  const promise = async (due: object) => (await call(chain.mill.frontDesk, 'post', `/v1/jobs/${job.id}/retests`, { reason: 'after the first miles', ...due })).body as { id: string; overdueDays: number | null; dates: { latest: string }[] }
  const day = (inDays: number) => new Date(Date.now() + inDays * 86_400_000).toISOString().slice(0, 10)

  test('is promised by a date, an odometer value or an event; a change of date is a new row', async () => {
    job = await testJob(service, chain.mill)
    const nothing = await call(chain.mill.frontDesk, 'post', `/v1/jobs/${job.id}/retests`, { reason: 'some time' })
    expect([nothing.status, nothing.body.errors[0].path]).toEqual([400, '/latest'])
    expect((await technician('post', `/v1/jobs/${job.id}/retests`, { reason: 'x', latest: day(9) })).status).toBe(403)
    const retest = await promise({ latest: day(9) })
    expect(retest.overdueDays).toBeNull()
    const moved = await call(chain.mill.frontDesk, 'post', `/v1/retests/${retest.id}/dates`, { latest: day(20), reason: 'away' })
    expect(moved.body.dates.map(({ latest }: { latest: string }) => latest)).toEqual([day(9), day(20)])
    await expect(service.database.pool.query('DELETE FROM retest_date')).rejects.toMatchObject({ code: '23001' })
  })

  test('is overdue by the calendar of the garage, not of the server', async () => {
    job = await testJob(service, chain.mill)
    const zone = async (timeZone: string) => service.database.prisma.garage.update({ where: { id: chain.mill.id }, data: { timeZone } })
    const days = async (id: string) => (await technician('get', `/v1/jobs/${job.id}/retests`)).body.items.find((item: { id: string }) => item.id === id).overdueDays as number | null
    const today = new Intl.DateTimeFormat('sv-SE', { timeZone: 'Pacific/Kiritimati' }).format(new Date())
    const retest = await promise({ latest: today })
    // On the line islands it is a day later than at the far end of the other side (UTC+14 and UTC-11).
    await zone('Pacific/Kiritimati')
    expect(await days(retest.id)).toBeNull()
    const past = await promise({ latest: day(-3) })
    const ahead = await days(past.id)
    await zone('Pacific/Pago_Pago')
    expect(ahead! - (await days(past.id))!).toBeGreaterThanOrEqual(1)
    await zone('Europe/Lisbon')
  })

  test('is fulfilled by a later visit of the engine, and then no more among what is due', async () => {
    job = await testJob(service, chain.mill)
    await measure('test', [150, 151, 149, 150])
    const retest = await promise({ latest: day(1) })
    const due = async () => (await call(chain.mill.frontDesk, 'get', `/v1/garages/${chain.mill.id}/retests?due=true&limit=200`)).body.items.map(({ id }: { id: string }) => id) as string[]
    expect(await due()).toContain(retest.id)
    const first = job
    const later = v7()
    await service.database.prisma.job.create({ data: { id: later, garageId: chain.mill.id, code: 'T 9001', customerId: first.customer, vehicleId: first.vehicle, engineId: first.engine, complaint: 'retest', priorWork: {} } })
    job = { ...first, id: later }
    const session = await measure('follow-up', [149, 150, 150, 151])
    const passed = await technician('post', `/v1/retests/${retest.id}/outcome`, { outcome: 'passed', session })
    expect(passed.body).toMatchObject({ outcome: 'passed', fulfilledByJob: later })
    expect(await due()).not.toContain(retest.id)
    const other = await testJob(service, chain.mill)
    job = other
    const stranger = await promise({ latest: day(1) })
    expect((await technician('post', `/v1/retests/${stranger.id}/outcome`, { outcome: 'passed', session })).body.errors[0].path).toBe('/session')
  })

  test('lists come in pages, the earliest due first', async () => {
    const first = await call(chain.mill.frontDesk, 'get', `/v1/garages/${chain.mill.id}/retests?limit=2`)
    const second = await call(chain.mill.frontDesk, 'get', `/v1/garages/${chain.mill.id}/retests?limit=200&after=${first.body.next}`)
    const all = await call(chain.mill.frontDesk, 'get', `/v1/garages/${chain.mill.id}/retests?limit=200`)
    expect([...first.body.items, ...second.body.items]).toEqual(all.body.items)
    expect((await call(chain.harbour.frontDesk, 'get', `/v1/garages/${chain.mill.id}/retests`)).status).toBe(404)
  })
})
