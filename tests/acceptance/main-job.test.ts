import type { Evaluation, Job, Quote, Retest, TrailEntry } from '@evenbore/contract'
import request from 'supertest'
import { v7 } from 'uuid'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { INLINE_FOUR, testChain, testService, type TestChain, type TestPerson, type TestService } from '../support/index.ts'

/**
 * The whole job over HTTP, each step by the person whose step it is. The readings are the trade's own case: dry 155, 160, 140, 145 psi on
 * four cylinders, a spread of 12.5 percent, more than a tenth (common practice, no source).
 */
let service: TestService
let chain: TestChain
let desk: TestPerson
let technician: TestPerson
let manager: TestPerson
let job: string
let engine: string

const HOT = { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 8, batteryVolts: 12.4 }
const psi = (value: number) => ({ value, unit: 'psi' })
const dry = (cylinder: number, value: number) => ({ test: 'compression', cylinder, pressure: psi(value) })

async function send(who: TestPerson, method: 'get' | 'post' | 'put' | 'patch', path: string, body?: object, headers: Record<string, string> = {}) {
  const call = request(service.server)[method](path).set('authorization', `Bearer ${who.token}`).set(headers)
  return body === undefined ? call : call.send(body)
}
const get = async <T>(who: TestPerson, path: string): Promise<T> => {
  const { status, body } = await send(who, 'get', path)
  expect([status, path, status < 300 ? null : body]).toEqual([200, path, null])
  return body as T
}
const post = async (who: TestPerson, path: string, body?: object, status = 201) => {
  const answer = await send(who, 'post', path, body, { 'idempotency-key': v7() })
  expect([answer.status, path, answer.status < 300 ? null : answer.body]).toEqual([status, path, status < 300 ? null : answer.body])
  return answer.body
}
const standing = async () => (await get<Job>(desk, `/v1/jobs/${job}`)).standing

async function measure(purpose: string, values: readonly number[], gauge: string, tester: string | null = null): Promise<string> {
  const session = (await post(technician, `/v1/jobs/${job}/sessions`, { purpose, conditions: HOT, gauge, tester })).id as string
  for (const [at, value] of values.entries()) await keep(session, dry(at + 1, value))
  return session
}

async function keep(session: string, reading: object): Promise<void> {
  const { status } = await send(technician, 'put', `/v1/sessions/${session}/readings/${v7()}`, { reading, takenAt: new Date().toISOString() })
  expect(status).toBe(201)
}

const LINES = [
  { kind: 'labour', operation: 'head-valves', cylinders: [3], text: 'Head off, exhaust valve of 3 and its seat', quantity: 8.5, rateMinor: 8_000, taxBasisPoints: 2_000 },
  { kind: 'part', operation: 'head-valves', cylinders: [3], text: 'Exhaust valve', quantity: 1, rateMinor: 3_450, taxBasisPoints: 2_000 },
  { kind: 'part', operation: null, text: 'Head gasket set', quantity: 1, rateMinor: 6_220, taxBasisPoints: 2_000 },
]
// By hand: 8.5 x 80.00 + 34.50 + 62.20 = 776.70 net, tax 155.34, total 932.04.
const TOTAL = 93_204

