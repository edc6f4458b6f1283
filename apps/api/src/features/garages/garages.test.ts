import request from 'supertest'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { caller } from '../../../../../tests/support/caller.ts'
import { testChain, testService, testTablet, type TestChain, type TestService } from '../../../../../tests/support/index.ts'

let service: TestService
let chain: TestChain
beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
})
afterAll(() => service.close())

const owner = () => caller(service, chain.owner.token)
const desk = () => caller(service, chain.mill.frontDesk.token)
const mill = () => `/v1/garages/${chain.mill.id}`
const GARAGE = { name: 'Old Tannery', codeLetter: 'T', timeZone: 'Europe/Madrid', currency: 'EUR', pressureUnit: 'bar', elevationM: 640, labourRateMinor: 7_200, taxBasisPoints: 2_100 }
const GAUGE = { kind: 'compression', name: 'G 7', specification: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6 } }
const TESTER = { kind: 'leakage', name: 'L 2', specification: { supply: { value: 100, unit: 'psi' }, restrictorMm: 1 } }
const LABOUR = { kind: 'labour', operation: null, text: 'head off and on', minutes: 480, unitPriceMinor: null, taxBasisPoints: 2_000 }

describe('garages', () => {
  test('an owner sets one up with its defaults, and the audit says so', async () => {
    const answer = await owner().post('/v1/garages', GARAGE)
    expect(answer.status).toBe(201)
    expect(answer.body).toMatchObject({ ...GARAGE, locale: 'en', pricesIncludeTax: false, toleranceBasisPoints: 0, version: 1 })
    const audit = (await owner().get('/v1/audit')).body.items[0]
    expect(audit).toMatchObject({ action: 'garage.made', garage: answer.body.id, actor: { kind: 'person', name: chain.owner.name }, subject: { garage: answer.body.id } })
  })
  test('each sees the garages he belongs to; an owner all', async () => {
    expect((await desk().get('/v1/garages')).body.items.map(({ id }: { id: string }) => id)).toEqual([chain.mill.id])
    expect((await owner().get('/v1/garages')).body.items.length).toBeGreaterThanOrEqual(2)
    expect((await caller(service, (await testTablet(service, chain.harbour)).tabletToken).get('/v1/garages')).body.items).toMatchObject([{ id: chain.harbour.id }])
    expect((await desk().get(`/v1/garages/${chain.harbour.id}`)).status).toBe(404)
  })
  test('is edited by version; its currency stays', async () => {
    expect((await owner().patch(mill(), undefined, { name: 'x' })).status).toBe(428)
    const edited = await owner().patch(mill(), 1, { toleranceBasisPoints: 500 })
    expect([edited.status, edited.headers['etag'], edited.body.toleranceBasisPoints]).toEqual([200, '"2"', 500])
    expect((await owner().patch(mill(), 1, { name: 'x' })).status).toBe(412)
    expect((await owner().patch(mill(), 2, { currency: 'GBP' })).body.errors).toMatchObject([{ path: '/currency' }])
    expect((await caller(service, chain.mill.manager.token).patch(mill(), 2, { name: 'x' })).status).toBe(403)
  })
  test.each([
    ['/codeLetter', { codeLetter: 'kk' }], ['/timeZone', { timeZone: 'Mars/Olympus' }], ['/currency', { currency: 'euro' }], ['/pressureUnit', { pressureUnit: 'stone' }],
    ['/labourRateMinor', { labourRateMinor: -1 }], ['/labourRateMinor', { labourRateMinor: 72.5 }], ['/taxBasisPoints', { taxBasisPoints: 10_001 }],
    ['/elevationM', { elevationM: 'high' }], ['/name', { name: ' ' }], ['/name', { name: null }], ['/colour', { colour: 'red' }], ['/locale', { locale: 'fr' }],
  ])('a bad %s is 400 at its path', async (path, more) => {
    const answer = await owner().post('/v1/garages', { ...GARAGE, ...more })
    expect(answer.status).toBe(400)
    expect(answer.body.errors).toMatchObject([{ path, expected: expect.any(String) }])
    expect((await owner().patch(mill(), 2, more)).body.errors).toMatchObject([{ path }])
  })
  test('broken JSON, another media type and NUL are 4xx', async () => {
    const send = (type: string, text: string) => request(service.server).post('/v1/garages').auth(chain.owner.token, { type: 'bearer' }).set('content-type', type).send(text)
    expect((await send('application/json', '{"name":')).status).toBe(400)
    expect((await send('text/plain', 'name')).status).toBe(415)
    expect((await owner().post('/v1/garages', { ...GARAGE, name: 'a\u0000b' })).status).toBe(400)
    expect((await send('application/json', JSON.stringify({ ...GARAGE, name: 'x'.repeat(2_000_000) }))).status).toBe(413)
  })
  test('a query that a route does not take is refused', async () => {
    expect((await desk().get('/v1/garages?colour=red')).body).toMatchObject({ status: 400, errors: [{ path: '/query/colour' }] })
  })
  test('staff: everybody with a role there, owners too', async () => {
    const { items } = (await desk().get(`${mill()}/staff`)).body
    expect(items).toContainEqual({ id: chain.mill.technician.id, name: chain.mill.technician.name, roles: ['technician'] })
    expect(items).toContainEqual({ id: chain.owner.id, name: chain.owner.name, roles: ['owner'] })
    expect(items.some(({ id }: { id: string }) => id === chain.harbour.manager.id)).toBe(false)
  })
})

