import type { GarageEdit, NewGarage } from '@evenbore/contract'
import type { Garage as GarageRow } from '../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { newId } from '../../platform/ids.ts'

export type { GarageRow }

/** All garages, or those named, by name. */
export function garages(database: Database, ids: readonly string[] | 'all'): Promise<GarageRow[]> {
  return database.prisma.garage.findMany({ ...(ids === 'all' ? {} : { where: { id: { in: [...ids] } } }), orderBy: { name: 'asc' }, take: 1000 })
}

export function garageById(tx: Transaction, id: string): Promise<GarageRow | null> {
  return tx.garage.findUnique({ where: { id } })
}

export function insertGarage(tx: Transaction, garage: NewGarage): Promise<GarageRow> {
  return tx.garage.create({ data: { id: newId(), ...garage } })
}

/** Changes a garage that is still at `version`; no row when it is not. */
export function updateGarage(tx: Transaction, id: string, version: number, edit: GarageEdit): Promise<GarageRow[]> {
  return tx.garage.updateManyAndReturn({ where: { id, version }, data: { ...edit, version: { increment: 1 } } })
}

/** People who hold a role in the garage, owners included, with their roles there. */
export function staff(database: Database, garage: string): Promise<{ id: string; name: string; roles: string[] }[]> {
  return database.run(STAFF, [garage])
}

const STAFF = {
  name: 'garages-staff',
  text: `SELECT p.id, p.name, array_agg(r.role ORDER BY r.role) AS roles FROM person p JOIN person_role r ON r.person_id = p.id
    WHERE p.left_at IS NULL AND (r.garage_id = $1 OR r.garage_id IS NULL) GROUP BY p.id, p.name ORDER BY p.name, p.id`,
}
