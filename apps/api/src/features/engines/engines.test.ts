import { engineHistoryEntrySchema, page, type Engine, type EngineHistoryEntry } from '@evenbore/contract'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { caller } from '../../../../../tests/support/caller.ts'
import { testChain, testService, type TestChain, type TestService } from '../../../../../tests/support/index.ts'

let service: TestService
let chain: TestChain
let customer: string
beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  customer = (await desk().post(`/v1/garages/${chain.mill.id}/customers`, { name: 'Ines Duarte' })).body.id
})
afterAll(() => service.close())

const owner = () => caller(service, chain.owner.token)
const desk = () => caller(service, chain.mill.frontDesk.token)
const FOUR = { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], compressionRatio: 8.8 }
let made = 0
const family = (more: object = {}) => ({ name: `Side-valve four ${++made}`, specification: FOUR, basis: { compressionRatio: 'maker’s handbook, from memory' }, ...more })
const newFamily = async (more: object = {}) => (await owner().post('/v1/engine-families', family(more))).body
const newEngine = async (more: object = {}): Promise<Engine> => (await desk().post('/v1/engines', { description: `engine ${++made}`, ownValues: FOUR, ...more })).body
const newVehicle = async (plate = `EN ${++made}`) => (await desk().post(`/v1/garages/${chain.mill.id}/vehicles`, { customer, plate, description: 'red van' })).body.id as string

describe('families', () => {
  test('an owner adds a design with the basis of its values; all of the chain read it', async () => {
    const answer = await owner().post('/v1/engine-families', family({ leads: { rotor: 'clockwise', leadOneAtOClock: 2 } }))
    expect(answer.body).toMatchObject({ specification: FOUR, leads: { rotor: 'clockwise', leadOneAtOClock: 2 }, version: 1 })
    expect((await caller(service, chain.harbour.technician.token).get(`/v1/engine-families/${answer.body.id}`)).body).toEqual(answer.body)
    expect((await owner().patch(`/v1/engine-families/${answer.body.id}`, 1, { leads: null })).body).toMatchObject({ leads: null, version: 2 })
    expect((await owner().post('/v1/engine-families', { ...family(), name: answer.body.name })).status).toBe(409)
    expect((await desk().post('/v1/engine-families', family())).status).toBe(403)
    expect((await desk().get(`/v1/engine-families?q=${encodeURIComponent(answer.body.name.toUpperCase())}`)).body.items).toHaveLength(1)
  })
  test.each([
    ['/specification/firingOrder/3', { specification: { ...FOUR, firingOrder: [1, 3, 4, 4] } }],
    ['/specification/banks', { specification: { ...FOUR, layout: 'v' } }],
    ['/specification/cylinders', { specification: { ...FOUR, cylinders: 17 } }],
    ['/specification/boreMm', { specification: { ...FOUR, boreMm: -3 } }],
    ['/specification/limits/minimum/value', { specification: { ...FOUR, limits: { minimum: { value: 12, unit: 'bar' }, maximum: { value: 10, unit: 'bar' } } } }],
    ['/specification/history', { specification: { ...FOUR, history: {} } }],
    ['/basis/boreMm', { basis: { boreMm: 'from memory' } }],
    ['/leads/rotor', { leads: { rotor: 'left', leadOneAtOClock: 2 } }],
  ])('a bad %s is 400 at its path', async (path, more) => {
    const answer = await owner().post('/v1/engine-families', family(more))
    expect(answer.status).toBe(400)
    expect(answer.body.errors.map((error: { path: string }) => error.path)).toContain(path)
  })
  test('an edit that an engine of the family would not fit is refused, and the engine named', async () => {
    const { id } = await newFamily()
    await newEngine({ description: 'the odd one', family: id, ownValues: { firingOrder: [1, 2, 4, 3] } })
    const answer = await owner().patch(`/v1/engine-families/${id}`, 1, { specification: { fuel: 'petrol', layout: 'inline', cylinders: 6, compressionRatio: 8 } })
    expect(answer.status).toBe(409)
    expect(answer.body.detail).toContain('the odd one')
  })
})