describe('bays, gauges, catalogue', () => {
  test('a bay is made once by its name, and closed', async () => {
    const made = await owner().post(`${mill()}/bays`, { name: 'Ramp', position: 9 })
    expect(made.status).toBe(201)
    expect((await owner().post(`${mill()}/bays`, { name: 'Ramp', position: 10 })).status).toBe(409)
    const closed = await owner().patch(`/v1/bays/${made.body.id}`, 1, { closed: true })
    expect(closed.body).toMatchObject({ closedAt: expect.any(String), version: 2 })
    expect((await owner().patch(`/v1/bays/${made.body.id}`, 2, { closed: false })).body.closedAt).toBeNull()
    expect((await owner().post(`${mill()}/bays`, { name: 'x', position: 'first' })).body.errors).toMatchObject([{ path: '/position' }])
    expect((await desk().get(`${mill()}/bays`)).body.items.map(({ name }: { name: string }) => name)).toEqual(['Bay 1', 'Bay 2', 'Ramp'])
    expect((await desk().post(`${mill()}/bays`, { name: 'x', position: 1 })).status).toBe(403)
  })
  test('a gauge keeps its day of the next check and its retirement', async () => {
    const made = await owner().post(`${mill()}/gauges`, { ...GAUGE, checkDue: '2027-01-31' })
    expect(made.body).toMatchObject({ ...GAUGE, checkDue: '2027-01-31', retiredAt: null })
    expect((await owner().patch(`/v1/gauges/${made.body.id}`, 1, { retired: true, checkDue: null })).body).toMatchObject({ checkDue: null, retiredAt: expect.any(String) })
    expect((await owner().post(`${mill()}/gauges`, TESTER)).status).toBe(201)
  })
  test.each([
    ['/specification/span/value', { ...GAUGE, specification: { ...GAUGE.specification, span: { value: -1, unit: 'psi' } } }],
    ['/specification/span/unit', { ...GAUGE, specification: { ...GAUGE.specification, span: { value: 300, unit: 'stone' } } }],
    ['/specification/accuracyClass', { ...GAUGE, specification: { span: GAUGE.specification.span } }],
    ['/specification/restrictorMm', { ...TESTER, specification: { ...TESTER.specification, restrictorMm: 0 } }],
    ['/specification/supply', { ...TESTER, specification: { restrictorMm: 1 } }],
    ['/checkDue', { ...GAUGE, checkDue: '31.1.2027' }],
  ])('a gauge with a bad %s is 400', async (path, body) => {
    const answer = await owner().post(`${mill()}/gauges`, { ...body, name: `bad ${path}` })
    expect(answer.status).toBe(400)
    expect(answer.body.errors.map((error: { path: string }) => error.path)).toContain(path)
  })
  test('an edit cannot make a tester of a gauge', async () => {
    const made = (await owner().post(`${mill()}/gauges`, { ...GAUGE, name: 'G 8' })).body
    const answer = await owner().patch(`/v1/gauges/${made.id}`, 1, { specification: TESTER.specification })
    expect(answer.status).toBe(400)
    expect(answer.body.errors.map(({ path }: { path: string }) => path)).toContain('/specification/span')
  })
  test('labour needs minutes, a part its price, also when an edit takes them away', async () => {
    const made = await owner().post(`${mill()}/catalogue`, LABOUR)
    expect(made.status, JSON.stringify(made.body)).toBe(201)
    expect((await owner().post(`${mill()}/catalogue`, { ...LABOUR, minutes: null })).body.errors).toMatchObject([{ path: '/minutes' }])
    expect((await owner().patch(`/v1/catalogue/${made.body.id}`, 1, { kind: 'part' })).body.errors).toMatchObject([{ path: '/unitPriceMinor' }])
    expect((await owner().patch(`/v1/catalogue/${made.body.id}`, 1, { minutes: 500, retired: true })).body).toMatchObject({ minutes: 500, retiredAt: expect.any(String) })
    expect((await desk().get(`${mill()}/catalogue`)).body.items).toHaveLength(1)
    expect((await owner().post(`${mill()}/catalogue`, { ...LABOUR, operation: 'wash-the-cat' })).body.errors).toMatchObject([{ path: '/operation' }])
  })
})
