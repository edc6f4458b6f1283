import request from 'supertest'
import { v7 } from 'uuid'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { MANAGER_LIMIT, testChain, testJob, testPerson, testService, type TestChain, type TestJob, type TestPerson, type TestService } from '../../../../../tests/support/index.ts'

let service: TestService
let chain: TestChain
let job: TestJob

const line = (rateMinor: number, more: object = {}) => ({ kind: 'part', text: 'A part', quantity: 1, rateMinor, taxBasisPoints: 0, ...more })
async function call(who: TestPerson, method: 'get' | 'post' | 'put' | 'delete', path: string, body?: object, headers: Record<string, string> = {}) {
  const sent = request(service.server)[method](path).set('authorization', `Bearer ${who.token}`).set({ 'idempotency-key': v7(), ...headers })
  return body === undefined ? sent : sent.send(body)
}
/** A version of the job, written and sent by somebody. */
async function sent(who: TestPerson, totalMinor: number, of = job): Promise<string> {
  const drafted = await call(who, 'put', `/v1/jobs/${of.id}/quote/draft`, { lines: [line(totalMinor)] }, { 'if-none-match': '*' })
  expect(drafted.status).toBe(201)
  const version = await call(who, 'post', `/v1/jobs/${of.id}/quote/versions`)
  expect(version.status).toBe(201)
  return version.body.id as string
}
const approve = (who: TestPerson, version: string, body: object = {}) => call(who, 'post', `/v1/quote-versions/${version}/approval`, body)
const permit = (version: string, more: object = {}) => call(chain.mill.frontDesk, 'post', `/v1/quote-versions/${version}/authorisations`, { kind: 'given', personName: 'Cora', method: 'in-person', givenAt: new Date().toISOString(), ...more })
const start = (of = job) => call(chain.mill.technician, 'post', `/v1/jobs/${of.id}/repair`)
const problemOf = ({ status, body }: { status: number; body: { type?: string } }) => [status, body.type?.split('/').at(-1)]
const trailKinds = async (kind: string) => (await service.database.prisma.trailEntry.findMany({ where: { engineId: job.engine, kind }, orderBy: { seq: 'asc' } })).map(({ body }) => JSON.parse(body) as Record<string, unknown>)

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
})
afterAll(() => service.close())
const fresh = async () => { job = await testJob(service, chain.mill) }

describe('who may approve', () => {
  test('a manager within his limit, not above it; the owner above it', async () => {
    await fresh()
    const version = await sent(chain.mill.technician, MANAGER_LIMIT + 1)
    expect(problemOf(await approve(chain.mill.manager, version))).toEqual([403, 'above-limit'])
    const decisions = await call(chain.mill.manager, 'get', `/v1/garages/${chain.mill.id}/decisions`)
    expect(decisions.body.items).toEqual([expect.objectContaining({ quoteVersion: version, mayApprove: false, why: 'above-limit' })])
    expect((await approve(chain.owner, version)).status).toBe(201)
    await fresh()
    expect((await approve(chain.mill.manager, await sent(chain.mill.technician, MANAGER_LIMIT))).status).toBe(201)
  })

  test('nobody his own, and who edited a draft last is its author', async () => {
    await fresh()
    expect(problemOf(await approve(chain.mill.manager, await sent(chain.mill.manager, 100)))).toEqual([403, 'own-quote'])
    await fresh()
    await call(chain.mill.technician, 'put', `/v1/jobs/${job.id}/quote/draft`, { lines: [line(100)] }, { 'if-none-match': '*' })
    await call(chain.mill.manager, 'put', `/v1/jobs/${job.id}/quote/draft`, { lines: [line(200)] }, { 'if-match': '"1"' })
    const version = (await call(chain.mill.technician, 'post', `/v1/jobs/${job.id}/quote/versions`)).body.id as string
    expect(problemOf(await approve(chain.mill.manager, version))).toEqual([403, 'own-quote'])
    expect(problemOf(await approve(chain.mill.technician, version))).toEqual([403, 'not-allowed'])
    expect(problemOf(await approve(chain.harbour.manager, version))).toEqual([404, 'not-found'])
  })

  test('a deputy in the place of his manager, within that limit, and the trail says so', async () => {
    await fresh()
    const deputy = await testPerson(service, 'Dora Deputy', [{ garage: chain.mill.id, role: 'front-desk' }])
    const version = await sent(chain.mill.technician, 500)
    expect(problemOf(await approve(deputy, version))).toEqual([403, 'not-allowed'])
    await service.database.prisma.deputy.create({
      data: { id: v7(), garageId: chain.mill.id, managerId: chain.mill.manager.id, deputyId: deputy.id, from: new Date(Date.now() - 1000), until: new Date(Date.now() + 3_600_000), createdById: chain.owner.id },
    })
    // A sign-in is remembered for some seconds; another one of the same person knows the deputy's place at once.
    service.app.access.forget(deputy.id)
    const approved = await approve(deputy, version)
    expect(approved.body).toMatchObject({ kind: 'approved', by: { id: deputy.id }, deputyFor: { id: chain.mill.manager.id } })
    expect((await trailKinds('quote-approved'))[0]).toMatchObject({ deputyFor: chain.mill.manager.id })
  })

  test('a lone owner his own, with a reason that the trail marks; not while a manager could', async () => {
    await fresh()
    expect(problemOf(await approve(chain.owner, await sent(chain.owner, 100)))).toEqual([403, 'own-quote'])
    await fresh()
    const version = await sent(chain.owner, MANAGER_LIMIT + 1)
    const bare = await approve(chain.owner, version)
    expect([bare.status, bare.body.errors[0].path]).toEqual([400, '/reason'])
    const approved = await approve(chain.owner, version, { reason: 'Nobody else has this limit' })
    expect(approved.body).toMatchObject({ ownQuote: true, reason: 'Nobody else has this limit' })
    expect((await trailKinds('quote-approved'))[0]).toMatchObject({ ownQuote: true })
    await testPerson(service, 'Otto Owner', [{ garage: null, role: 'owner' }])
    await fresh()
    expect(problemOf(await approve(chain.owner, await sent(chain.owner, MANAGER_LIMIT + 1), { reason: 'again' }))).toEqual([403, 'own-quote'])
  })
})