describe('engines', () => {
  test('are their family’s values with their own laid over', async () => {
    const known = await newFamily({ specification: { ...FOUR, limits: { spreadPercent: 10 } } })
    const engine = await newEngine({ family: known.id, ownValues: { compressionRatio: 9.2 }, stampedNumber: 'E 4711' })
    expect(engine).toMatchObject({ family: { id: known.id, name: known.name }, specification: { ...FOUR, compressionRatio: 9.2, limits: { spreadPercent: 10 } }, ownValues: { compressionRatio: 9.2 }, fittedIn: null, history: {} })
    const edited = await desk().patch(`/v1/engines/${engine.id}`, 1, { ownValues: {}, history: { overheated: true } })
    expect(edited.body).toMatchObject({ specification: { compressionRatio: 8.8 }, history: { overheated: true }, version: 2 })
    expect((await desk().patch(`/v1/engines/${engine.id}`, 2, { family: null })).body.errors.map(({ path }: { path: string }) => path)).toEqual(['/ownValues/fuel', '/ownValues/layout', '/ownValues/cylinders'])
    expect((await desk().patch(`/v1/engines/${engine.id}`, 1, { description: 'x' })).status).toBe(412)
    expect((await caller(service, chain.harbour.technician.token).get(`/v1/engines/${engine.id}`)).body).toEqual(edited.body)
    expect((await caller(service, chain.mill.technician.token).patch(`/v1/engines/${engine.id}`, 2, { description: 'x' })).status).toBe(403)
  })
  test('are found by stamped number, description, or the plate of their car', async () => {
    const engine = await newEngine({ description: 'tired straight four', stampedNumber: 'ZQ-88' })
    await desk().post(`/v1/engines/${engine.id}/fittings`, { vehicle: await newVehicle('QQ 900') })
    const find = async (q: string, who = desk()) => (await who.get(`/v1/engines?q=${encodeURIComponent(q)}`)).body.items.map(({ id }: Engine) => id)
    expect(await find('zq-88')).toEqual([engine.id])
    expect(await find('four tired')).toEqual([engine.id])
    expect(await find('qq900')).toEqual([engine.id])
    expect(await find('qq900', caller(service, chain.harbour.frontDesk.token))).toEqual([])
  })
  test('pages', async () => {
    const all = (await desk().get('/v1/engines?limit=200')).body.items
    const first = (await desk().get('/v1/engines?limit=2')).body
    expect([...first.items, ...(await desk().get(`/v1/engines?limit=2&after=${first.next}`)).body.items]).toEqual(all.slice(0, 4))
  })
})

