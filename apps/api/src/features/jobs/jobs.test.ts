import { floorSchema, jobSchema, page, searchHitSchema, type Job } from '@evenbore/contract'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { caller } from '../../../../../tests/support/caller.ts'
import { testApp, testChain, testService, testTablet, onTablet, type TestChain, type TestService } from '../../../../../tests/support/index.ts'

let service: TestService
let chain: TestChain
beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
})
afterAll(() => service.close())

const NOBODY = '019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b'
const ENGINE = { description: 'grey four', ownValues: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2] } }
let cars = 0
/** A car nobody has seen before. */
const newCar = (more: object = {}) => ({
  customer: { name: `Ines Duarte ${++cars}`, phone: `+351 912 00${String(cars).padStart(4, '0')}` },
  vehicle: { plate: `FX ${200 + cars} B`, description: 'grey estate' },
  engine: ENGINE,
  complaint: 'misses on one when cold',
  ...more,
})

const as = (token: string) => caller(service, token)
const desk = () => as(chain.mill.frontDesk.token)
const bench = () => as(chain.mill.technician.token)
const jobsPath = () => `/v1/garages/${chain.mill.id}/jobs`

async function booked(more: object = {}): Promise<Job> {
  const answer = await desk().post(jobsPath(), newCar(more))
  expect(answer.status, JSON.stringify(answer.body)).toBe(201)
  return answer.body as Job
}
const openSession = (job: string) => bench().post(`/v1/jobs/${job}/sessions`, { conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' } })

describe('book in', () => {
  test('makes customer, vehicle, engine and fitting with the job, and gives a code to say aloud', async () => {
    const answer = await desk().post(jobsPath(), newCar({ odometerKm: 88_000, priorWork: { headTorqued: true } }))
    expect(answer.status, JSON.stringify(answer.body)).toBe(201)
    expect(answer.headers['location']).toBe(`/v1/jobs/${answer.body.id}`)
    expect(answer.headers['etag']).toBe('"1"')
    const job = jobSchema.parse(answer.body)
    expect(job.code).toMatch(/^M \d+$/)
    expect(job.standing).toMatchObject({ state: 'booked', since: job.bookedAt })
    expect(job.engineRecord.fittedIn).toMatchObject({ vehicle: job.vehicleRecord.id, plate: job.plate })
    expect(job.vehicleRecord).toMatchObject({ customer: job.customerRecord?.id, engine: job.engine })
    expect(job).toMatchObject({ cylinders: 4, odometerKm: 88_000, priorWork: { headTorqued: true }, bookedBy: { id: chain.mill.frontDesk.id } })
    const trail = await service.database.prisma.trailEntry.findMany({ where: { engineId: job.engine }, orderBy: { seq: 'asc' } })
    expect(trail.map(({ kind }) => kind)).toEqual(['fitted', 'job-booked'])
    expect(await service.database.prisma.outboxEvent.count({ where: { jobId: job.id, kind: 'job.changed' } })).toBe(1)
  })
  test('codes count up, also when two desks book at once', async () => {
    const answers = await Promise.all(Array.from({ length: 6 }, () => desk().post(jobsPath(), newCar())))
    expect(answers.map(({ status }) => status)).toEqual(Array(6).fill(201))
    expect(new Set(answers.map(({ body }) => body.code)).size).toBe(6)
  })
  test('a car that is known needs neither engine nor customer made anew', async () => {
    const first = await booked()
    const again = await desk().post(jobsPath(), { customer: first.customerRecord?.id, vehicle: first.vehicleRecord.id, complaint: 'smokes' })
    expect(again.status).toBe(201)
    expect(again.body.engine).toBe(first.engine)
  })
  test('an engine that sits in another car is refused, and the car is named', async () => {
    const first = await booked()
    const answer = await desk().post(jobsPath(), newCar({ engine: first.engine }))
    expect(answer.status).toBe(409)
    expect(answer.body.detail).toContain(first.plate)
    expect(await service.database.prisma.vehicle.count({ where: { plate: `FX ${200 + cars} B` } })).toBe(0)
  })
  test('another engine in a known car ends the fitting of the one before', async () => {
    const first = await booked()
    const swapped = await desk().post(jobsPath(), { customer: first.customerRecord?.id, vehicle: first.vehicleRecord.id, engine: { ...ENGINE, description: 'spare four' }, complaint: 'swapped' })
    expect(swapped.status).toBe(201)
    expect(swapped.body.engine).not.toBe(first.engine)
    expect((await desk().get(`/v1/engines/${first.engine}`)).body.fittedIn).toBeNull()
  })
  test('a car without a known engine needs one', async () => {
    const first = await booked()
    const vehicle = (await desk().post(`/v1/garages/${chain.mill.id}/vehicles`, { customer: first.customerRecord?.id, plate: 'NO 1', description: 'empty shell' })).body
    const answer = await desk().post(jobsPath(), { customer: first.customerRecord?.id, vehicle: vehicle.id, complaint: 'none' })
    expect(answer.status).toBe(400)
    expect(answer.body.errors).toMatchObject([{ path: '/engine' }])
  })
  test('the same Idempotency-Key books once', async () => {
    const body = newCar()
    const send = () => request(service.server).post(jobsPath()).auth(chain.mill.frontDesk.token, { type: 'bearer' }).set('idempotency-key', 'book-in-0001').send(body)
    const [one, two] = [await send(), await send()]
    expect(one.status).toBe(201)
    expect(two.body).toEqual(one.body)
    expect((await send().send({ ...body, complaint: 'other' })).status).toBe(409)
  })
  test.each([
    ['a firing order that is no permutation', { engine: { ...ENGINE, ownValues: { ...ENGINE.ownValues, firingOrder: [1, 3, 3, 2] } } }, '/engine/ownValues/firingOrder/2'],
    ['an engine without its cylinders', { engine: { description: 'x', ownValues: { fuel: 'petrol', layout: 'inline' } } }, '/engine/ownValues/cylinders'],
    ['an unknown family', { engine: { ...ENGINE, family: NOBODY } }, '/engine/family'],
    ['a customer nobody knows', { customer: NOBODY }, '/customer'],
    ['a vehicle nobody knows', { vehicle: NOBODY }, '/vehicle'],
    ['a bay nobody knows', { bay: NOBODY }, '/bay'],
    ['a come-back of nothing', { comeBackOf: NOBODY }, '/comeBackOf'],
    ['retests that are not owed', { fulfils: [NOBODY] }, '/fulfils'],
    ['an odometer below nothing', { odometerKm: -1 }, '/odometerKm'],
    ['a complaint that is a number', { complaint: 7 }, '/complaint'],
    ['an unknown field', { colour: 'red' }, '/colour'],
    ['a promise that is no instant', { promisedAt: 'tomorrow' }, '/promisedAt'],
  ])('%s is answered 400 at its path, and nothing is written', async (_, more, path) => {
    const before = await counts()
    const answer = await desk().post(jobsPath(), newCar(more))
    expect(answer.status).toBe(400)
    expect(answer.headers['content-type']).toContain('application/problem+json')
    expect(answer.body.errors).toContainEqual(expect.objectContaining({ path, expected: expect.any(String) }))
    expect(await counts()).toEqual(before)
  })
  const counts = () => Promise.all([service.database.prisma.job.count(), service.database.prisma.customer.count(), service.database.prisma.engine.count(), service.database.prisma.outboxEvent.count()])
})

describe('who may see and do what', () => {
  test('another garage answers 404 and lists nothing', async () => {
    const job = await booked()
    const other = as(chain.harbour.frontDesk.token)
    expect((await other.get(`/v1/jobs/${job.id}`)).status).toBe(404)
    expect((await other.get(jobsPath())).status).toBe(404)
    expect((await other.patch(`/v1/jobs/${job.id}`, 1, { complaint: 'x' })).status).toBe(404)
    expect((await other.get(`/v1/customers/${job.customerRecord?.id}`)).status).toBe(404)
    expect((await other.get(`/v1/engines/${job.engine}`)).body.fittedIn).toMatchObject({ plate: null })
  })
  test('an unknown id is 404, and one that is no id 400', async () => {
    expect((await as(chain.owner.token).get(`/v1/jobs/${NOBODY}`)).status).toBe(404)
    expect((await desk().get('/v1/jobs/27')).status).toBe(400)
    expect((await as(chain.owner.token).get(`/v1/garages/${NOBODY}/floor`)).status).toBe(404)
  })
  test('a technician books nobody in', async () => {
    expect((await bench().post(jobsPath(), newCar())).status).toBe(403)
  })
  test('a tablet sees the customer of its own bay and no other', async () => {
    const here = await booked({ bay: chain.mill.bays[0] })
    const elsewhere = await booked()
    const tablet = await testTablet(service, chain.mill)
    const person = as(await onTablet(service, tablet, chain.mill.technician))
    expect((await person.get(`/v1/jobs/${here.id}`)).body).toMatchObject({ customer: here.customer, customerRecord: { id: here.customerRecord?.id } })
    expect((await person.get(`/v1/jobs/${elsewhere.id}`)).body).toMatchObject({ customer: '', customerRecord: null })
    const alone = as(tablet.tabletToken)
    expect((await alone.get(`/v1/jobs/${here.id}`)).status).toBe(200)
    expect((await alone.get(`/v1/jobs/${elsewhere.id}`)).status).toBe(404)
    const floor = floorSchema.parse((await alone.get(`/v1/garages/${chain.mill.id}/floor`)).body)
    expect(floor.bays.map(({ job }) => job?.id ?? null)).toEqual([here.id, null])
    expect(floor.elsewhere).toEqual([])
    await desk().post(`/v1/jobs/${here.id}/bay`, { bay: null })
  })
  test('an outside app reads by its scope', async () => {
    const job = await booked()
    expect((await as((await testApp(service, ['jobs:read'])).token).get(`/v1/jobs/${job.id}`)).status).toBe(200)
    expect((await as((await testApp(service, ['evaluate'])).token).get(`/v1/jobs/${job.id}`)).status).toBe(403)
    expect((await as((await testApp(service, ['jobs:read'], [chain.harbour.id])).token).get(`/v1/jobs/${job.id}`)).status).toBe(404)
  })
})

describe('edit', () => {
  test('asks for the version, refuses a stale one, and counts up', async () => {
    const job = await booked()
    const path = `/v1/jobs/${job.id}`
    expect((await desk().patch(path, undefined, { complaint: 'x' })).status).toBe(428)
    expect((await desk().patch(path, '"abc"', { complaint: 'x' })).status).toBe(412)
    const edited = await desk().patch(path, 1, { complaint: 'smokes on the overrun', promisedAt: null })
    expect(edited.status).toBe(200)
    expect(edited.headers['etag']).toBe('"2"')
    expect(edited.body).toMatchObject({ complaint: 'smokes on the overrun', version: 2 })
    expect((await desk().patch(path, 1, { complaint: 'x' })).status).toBe(412)
  })
  test('of two edits at once one is stale', async () => {
    const job = await booked()
    const answers = await Promise.all(['a', 'b'].map((complaint) => desk().patch(`/v1/jobs/${job.id}`, 1, { complaint })))
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412])
  })
})

