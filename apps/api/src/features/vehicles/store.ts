import type { Prisma, Vehicle as PlainVehicle } from '../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { anywhere } from '../../platform/database/sql-file.ts'
import { newId } from '../../platform/ids.ts'

/** A vehicle with the engine that sits in it. */
export type VehicleRow = Omit<PlainVehicle, 'plateKey' | 'createdAt'> & { readonly engine: string | null }

/** What to look for: the plate's key, or every word somewhere in description or plate. */
export type VehicleSearch = { readonly key: string; readonly words: readonly string[] }

const COLUMNS = `v.id, v.garage_id AS "garageId", v.customer_id AS "customerId", v.plate, v.description, v.year, v.note, v.version,
  (SELECT f.engine_id FROM fitting f WHERE f.vehicle_id = v.id AND f.until IS NULL) AS engine`

/** Vehicles by plate. One more than `limit`, where there is one. */
export function vehiclesOf(database: Database, garage: string, search: VehicleSearch | null, after: readonly [string, string] | undefined, limit: number): Promise<VehicleRow[]> {
  const key = search === null || search.key === '' ? null : anywhere(search.key)
  return database.run(LIST, [garage, search === null, key, search?.words.map(anywhere) ?? null, after?.[0] ?? null, after?.[1] ?? null, limit + 1])
}

const LIST = {
  name: 'vehicles-list',
  text: `SELECT ${COLUMNS} FROM vehicle v
    WHERE v.garage_id = $1 AND ($2::bool OR v.plate_key LIKE $3 OR v.plate || ' ' || v.description ILIKE ALL ($4::text[]))
      AND ($5::text IS NULL OR (v.plate, v.id) > ($5, $6::uuid))
    ORDER BY v.plate, v.id LIMIT $7`,
}

export async function vehicleById(tx: Transaction, id: string): Promise<VehicleRow | null> {
  const row = await tx.vehicle.findUnique({ where: { id }, include: { fittings: { where: { until: null }, select: { engineId: true } } } })
  return row === null ? null : { ...row, engine: row.fittings[0]?.engineId ?? null }
}

/** The bay in which this vehicle stands, for a tablet that may see its own bay. */
export async function bayOfVehicle(tx: Transaction, vehicleId: string): Promise<string | null> {
  const job = await tx.job.findFirst({ where: { vehicleId, bayId: { not: null }, handedOverAt: null, cancelledAt: null }, select: { bayId: true } })
  return job?.bayId ?? null
}

export async function insertVehicle(tx: Transaction, vehicle: Omit<Prisma.VehicleCreateManyInput, 'id'>): Promise<VehicleRow> {
  return { ...(await tx.vehicle.create({ data: { id: newId(), ...vehicle } })), engine: null }
}

/** Changes a vehicle that is still at `version`; no row when it is not. */
export function updateVehicle(tx: Transaction, id: string, version: number, data: Prisma.VehicleUncheckedUpdateManyInput): Promise<PlainVehicle[]> {
  return tx.vehicle.updateManyAndReturn({ where: { id, version }, data: { ...data, version: { increment: 1 } } })
}
