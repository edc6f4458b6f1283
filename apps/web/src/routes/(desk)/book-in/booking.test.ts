import { newJobSchema } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { bookingRequest, emptyBooking, type Booking } from './booking.ts'

const vehicle = '019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b'
const booking = (over: Partial<Booking>): Booking => ({ ...structuredClone(emptyBooking), ...over })

test('a vehicle that was here before needs the plate, the complaint and nothing else', () => {
  const { body } = bookingRequest(booking({ plate: 'fx204b', vehicle, customer: vehicle, engine: 'fitted', complaint: 'runs on three' }), 'Europe/Lisbon')
  expect(newJobSchema.parse(body)).toMatchObject({ vehicle, customer: vehicle, complaint: 'runs on three', promisedAt: null })
  expect(body).not.toHaveProperty('engine')
})

test('everything new goes along in one request that the contract takes', () => {
  const { body } = bookingRequest(
    booking({ plate: ' FX 204 B ', description: 'grey estate', year: '1987', name: 'M. Ondrej', phone: '0100 200', engine: 'new', engineDescription: '1.6, four in line', complaint: 'weak', odometer: '84 100', monthsStored: '3', prior: { ...emptyBooking.prior, overheated: true }, promised: '2026-05-06T16:00' }),
    'Europe/Lisbon',
  )
  expect(newJobSchema.parse(body)).toEqual(body)
  expect(body).toMatchObject({
    vehicle: { plate: 'FX 204 B', year: 1987 },
    engine: { ownValues: { fuel: 'petrol', layout: 'inline', cylinders: 4 } },
    odometerKm: 84100,
    priorWork: { overheated: true, monthsStored: 3 },
    promisedAt: '2026-05-06T15:00:00.000Z',
  })
})

test('what is missing or cannot be read is named by its place', () => {
  const { faults } = bookingRequest(booking({ odometer: 'many', promised: 'soon', year: '19.5' }), 'UTC')
  expect(faults).toEqual({
    '/vehicle/plate': 'needed', '/vehicle/description': 'needed', '/vehicle/year': 'number', '/customer/name': 'needed',
    '/engine': 'needed', '/complaint': 'needed', '/odometerKm': 'number', '/promisedAt': 'time',
  })
})