describe('bays', () => {
  test('one job a bay: the second is told which job is in it', async () => {
    const [one, two] = [await booked(), await booked()]
    const bay = chain.mill.bays[1]
    expect((await bench().post(`/v1/jobs/${one.id}/bay`, { bay })).body.standing.state).toBe('in-bay')
    const refused = await bench().post(`/v1/jobs/${two.id}/bay`, { bay })
    expect(refused.status).toBe(409)
    expect(refused.body.detail).toContain(one.code)
    expect((await as(chain.owner.token).patch(`/v1/bays/${bay}`, 1, { closed: true })).status).toBe(409)
    expect((await bench().post(`/v1/jobs/${one.id}/bay`, { bay: null })).body.bay).toBeNull()
    expect((await bench().post(`/v1/jobs/${two.id}/bay`, { bay: chain.harbour.bays[0] })).status).toBe(400)
  })
})

describe('two people at once', () => {
  test('one bay takes one of two jobs', async () => {
    const [one, two] = [await booked(), await booked()]
    const bay = chain.mill.bays[1]
    const answers = await Promise.all([one, two].map(({ id }) => bench().post(`/v1/jobs/${id}/bay`, { bay })))
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 409])
    for (const { id } of [one, two]) await bench().post(`/v1/jobs/${id}/bay`, { bay: null })
  })
  test('one engine goes into one of two cars, and the loser leaves nothing behind', async () => {
    const engine = (await desk().post('/v1/engines', { ...ENGINE, description: 'wanted twice' })).body.id as string
    const answers = await Promise.all([1, 2].map(() => desk().post(jobsPath(), newCar({ engine }))))
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409])
    expect(await service.database.prisma.fitting.count({ where: { engineId: engine } })).toBe(1)
    expect(await service.database.prisma.job.count({ where: { engineId: engine } })).toBe(1)
  })
})

