import type { NewEngine, NewJob, PriorWork } from '@evenbore/contract'
import { instantFrom } from '#lib/format/local-time.ts'
import { parseNumber } from '@evenbore/words/format/number.ts'

/** What the counter has typed so far; strings as typed, ids where something known was picked. */
export interface Booking {
  plate: string
  vehicle: string
  description: string
  year: string
  customer: string
  name: string
  phone: string
  email: string
  /** '' not chosen, 'fitted' the one in the vehicle, 'new' described here, else the id of a family. */
  engine: string
  engineDescription: string
  stampedNumber: string
  layout: 'inline' | 'v' | 'flat'
  cylinders: string
  fuel: 'petrol' | 'diesel'
  complaint: string
  odometer: string
  prior: Record<PriorFlag, boolean>
  monthsStored: string
  priorNote: string
  promised: string
  bay: string
  fulfils: string[]
}

export const priorFlags = ['headTorqued', 'clearancesSet', 'ringsNew', 'gasketNew', 'valvesGround', 'overheated'] as const
export type PriorFlag = (typeof priorFlags)[number]

export const emptyBooking: Booking = {
  plate: '', vehicle: '', description: '', year: '', customer: '', name: '', phone: '', email: '',
  engine: '', engineDescription: '', stampedNumber: '', layout: 'inline', cylinders: '4', fuel: 'petrol',
  complaint: '', odometer: '',
  prior: { headTorqued: false, clearancesSet: false, ringsNew: false, gasketNew: false, valvesGround: false, overheated: false },
  monthsStored: '', priorNote: '', promised: '', bay: '', fulfils: [],
}

/** Fields that are missing or cannot be read, by the JSON Pointer under which the server would name them. */
export type BookingFaults = Partial<Record<'/vehicle/plate' | '/vehicle/description' | '/vehicle/year' | '/customer/name' | '/engine' | '/engine/description' | '/complaint' | '/odometerKm' | '/priorWork/monthsStored' | '/promisedAt', 'needed' | 'number' | 'time'>>

/** A whole number as typed, undefined where nothing stands there, null where it cannot be read. */
function wholeFrom(typed: string, unit?: string): number | undefined | null {
  if (typed.trim() === '') return undefined
  const read = parseNumber(typed, unit)
  return read.error === undefined && Number.isInteger(read.value) ? read.value : null
}

/**
 * The request that books this in, or which fields stand in the way.
 * @param zone the garage's, in which the promise was typed
 */
export function bookingRequest(booking: Booking, zone: string): { readonly body: NewJob; readonly faults?: undefined } | { readonly faults: BookingFaults; readonly body?: undefined } {
  const faults: BookingFaults = {}
  const year = wholeFrom(booking.year)
  const odometer = wholeFrom(booking.odometer, 'km')
  const months = wholeFrom(booking.monthsStored)
  const promised = booking.promised === '' ? null : instantFrom(booking.promised, zone)
  if (!booking.vehicle && !booking.plate.trim()) faults['/vehicle/plate'] = 'needed'
  if (!booking.vehicle && !booking.description.trim()) faults['/vehicle/description'] = 'needed'
  if (!booking.vehicle && year === null) faults['/vehicle/year'] = 'number'
  if (!booking.customer && !booking.name.trim()) faults['/customer/name'] = 'needed'
  if (!booking.engine) faults['/engine'] = 'needed'
  if (booking.engine === 'new' && !booking.engineDescription.trim()) faults['/engine/description'] = 'needed'
  if (!booking.complaint.trim()) faults['/complaint'] = 'needed'
  if (odometer === null) faults['/odometerKm'] = 'number'
  if (months === null) faults['/priorWork/monthsStored'] = 'number'
  if (promised === undefined) faults['/promisedAt'] = 'time'
  if (Object.keys(faults).length) return { faults }

  const engine = engineOf(booking)
  return {
    body: {
      customer: booking.customer || { name: booking.name.trim(), phone: booking.phone.trim() || null, email: booking.email.trim() || null, address: null, note: null },
      vehicle: booking.vehicle || { plate: booking.plate.trim(), description: booking.description.trim(), year: year ?? null, note: null },
      ...(engine === undefined ? {} : { engine }),
      complaint: booking.complaint.trim(),
      odometerKm: odometer ?? null,
      priorWork: priorOf(booking, months ?? undefined),
      promisedAt: promised ?? null,
      bay: booking.bay || null,
      comeBackOf: null,
      fulfils: booking.fulfils,
    },
  }
}

function engineOf(booking: Booking): NewEngine | undefined {
  if (booking.engine === 'fitted') return undefined
  const stampedNumber = booking.stampedNumber.trim() || null
  const description = booking.engineDescription.trim()
  if (booking.engine === 'new') {
    return { family: null, description, stampedNumber, ownValues: { fuel: booking.fuel, layout: booking.layout, cylinders: Number(booking.cylinders) }, history: {} }
  }
  return { family: booking.engine, description, stampedNumber, ownValues: {}, history: {} }
}

function priorOf(booking: Booking, monthsStored: number | undefined): PriorWork {
  const flags = Object.fromEntries(priorFlags.filter((flag) => booking.prior[flag]).map((flag) => [flag, true]))
  const note = booking.priorNote.trim()
  return { ...flags, ...(monthsStored === undefined ? {} : { monthsStored }), ...(note ? { note } : {}) }
}