describe('the whole job, start to finish', () => {
  let gauge: string
  let tester: string
  let baseline: string
  let version: string

  beforeAll(async () => {
    service = await testService()
    chain = await testChain(service)
    desk = chain.mill.frontDesk
    technician = chain.mill.technician
    manager = chain.mill.manager
  })
  afterAll(() => service.close())

  test('the owner sets up gauge and tester', async () => {
    const gauges = `/v1/garages/${chain.mill.id}/gauges`
    gauge = (await post(chain.owner, gauges, { kind: 'compression', name: 'Screw-in gauge', specification: { span: psi(300), accuracyClass: 1.6, resolution: psi(1) } })).id
    tester = (await post(chain.owner, gauges, { kind: 'leakage', name: 'Twin-gauge tester', specification: { supply: psi(80), restrictorMm: 1.016 } })).id
  })

  test('the front desk books the car in, with its engine and the complaint', async () => {
    const booked = await post(desk, `/v1/garages/${chain.mill.id}/jobs`, {
      customer: { name: 'Cora Customer', phone: '+351 555 0100' }, vehicle: { plate: 'EV-27-NB', description: 'grey estate' },
      engine: { description: 'iron four of the estate', ownValues: INLINE_FOUR }, complaint: 'Shakes at idle, down on power', odometerKm: 182_400, priorWork: { overheated: false }, bay: chain.mill.bays[0],
    })
    job = booked.id
    engine = booked.engine
    expect(booked.standing.state).toBe('in-bay')
  })

  test('dry readings on four cylinders spread 12.5 percent: outside a tenth as read', async () => {
    baseline = await measure('test', [155, 160, 140, 145], gauge, tester)
    const { evaluation, case: given } = await get<{ evaluation: Evaluation; case: { readings: unknown[] } }>(technician, `/v1/jobs/${job}/evaluation`)
    expect(given.readings).toHaveLength(4)
    expect(evaluation.consistency).toMatchObject({ rule: 'one-tenth', spreadPercent: 12.5, asRead: 'outside', lowest: { cylinder: 3 }, highest: { cylinder: 2 } })
    expect(evaluation.cylinders.map(({ sound, faults }) => sound + faults.reduce((sum, { probability }) => sum + probability, 0))).toEqual(Array(4).fill(expect.closeTo(1, 9)))
    expect((await standing()).state).toBe('testing')
  })

  test('the technician takes a suggested test, and leakage points at the exhaust valve of cylinder 3', async () => {
    const { evaluation } = await get<{ evaluation: Evaluation }>(technician, `/v1/jobs/${job}/evaluation`)
    const leakage = evaluation.next.find(({ tests }) => tests.some(({ test: name }) => name === 'leakage')) ?? evaluation.next[0]!
    await post(technician, `/v1/jobs/${job}/suggestions`, { decision: 'taken', suggestion: leakage })
    const before = evaluation.cylinders[2]!.faults.find(({ fault }) => fault === 'exhaust-valve-leak')!.probability
    await keep(baseline, { test: 'leakage', cylinder: 3, held: psi(46), heard: { exhaust: 3, intake: 0, crankcase: 1 } })
    await keep(baseline, { test: 'leakage', cylinder: 2, held: psi(74), heard: { exhaust: 0, intake: 0, crankcase: 1 } })
    const later = await get<{ evaluation: Evaluation }>(technician, `/v1/jobs/${job}/evaluation`)
    const believed = later.evaluation.cylinders[2]!.faults.find(({ fault }) => fault === 'exhaust-valve-leak')!.probability
    expect(believed).toBeGreaterThan(before)
    expect(believed).toBeGreaterThan(0.5)
    // (80 - 46) / 80 = 42.5 percent lost, more than 25 (FAA AC 43.13-1B par. 8-14b(5)(i))
    expect(later.evaluation.leakage).toEqual(expect.arrayContaining([expect.objectContaining({ cylinder: 3, percentAsRead: expect.closeTo(42.5, 9), overLimit: true })]))
  })

  test('a draft is written, and sent with the evidence it rests on', async () => {
    const suggested = await get<{ items: { operation: string; rateMinor: number }[] }>(technician, `/v1/jobs/${job}/quote/suggested-lines`)
    expect(suggested.items.map(({ operation }) => operation)).toContain('head-valves')
    const draft = `/v1/jobs/${job}/quote/draft`
    expect((await send(technician, 'put', draft, { lines: LINES })).status).toBe(428)
    const made = await send(technician, 'put', draft, { lines: LINES.slice(0, 2) }, { 'if-none-match': '*' })
    expect([made.status, made.headers.etag]).toEqual([201, '"1"'])
    const edited = await send(technician, 'put', draft, { lines: LINES, note: 'Look at the guides when it is off.' }, { 'if-match': '"1"' })
    expect(edited.body).toMatchObject({ version: 2, totals: { netMinor: 77_670, taxMinor: 15_534, totalMinor: TOTAL } })
    expect((await send(technician, 'put', draft, { lines: LINES }, { 'if-match': '"1"' })).status).toBe(412)
    const sent = await post(technician, `/v1/jobs/${job}/quote/versions`, {})
    expect(sent).toMatchObject({ number: 1, author: { id: technician.id }, totals: { totalMinor: TOTAL, currency: 'EUR' } })
    expect(sent.evaluation).not.toBeNull()
    version = sent.id
    expect(await standing()).toMatchObject({ state: 'waiting-for-manager', waitsFor: 'manager' })
    const late = await send(technician, 'put', `/v1/sessions/${baseline}/readings/${v7()}`, { reading: dry(1, 150), takenAt: new Date().toISOString() })
    expect([late.status, late.body.type]).toEqual([409, '/docs/problems/session-closed'])
  })

  test('the manager sees the evidence and sends it back with a test to do', async () => {
    const waiting = await get<{ items: { quoteVersion: string; mayApprove: boolean }[] }>(manager, `/v1/garages/${chain.mill.id}/decisions`)
    expect(waiting.items).toEqual([expect.objectContaining({ quoteVersion: version, mayApprove: true })])
    const { versions } = await get<Quote>(manager, `/v1/jobs/${job}/quote`)
    const stored = await get<{ evaluation: Evaluation }>(manager, `/v1/evaluations/${versions[0]!.evaluation}`)
    expect(stored.evaluation.consistency.session).toBe(baseline)
    expect((await send(technician, 'post', `/v1/quote-versions/${version}/approval`, {}, { 'idempotency-key': v7() })).status).toBe(403)
    await post(manager, `/v1/quote-versions/${version}/send-back`, { question: 'Is it a tight clearance? Check the rockers of 3 first.' })
    await post(manager, `/v1/quote-versions/${version}/approval`, {}, 409)
    expect((await standing()).beside).toContain('sent-back')
  })

  test('the clearance is checked and a new version goes to the manager, who approves', async () => {
    const session = await measure('test', [], gauge)
    await keep(session, { test: 'clearance', cylinder: 3, valve: 'exhaust', state: 'right' })
    await send(technician, 'put', `/v1/jobs/${job}/quote/draft`, { lines: LINES, note: 'Clearance of 3 is right.' }, { 'if-none-match': '*' })
    version = (await post(technician, `/v1/jobs/${job}/quote/versions`)).id
    const path = `/v1/quote-versions/${version}/approval`
    expect((await send(manager, 'post', path, {})).body.type).toBe('/docs/problems/idempotency-key-needed')
    const key = v7()
    const first = await send(manager, 'post', path, {}, { 'idempotency-key': key })
    const again = await send(manager, 'post', path, {}, { 'idempotency-key': key })
    expect([first.status, again.status, again.body]).toEqual([201, 201, first.body])
    expect(await standing()).toMatchObject({ state: 'waiting-for-customer', waitsFor: 'customer' })
  })

  test('no repair starts before the customer has permitted its whole sum', async () => {
    const refused = await post(technician, `/v1/jobs/${job}/repair`, undefined, 409)
    expect(refused.type).toBe('/docs/problems/wrong-state')
    const permission = { kind: 'given', personName: 'Cora Customer', method: 'phone', numberCalled: '+351 555 0100', givenAt: new Date().toISOString() }
    await post(desk, `/v1/quote-versions/${version}/authorisations`, { ...permission, amountMinor: TOTAL - 1 })
    await post(technician, `/v1/jobs/${job}/repair`, undefined, 409)
    await post(desk, `/v1/quote-versions/${version}/authorisations`, permission)
    expect((await standing()).state).toBe('approved')
  })

  test('the repair is done, and the finding is kept against what had been believed', async () => {
    await post(technician, `/v1/jobs/${job}/repair`)
    expect((await standing()).state).toBe('in-repair')
    await post(manager, `/v1/quote-versions/${version}/withdrawal`, { reason: 'too late' }, 409)
    const finding = await post(technician, `/v1/jobs/${job}/findings`, { cylinders: [3], fault: 'exhaust-valve-leak', seen: 'Seat burnt over a quarter of its ring' })
    expect(finding.believed).toBeGreaterThan(0.5)
    await post(technician, `/v1/jobs/${job}/repair/finish`, { operations: ['head-valves'] }, 200)
    expect((await standing()).state).toBe('retest-due')
    expect((await send(desk, 'post', `/v1/jobs/${job}/hand-over`, {})).status).toBe(409)
  })

  test('the release retest is compared with the session that the diagnosis rested on', async () => {
    const { items } = await get<{ items: Retest[] }>(technician, `/v1/jobs/${job}/retests`)
    expect(items).toEqual([expect.objectContaining({ kind: 'release', baselineSession: baseline, outcome: null })])
    const session = await measure('release', [158, 160, 157, 156], gauge)
    const path = `/v1/retests/${items[0]!.id}`
    const shown = await get<{ session: string; comparison: { comparable: boolean; cylinders: { cylinder: number; improved: number }[] }; before: Evaluation; after: Evaluation }>(technician, `${path}/comparison`)
    expect(shown.session).toBe(session)
    expect(shown.comparison.comparable).toBe(true)
    expect(shown.comparison.cylinders[2]).toMatchObject({ cylinder: 3 })
    expect(shown.comparison.cylinders[2]!.improved).toBeGreaterThan(0.9)
    expect([shown.before.consistency.asRead, shown.after.consistency.asRead]).toEqual(['outside', 'inside'])
    const passed = await post(technician, `${path}/outcome`, { outcome: 'passed', session }, 200)
    expect(passed).toMatchObject({ outcome: 'passed', session, decidedBy: { id: technician.id } })
    expect((await get<{ comparison: unknown }>(manager, `${path}/comparison`)).comparison).toEqual(shown.comparison)
    expect((await standing()).state).toBe('ready')
  })

  test('the car is handed over with a follow-up promised', async () => {
    await post(desk, `/v1/jobs/${job}/hand-over`, { odometerKm: 182_410, followUps: [{ reason: 'Head torqued after the first 1000 km', odometerKm: 183_400 }] }, 200)
    expect((await standing()).state).toBe('handed-over')
    const open = await get<{ items: Retest[] }>(desk, `/v1/garages/${chain.mill.id}/retests?due=true`)
    expect(open.items).toEqual([expect.objectContaining({ job, kind: 'follow-up', outcome: null })])
  })

  test('the trail tells it all in order, is whole, and shows another garage no quote', async () => {
    const { items } = await get<{ items: TrailEntry[] }>(technician, `/v1/jobs/${job}/trail?limit=200`)
    const kinds = items.map(({ kind }) => kind).filter((kind) => kind !== 'reading' && kind !== 'evaluation' && !kind.startsWith('session'))
    expect(kinds).toEqual([
      'job-booked', 'suggestion-taken', 'quote-sent', 'quote-sent-back', 'quote-sent', 'quote-approved', 'authorisation-given', 'authorisation-given', 'repair-started', 'finding',
      'repair-finished', 'retest-promised', 'retest-passed', 'retest-promised', 'handed-over',
    ])
    expect(JSON.stringify(items)).not.toContain('Cora')
    expect((await get<{ whole: boolean }>(technician, `/v1/engines/${engine}/trail/check`)).whole).toBe(true)
    const elsewhere = await get<{ items: TrailEntry[] }>(chain.harbour.technician, `/v1/engines/${engine}/trail?limit=200`)
    expect(elsewhere.items.filter(({ kind }) => kind.startsWith('quote') || kind.startsWith('authorisation')).every(({ body, actor }) => body === null && actor === null)).toBe(true)
    expect((await send(chain.harbour.technician, 'get', `/v1/jobs/${job}/quote`)).status).toBe(404)
  })
})