describe('from testing to hand-over', () => {
  test('a sound engine: session, testing closed, handed over with a promise to measure again', async () => {
    const job = await booked({ bay: chain.mill.bays[1] })
    expect((await desk().post(`/v1/jobs/${job.id}/hand-over`)).body).toMatchObject({ status: 409, type: '/docs/problems/wrong-state' })
    expect((await bench().post(`/v1/jobs/${job.id}/testing-closed`)).status).toBe(409)
    expect((await openSession(job.id)).status).toBe(201)
    expect((await desk().get(`/v1/jobs/${job.id}`)).body.standing).toMatchObject({ state: 'testing', waitsOn: chain.mill.technician.name })
    const closed = await bench().post(`/v1/jobs/${job.id}/testing-closed`, { note: 'even on all four' })
    expect(closed.body.standing).toMatchObject({ state: 'ready', beside: ['nothing-found'] })
    const over = await desk().post(`/v1/jobs/${job.id}/hand-over`, { odometerKm: 88_100, note: 'told about the oil', followUps: [{ reason: 'after 1,000 km', latest: '2026-12-24', odometerKm: 89_100 }] })
    expect(over.status, JSON.stringify(over.body)).toBe(200)
    expect(over.body).toMatchObject({ bay: null, standing: { state: 'handed-over', waitsFor: 'nobody' } })
    expect(await service.database.prisma.session.count({ where: { jobId: job.id, closedAt: null } })).toBe(0)
    const promise = await service.database.prisma.retest.findFirstOrThrow({ where: { jobId: job.id }, include: { retestDates: true } })
    expect(promise).toMatchObject({ kind: 'follow-up', reason: 'after 1,000 km', retestDates: [{ odometerKm: 89_100 }] })
    expect((await desk().patch(`/v1/jobs/${job.id}`, over.body.version, { complaint: 'x' })).status).toBe(409)
    expect((await desk().post(`/v1/jobs/${job.id}/cancellation`, { reason: 'x' })).status).toBe(409)
    const again = await desk().post(jobsPath(), { customer: job.customerRecord?.id, vehicle: job.vehicleRecord.id, complaint: 'as promised', comeBackOf: job.id, fulfils: [promise.id] })
    expect(again.status).toBe(201)
    await desk().post(`/v1/jobs/${again.body.id}/cancellation`, { reason: 'did not come' })
    expect(await service.database.prisma.retest.findUniqueOrThrow({ where: { id: promise.id } })).toMatchObject({ fulfilledByJobId: null })
    const kinds = (await service.database.prisma.trailEntry.findMany({ where: { jobId: job.id }, orderBy: { seq: 'asc' } })).map(({ kind }) => kind)
    expect(kinds).toEqual(['job-booked', 'session-opened', 'session-closed', 'testing-closed', 'retest-promised', 'handed-over'])
  })
  test('a promise that a visit was for, and that was not decided on it, is owed again after hand-over', async () => {
    const first = await booked()
    await openSession(first.id)
    await bench().post(`/v1/jobs/${first.id}/testing-closed`)
    await desk().post(`/v1/jobs/${first.id}/hand-over`, { followUps: [{ reason: 'in a month', latest: new Date().toISOString().slice(0, 10) }] })
    const promise = await service.database.prisma.retest.findFirstOrThrow({ where: { jobId: first.id } })
    const due = async () => (floorSchema.parse((await desk().get(`/v1/garages/${chain.mill.id}/floor`)).body)).retestsDue.some(({ retest }) => retest === promise.id)
    expect(await due()).toBe(true)
    const visit = (await desk().post(jobsPath(), { customer: first.customerRecord?.id, vehicle: first.vehicleRecord.id, complaint: 'as promised', fulfils: [promise.id] })).body as Job
    expect(await due()).toBe(false)
    await openSession(visit.id)
    await bench().post(`/v1/jobs/${visit.id}/testing-closed`)
    expect((await desk().post(`/v1/jobs/${visit.id}/hand-over`)).status).toBe(200)
    expect(await due()).toBe(true)
  })
  test('a promise without date, odometer value or event is refused', async () => {
    const job = await booked()
    const answer = await desk().post(`/v1/jobs/${job.id}/hand-over`, { followUps: [{ reason: 'some day' }] })
    expect(answer.body.errors).toMatchObject([{ path: '/followUps/0' }])
  })
  test('cancelled with a reason frees the bay', async () => {
    const job = await booked({ bay: chain.mill.bays[1] })
    expect((await desk().post(`/v1/jobs/${job.id}/cancellation`)).body.errors).toMatchObject([{ path: '/reason' }])
    const answer = await desk().post(`/v1/jobs/${job.id}/cancellation`, { reason: 'sold as it stands' })
    expect(answer.body).toMatchObject({ bay: null, cancelReason: 'sold as it stands', standing: { state: 'cancelled' } })
  })
  test('parts ordered hold the job until they have come', async () => {
    const job = await booked()
    const part = await bench().post(`/v1/jobs/${job.id}/parts`, { text: 'head gasket', expectedAt: '2026-12-01T09:00:00Z' })
    expect(part.status).toBe(201)
    expect((await desk().get(`/v1/jobs/${job.id}`)).body.standing).toMatchObject({ state: 'waiting-for-parts', waitsOn: 'head gasket', until: '2026-12-01T09:00:00.000Z' })
    expect((await as(chain.harbour.technician.token).post(`/v1/parts/${part.body.id}/arrival`)).status).toBe(404)
    const come = await bench().post(`/v1/parts/${part.body.id}/arrival`)
    expect(come.body).toMatchObject({ arrivedBy: { id: chain.mill.technician.id } })
    expect((await bench().post(`/v1/parts/${part.body.id}/arrival`)).body).toEqual(come.body)
    expect((await desk().get(`/v1/jobs/${job.id}/parts`)).body.items).toEqual([come.body])
    expect((await desk().get(`/v1/jobs/${job.id}`)).body.standing.state).toBe('booked')
  })
  test('a talk sent twice over a weak network is noted once', async () => {
    const job = await booked()
    const send = () => bench().post(`/v1/jobs/${job.id}/contacts`, { kind: 'note', text: 'key is under the mat' }).set('idempotency-key', `note-${job.id}`)
    expect((await send()).body).toEqual((await send()).body)
    expect((await desk().get(`/v1/jobs/${job.id}`)).body.contacts).toHaveLength(1)
  })
  test('a contact is noted with the next call', async () => {
    const job = await booked()
    const answer = await desk().post(`/v1/jobs/${job.id}/contacts`, { kind: 'call', text: 'rings back', nextAt: '2026-11-26T10:00:00+01:00' })
    expect(answer.body).toMatchObject({ kind: 'call', nextAt: '2026-11-26T09:00:00.000Z', by: { name: chain.mill.frontDesk.name } })
    expect((await desk().post(`/v1/jobs/${job.id}/contacts`, { kind: 'letter', text: 'x' })).body.errors).toMatchObject([{ path: '/kind' }])
    expect((await desk().get(`/v1/jobs/${job.id}`)).body.contacts).toEqual([answer.body])
  })
})