describe('one answer to one version', () => {
  test('two answers at once: one counts', async () => {
    await fresh()
    const version = await sent(chain.mill.technician, 100)
    const answers = await Promise.all([approve(chain.mill.manager, version), approve(chain.owner, version)])
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409])
  })

  test('an earlier version cannot be answered once a later one was sent', async () => {
    await fresh()
    const first = await sent(chain.mill.technician, 100)
    await sent(chain.mill.technician, 200)
    expect(problemOf(await approve(chain.mill.manager, first))).toEqual([409, 'wrong-state'])
  })

  test('what was sent is never edited: neither by us nor by the database', async () => {
    await fresh()
    await sent(chain.mill.technician, 100)
    await expect(service.database.pool.query('UPDATE quote_line SET rate_minor = 1')).rejects.toMatchObject({ code: '23001' })
    const empty = await call(chain.mill.technician, 'post', `/v1/jobs/${job.id}/quote/versions`)
    expect(problemOf(empty)).toEqual([409, 'wrong-state'])
  })

  test('a withdrawn approval leaves the version unanswered, until the repair starts', async () => {
    await fresh()
    const version = await sent(chain.mill.technician, 100)
    await approve(chain.mill.manager, version)
    const withdraw = (who: TestPerson) => call(who, 'post', `/v1/quote-versions/${version}/withdrawal`, { reason: 'new evidence' })
    const other = await testPerson(service, 'Milo Manager', [{ garage: chain.mill.id, role: 'manager', limitMinor: MANAGER_LIMIT }])
    expect((await withdraw(other)).status).toBe(403)
    expect((await withdraw(chain.mill.manager)).status).toBe(201)
    expect((await approve(chain.mill.manager, version)).status).toBe(201)
    await permit(version)
    expect((await start()).status).toBe(201)
    expect(problemOf(await withdraw(chain.mill.manager))).toEqual([409, 'wrong-state'])
  })
})

