import type { Action, Actor, NewVehicle, Vehicle, VehicleEdit } from '@evenbore/contract'
import { z } from 'zod'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { decodeCursor, toPage, type Page } from '../../platform/http/cursor.ts'
import { demandChanged, demandVersion } from '../../platform/http/etag.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { demandCustomer } from '../customers/service.ts'
import { demandGarage } from '../garages/service.ts'
import { plateKey } from './plate-key.ts'
import { bayOfVehicle, insertVehicle, updateVehicle, vehicleById, vehiclesOf, type VehicleRow } from './store.ts'

export { plateKey }

export type VehicleQuery = { readonly q?: string | undefined; readonly after?: string | undefined; readonly limit: number }

/** Vehicles of a garage by plate. */
export async function listVehicles(database: Database, actor: Actor, garage: string, query: VehicleQuery): Promise<Page<Vehicle>> {
  demand(actor, 'vehicles.read', { garage, bay: null })
  await demandGarage(database.prisma, actor, 'vehicles.read', garage)
  const after = decodeCursor(query.after, z.tuple([z.string(), z.uuid()]))
  const q = query.q?.trim() ?? ''
  const search = q === '' ? null : { key: plateKey(q), words: q.split(/\s+/) }
  const rows = await vehiclesOf(database, garage, search, after, query.limit)
  return toPage(rows, query.limit, ({ plate, id }) => [plate, id], shownVehicle)
}

export async function readVehicle(database: Database, actor: Actor, id: string): Promise<Vehicle> {
  return shownVehicle(await demandVehicle(database.prisma, actor, 'vehicles.read', id))
}

/** Makes a vehicle of a garage, within the transaction of what needs it. Its customer must be of the same garage. */
export async function makeVehicle(tx: Transaction, actor: Actor, garage: string, vehicle: NewVehicle): Promise<VehicleRow> {
  await demandGarage(tx, actor, 'vehicles.write', garage)
  const { customer, ...fields } = vehicle
  await demandOwner(tx, actor, garage, customer)
  const row = await insertVehicle(tx, { garageId: garage, customerId: customer, ...fields, plateKey: plateKey(fields.plate) })
  await tell(tx, row)
  return row
}

/** Edits a vehicle, or gives it to another customer of its garage. */
export async function editVehicle(database: Database, actor: Actor, id: string, version: number, { customer, ...edit }: VehicleEdit): Promise<Vehicle> {
  return database.transaction(async (tx) => {
    const present = await demandVehicle(tx, actor, 'vehicles.write', id)
    demandVersion(present.version, version)
    if (customer !== undefined) await demandOwner(tx, actor, present.garageId, customer)
    const row = demandChanged(await updateVehicle(tx, id, version, {
      ...edit,
      ...(customer === undefined ? {} : { customerId: customer }),
      ...(edit.plate === undefined ? {} : { plateKey: plateKey(edit.plate) }),
    }))
    await tell(tx, row)
    return shownVehicle({ ...row, engine: present.engine })
  })
}

async function demandOwner(tx: Transaction, actor: Actor, garage: string, customer: string): Promise<void> {
  const owner = await demandCustomer(tx, actor, 'customers.read', customer).catch((error: unknown) => {
    if ((error as { code?: unknown }).code === 'not-found') return null
    throw error
  })
  if (owner === null || owner.garageId !== garage || owner.erasedAt !== null) throw badField('/customer', 'a customer of this garage', customer)
}

/**
 * A vehicle that somebody names.
 * @throws problem `not-found`, also for another garage's and, on a tablet, for one that is not in its bay
 */
export async function demandVehicle(tx: Transaction, actor: Actor, action: Action, id: string): Promise<VehicleRow> {
  const row = await vehicleById(tx, id)
  const bay = row !== null && actor.kind === 'tablet' ? await bayOfVehicle(tx, id) : null
  demand(actor, action, { garage: row?.garageId, bay })
  if (row === null) throw problem('not-found')
  return row
}

async function tell(tx: Transaction, { id, garageId }: Pick<VehicleRow, 'id' | 'garageId'>): Promise<void> {
  await emit(tx, { kind: 'customer.changed', garageId, body: { vehicle: id } })
}

/** A vehicle as the API shows it. */
export function shownVehicle(row: VehicleRow): Vehicle {
  const { id, plate, description, year, note, engine, version } = row
  return { id, garage: row.garageId, customer: row.customerId, plate, description, year, note, engine, version }
}