describe('lists and search', () => {
  test('pages follow one another without gap or repeat', async () => {
    const all = (await desk().get(`${jobsPath()}?limit=200`)).body.items.map(({ id }: Job) => id)
    const seen: string[] = []
    let next: string | null = null
    do {
      const answer = await desk().get(`${jobsPath()}?limit=3${next === null ? '' : `&after=${next}`}`)
      expect(answer.status).toBe(200)
      seen.push(...answer.body.items.map(({ id }: Job) => id))
      next = answer.body.next
    } while (next !== null)
    expect(seen).toEqual(all)
    expect((await desk().get(`${jobsPath()}?after=zzz`)).status).toBe(400)
    expect((await desk().get(`${jobsPath()}?limit=0`)).body.errors).toMatchObject([{ path: '/query/limit' }])
    expect((await desk().get(`${jobsPath()}?colour=red`)).status).toBe(400)
  })
  test('open or not', async () => {
    const open = (await desk().get(`${jobsPath()}?open=true&limit=200`)).body.items as Job[]
    const over = (await desk().get(`${jobsPath()}?open=false&limit=200`)).body.items as Job[]
    expect(open.length * over.length).toBeGreaterThan(0)
    expect(open.every(({ standing }) => !['handed-over', 'cancelled'].includes(standing.state))).toBe(true)
    expect(over.every(({ standing }) => ['handed-over', 'cancelled'].includes(standing.state))).toBe(true)
  })
  test('typed loosely: code, plate, name, last digits of the phone', async () => {
    const job = await booked({ customer: { name: 'Quirina Vale', phone: '0912 555-8731' }, vehicle: { plate: 'ZZ 77 top', description: 'red coupe' } })
    const find = async (q: string) => {
      const answer = await desk().get(`/v1/garages/${chain.mill.id}/search?q=${encodeURIComponent(q)}`)
      expect(answer.status).toBe(200)
      return page(searchHitSchema).parse(answer.body).items.filter(({ id }) => id === job.id).map(({ matched }) => matched)
    }
    expect(await find(job.code.replace(' ', '').toLowerCase())).toEqual(['code'])
    expect(await find(job.code)).toEqual(['code'])
    expect(await find('zz77t')).toEqual(['plate'])
    expect(await find('val quir')).toEqual(['customer'])
    expect(await find('8731')).toEqual(['phone'])
    expect(await find('+912 5558731')).toEqual(['phone'])
    expect(await find('%')).toEqual([])
    expect((await desk().get(`${jobsPath()}?q=zz77`)).body.items.map(({ id }: Job) => id)).toEqual([job.id])
    expect((await desk().get(`/v1/garages/${chain.mill.id}/search?q=`)).status).toBe(400)
  })
})

