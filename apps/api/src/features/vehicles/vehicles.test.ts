import { afterAll, beforeAll, expect, test } from 'vitest'
import { caller } from '../../../../../tests/support/caller.ts'
import { testChain, testService, testTablet, type TestChain, type TestService } from '../../../../../tests/support/index.ts'
import { plateKey } from './plate-key.ts'

let service: TestService
let chain: TestChain
let customer: string
let elsewhere: string
beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  customer = (await desk().post(`/v1/garages/${chain.mill.id}/customers`, { name: 'Ines Duarte' })).body.id
  elsewhere = (await caller(service, chain.harbour.frontDesk.token).post(`/v1/garages/${chain.harbour.id}/customers`, { name: 'Otto Far' })).body.id
})
afterAll(() => service.close())

const desk = () => caller(service, chain.mill.frontDesk.token)
const path = () => `/v1/garages/${chain.mill.id}/vehicles`
const CAR = { plate: 'FX 204 B', description: 'grey estate', year: 1967 }
const found = async (q: string) => (await desk().get(`${path()}?q=${encodeURIComponent(q)}`)).body.items.map(({ plate }: { plate: string }) => plate)

test('a plate’s key is its capitals and digits, accents off', () => {
  expect(plateKey(' fx-204 b ')).toBe('FX204B')
  expect(plateKey('MÜ É 1')).toBe('MUE1')
})
test('made for a customer of its garage, edited, and given to another of it', async () => {
  const made = await desk().post(path(), { customer, ...CAR })
  expect(made.body).toEqual({ id: made.body.id, garage: chain.mill.id, customer, ...CAR, note: null, engine: null, version: 1 })
  const edited = await desk().patch(`/v1/vehicles/${made.body.id}`, 1, { plate: 'FX 205 B', year: null })
  expect(edited.body).toMatchObject({ plate: 'FX 205 B', year: null, version: 2 })
  expect(await found('fx205')).toEqual(['FX 205 B'])
  expect(await found('fx204')).toEqual([])
  expect(await found('estate grey')).toEqual(['FX 205 B'])
  expect((await desk().patch(`/v1/vehicles/${made.body.id}`, 2, { customer: elsewhere })).body.errors).toMatchObject([{ path: '/customer' }])
  expect((await desk().post(path(), { customer: elsewhere, ...CAR })).body.errors).toMatchObject([{ path: '/customer' }])
  expect((await desk().patch(`/v1/vehicles/${made.body.id}`, 1, { year: 1970 })).status).toBe(412)
})
test.each([
  ['/plate', { plate: '' }], ['/plate', { plate: 'x'.repeat(21) }], ['/year', { year: 1800 }], ['/year', { year: '1967' }], ['/customer', { customer: 'Ines' }], ['/description', { description: null }], ['/colour', { colour: 'grey' }],
])('a bad %s is 400 at its path', async (at, more) => {
  expect((await desk().post(path(), { customer, ...CAR, ...more })).body).toMatchObject({ status: 400, errors: [{ path: at }] })
})
test('a tablet sees the car in its bay', async () => {
  const tablet = caller(service, (await testTablet(service, chain.mill)).tabletToken)
  const job = (await desk().post(`/v1/garages/${chain.mill.id}/jobs`, {
    customer, vehicle: CAR, complaint: 'x', bay: chain.mill.bays[0], engine: { description: 'four', ownValues: { fuel: 'petrol', layout: 'inline', cylinders: 4 } },
  })).body
  expect((await tablet.get(`/v1/vehicles/${job.vehicleRecord.id}`)).body.engine).toBe(job.engine)
  await desk().post(`/v1/jobs/${job.id}/bay`, { bay: chain.mill.bays[1] })
  expect((await tablet.get(`/v1/vehicles/${job.vehicleRecord.id}`)).status).toBe(404)
  expect((await caller(service, chain.harbour.manager.token).get(`/v1/vehicles/${job.vehicleRecord.id}`)).status).toBe(404)
})