describe('what the customer permits', () => {
  test('nothing is asked of him before the manager approved; by phone the number called is kept', async () => {
    await fresh()
    const version = await sent(chain.mill.technician, 1_000)
    expect(problemOf(await permit(version))).toEqual([409, 'wrong-state'])
    await approve(chain.mill.manager, version)
    const noNumber = await permit(version, { method: 'phone' })
    expect([noNumber.status, noNumber.body.errors[0].path]).toEqual([400, '/numberCalled'])
    const tomorrow = await permit(version, { givenAt: new Date(Date.now() + 86_400_000).toISOString() })
    expect(tomorrow.body.errors[0].path).toBe('/givenAt')
    expect((await permit(version, { method: 'phone', numberCalled: '555 0100' })).body).toMatchObject({ amountMinor: 1_000, numberCalled: '555 0100' })
    expect((await call(chain.mill.technician, 'post', `/v1/quote-versions/${version}/authorisations`, {})).status).toBe(403)
  })

  test('more than he permitted needs a new permission, unless the tolerance of the garage covers it', async () => {
    await fresh()
    const first = await sent(chain.mill.technician, 1_000)
    await approve(chain.mill.manager, first)
    await permit(first)
    await start()
    const more = await sent(chain.mill.technician, 1_100)
    await approve(chain.mill.manager, more)
    const standing = async () => (await call(chain.mill.frontDesk, 'get', `/v1/jobs/${job.id}`)).body.standing as { state: string; beside: string[] }
    expect(await standing()).toMatchObject({ state: 'waiting-for-customer', beside: ['excess-needs-permission'] })
    // A tolerance of one tenth, as Maryland CL 14-1002 has it (read).
    await service.database.prisma.garage.update({ where: { id: chain.mill.id }, data: { toleranceBasisPoints: 1_000 } })
    expect((await standing()).state).toBe('in-repair')
    await service.database.prisma.garage.update({ where: { id: chain.mill.id }, data: { toleranceBasisPoints: 0 } })
    await permit(more)
    expect((await standing()).state).toBe('in-repair')
    expect((await call(chain.mill.frontDesk, 'get', `/v1/jobs/${job.id}/quote`)).body.permittedMinor).toBe(1_100)
  })

  test('when he declines, no repair starts and the car can go', async () => {
    await fresh()
    const version = await sent(chain.mill.technician, 1_000)
    await approve(chain.mill.manager, version)
    await permit(version, { kind: 'declined' })
    expect(problemOf(await start())).toEqual([409, 'wrong-state'])
    expect((await call(chain.mill.frontDesk, 'get', `/v1/jobs/${job.id}`)).body.standing.state).toBe('ready')
  })
})

describe('the draft', () => {
  test('is started once, edited at the version that was read, and dropped', async () => {
    await fresh()
    const draft = `/v1/jobs/${job.id}/quote/draft`
    const body = { lines: [line(100)] }
    expect((await call(chain.mill.technician, 'put', draft, body)).status).toBe(428)
    expect((await call(chain.mill.technician, 'put', draft, body, { 'if-match': '"1"' })).status).toBe(412)
    expect((await call(chain.mill.technician, 'put', draft, body, { 'if-none-match': '*' })).status).toBe(201)
    expect((await call(chain.mill.technician, 'put', draft, body, { 'if-none-match': '*' })).status).toBe(412)
    expect((await call(chain.mill.technician, 'delete', draft, undefined, { 'if-match': '"9"' })).status).toBe(412)
    expect((await call(chain.mill.technician, 'delete', draft, undefined, { 'if-match': '"1"' })).status).toBe(204)
    expect((await call(chain.mill.frontDesk, 'put', draft, body, { 'if-none-match': '*' })).status).toBe(403)
  })

  test('names no cylinder that the engine lacks and no sum beyond measure', async () => {
    await fresh()
    const put = (lines: object[]) => call(chain.mill.technician, 'put', `/v1/jobs/${job.id}/quote/draft`, { lines }, { 'if-none-match': '*' })
    expect((await put([line(1), line(1, { cylinders: [1, 5] })])).body.errors[0].path).toBe('/lines/1/cylinders/1')
    expect((await put([line(100_000_000, { quantity: 10_000 })])).body.errors[0].path).toBe('/lines')
    expect((await put([line(1, { quantity: 0.0005 })])).body.errors[0].path).toBe('/lines/0/quantity')
  })

  test('can start from lines that the evidence carries, at the prices of the garage', async () => {
    await fresh()
    await service.database.prisma.catalogueItem.create({ data: { id: v7(), garageId: chain.mill.id, kind: 'labour', operation: 'head-valves', text: 'Head off, valves', minutes: 510, taxBasisPoints: 2_000 } })
    const session = (await call(chain.mill.technician, 'post', `/v1/jobs/${job.id}/sessions`, { conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' }, tester: job.tester })).body.id as string
    for (const [at, value] of [155, 160, 95, 150].entries()) {
      await call(chain.mill.technician, 'put', `/v1/sessions/${session}/readings/${v7()}`, { reading: { test: 'compression', cylinder: at + 1, pressure: { value, unit: 'psi' } }, takenAt: new Date().toISOString() })
    }
    await call(chain.mill.technician, 'put', `/v1/sessions/${session}/readings/${v7()}`, { reading: { test: 'leakage', cylinder: 3, held: { value: 30, unit: 'psi' }, heard: { exhaust: 3, crankcase: 0, intake: 0 } }, takenAt: new Date().toISOString() })
    const { body } = await call(chain.mill.technician, 'get', `/v1/jobs/${job.id}/quote/suggested-lines`)
    expect(body.items).toContainEqual(expect.objectContaining({ operation: 'head-valves', cylinders: [3], text: 'Head off, valves', quantity: 8.5, rateMinor: 8_000, taxBasisPoints: 2_000 }))
  })
})