describe('fittings', () => {
  test('one engine, one car at a time: fitted elsewhere is 409 and named; removed first it fits', async () => {
    const engine = await newEngine()
    const [first, second] = [await newVehicle('FI 1'), await newVehicle('FI 2')]
    const fitting = await desk().post(`/v1/engines/${engine.id}/fittings`, { vehicle: first, from: '2020-05-01T00:00:00Z', odometerKm: 50_000 })
    expect(fitting.body).toMatchObject({ engine: engine.id, vehicle: first, from: '2020-05-01T00:00:00.000Z', until: null, odometerKm: 50_000 })
    const refused = await desk().post(`/v1/engines/${engine.id}/fittings`, { vehicle: second })
    expect([refused.status, refused.body.detail]).toEqual([409, expect.stringContaining('FI 1')])
    expect((await desk().post(`/v1/fittings/${fitting.body.id}/removal`, { until: '2019-01-01T00:00:00Z' })).status).toBe(400)
    expect((await desk().post(`/v1/fittings/${fitting.body.id}/removal`, { until: '2999-01-01T00:00:00Z' })).body.errors).toMatchObject([{ path: '/until' }])
    expect((await caller(service, chain.harbour.frontDesk.token).post(`/v1/fittings/${fitting.body.id}/removal`)).status).toBe(404)
    expect((await desk().post(`/v1/fittings/${fitting.body.id}/removal`, { until: '2023-01-01T00:00:00Z' })).body.until).toBe('2023-01-01T00:00:00.000Z')
    expect((await desk().post(`/v1/fittings/${fitting.body.id}/removal`)).status).toBe(409)
    const overlap = await desk().post(`/v1/engines/${engine.id}/fittings`, { vehicle: second, from: '2022-01-01T00:00:00Z' })
    expect([overlap.status, overlap.body.type]).toEqual([409, '/docs/problems/conflict'])
    expect((await desk().post(`/v1/engines/${engine.id}/fittings`, { vehicle: second })).status).toBe(201)
    const kinds = (await service.database.prisma.trailEntry.findMany({ where: { engineId: engine.id }, orderBy: { seq: 'asc' } })).map(({ kind }) => kind)
    expect(kinds).toEqual(['fitted', 'removed', 'fitted'])
  })
  test('a car of another garage is not fitted from here', async () => {
    const elsewhere = caller(service, chain.harbour.frontDesk.token)
    const engine = await newEngine()
    const vehicle = await newVehicle()
    expect((await elsewhere.post(`/v1/engines/${engine.id}/fittings`, { vehicle })).status).toBe(404)
    expect((await desk().post(`/v1/engines/${vehicle}/fittings`, { vehicle })).status).toBe(404)
    expect((await desk().post(`/v1/engines/${engine.id}/fittings`, { vehicle, odometerKm: 'many' })).body.errors).toMatchObject([{ path: '/odometerKm' }])
  })
})

describe('what happened to an engine', () => {
  test('stands in its trail, and both records of one engine name each other', async () => {
    const [one, two] = [await newEngine(), await newEngine()]
    const event = await desk().post(`/v1/engines/${one.id}/events`, { kind: 'rebuilt', at: '2024-03-01T00:00:00Z', text: 'rings and shells' })
    expect([event.status, event.body]).toEqual([201, { engine: one.id, kind: 'rebuilt', at: '2024-03-01T00:00:00.000Z', text: 'rings and shells' }])
    expect((await desk().post(`/v1/engines/${one.id}/events`, { kind: 'blessed', text: 'x' })).body.errors).toMatchObject([{ path: '/kind' }])
    expect((await desk().post(`/v1/engines/${one.id}/same`, { same: one.id, reason: 'x' })).body.errors).toMatchObject([{ path: '/same' }])
    expect((await desk().post(`/v1/engines/${one.id}/same`, { same: two.id, reason: 'same stamp' })).status).toBe(201)
    const entries = await service.database.prisma.trailEntry.findMany({ where: { kind: 'same-engine' } })
    expect(entries.map(({ engineId, body }) => [engineId, (JSON.parse(body) as { same: string }).same]).sort()).toEqual([[one.id, two.id], [two.id, one.id]].sort())
  })
  test('its history is readable by the chain; of another garage’s job only date and garage', async () => {
    const job = (await desk().post(`/v1/garages/${chain.mill.id}/jobs`, {
      customer, vehicle: { plate: 'HI 1', description: 'saloon' }, complaint: 'misses', engine: { description: 'historic', ownValues: FOUR },
    })).body
    const read = async (token: string) => page(engineHistoryEntrySchema).parse((await caller(service, token).get(`/v1/engines/${job.engine}/history`)).body).items
    const own = await read(chain.mill.technician.token)
    expect(own.map(({ kind }) => kind).sort()).toEqual(['fitted', 'job'])
    const jobIn = (entries: EngineHistoryEntry[]) => entries.find(({ kind }) => kind === 'job')
    expect(jobIn(own)).toMatchObject({ job: job.id, code: job.code, plate: 'HI 1', text: 'misses', garage: 'Mill Lane' })
    expect(jobIn(await read(chain.harbour.technician.token))).toEqual({ at: job.bookedAt, kind: 'job', garage: 'Mill Lane', plate: null, job: null, code: null, text: null })
    expect(jobIn(await read(chain.owner.token))?.code).toBe(job.code)
  })
})