describe('the floor', () => {
  test('holds each open job once in a bay or elsewhere, and the lists as the standing says', async () => {
    const answer = await desk().get(`/v1/garages/${chain.mill.id}/floor`)
    expect(answer.status).toBe(200)
    const floor = floorSchema.parse(answer.body)
    const open = (await desk().get(`${jobsPath()}?open=true&limit=200`)).body.items as Job[]
    const shown = [...floor.bays.flatMap(({ job }) => (job === null ? [] : [job])), ...floor.elsewhere, ...floor.waitsForDecision, ...floor.ready]
    expect(new Set(shown.map(({ id }) => id))).toEqual(new Set(open.map(({ id }) => id)))
    for (const job of shown) expect(job).toEqual(open.find(({ id }) => id === job.id))
  })
  test('lists follow-ups that are due, and how many days they are over', async () => {
    const job = await booked()
    const retest = async (latest: string) =>
      (await service.database.prisma.retest.create({ data: { id: crypto.randomUUID(), jobId: job.id, engineId: job.engine, kind: 'follow-up', reason: latest, retestDates: { create: [{ id: crypto.randomUUID(), latest: new Date(latest) }] } } })).id
    const day = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10)
    const [late, soon, far] = [await retest(day(-9)), await retest(day(5)), await retest(day(90))]
    const { retestsDue } = floorSchema.parse((await desk().get(`/v1/garages/${chain.mill.id}/floor`)).body)
    expect(retestsDue.find(({ retest: id }) => id === late)?.overdueDays).toBeGreaterThanOrEqual(8)
    expect(retestsDue.find(({ retest: id }) => id === soon)).toMatchObject({ overdueDays: null, due: day(5), code: job.code })
    expect(retestsDue.some(({ retest: id }) => id === far)).toBe(false)
  })
})
