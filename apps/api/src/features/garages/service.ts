import type { Action, Actor, Garage, GarageEdit, NewGarage } from '@evenbore/contract'
import { audit } from '../../access/audit.ts'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { demandChanged, demandVersion } from '../../platform/http/etag.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { garageById, garages, insertGarage, staff, updateGarage, type GarageRow } from './store.ts'

/** Somebody of a garage's staff, for pickers. */
export type StaffMember = { readonly id: string; readonly name: string; readonly roles: string[] }

/**
 * The garage that something is asked of, once the table allows it.
 * @throws problem `not-found` for a garage that does not exist or is none of the actor's
 */
export async function demandGarage(tx: Transaction, actor: Actor, action: Action, id: string): Promise<GarageRow> {
  demand(actor, action, { garage: id })
  const garage = await garageById(tx, id)
  if (garage === null) throw problem('not-found')
  return garage
}

/** The garages that an actor knows of. */
export async function listGarages(database: Database, actor: Actor): Promise<Garage[]> {
  return (await garages(database, garagesOf(actor))).map(shownGarage)
}

/** Garages that an actor belongs to; `all` for owners and for apps let into the whole chain. */
export function garagesOf(actor: Actor): readonly string[] | 'all' {
  if (actor.kind === 'tablet') return [actor.garage]
  if (actor.kind === 'app') return actor.garages.length === 0 ? 'all' : actor.garages
  const own = actor.roles.map(({ garage }) => garage)
  return own.includes(null) ? 'all' : own.filter((garage) => garage !== null)
}

export async function readGarage(database: Database, actor: Actor, id: string): Promise<Garage> {
  return shownGarage(await demandGarage(database.prisma, actor, 'garages.read', id))
}

export async function makeGarage(database: Database, actor: Actor, garage: NewGarage): Promise<Garage> {
  demand(actor, 'settings.write', {})
  return database.transaction(async (tx) => {
    const row = await insertGarage(tx, garage)
    await changed(tx, actor, row.id, 'garage.made', { garage: row.id })
    return shownGarage(row)
  })
}

/** Edits a garage. Its currency stays: sums on record are in it. */
export async function editGarage(database: Database, actor: Actor, id: string, version: number, edit: GarageEdit): Promise<Garage> {
  return database.transaction(async (tx) => {
    const present = await demandGarage(tx, actor, 'settings.write', id)
    demandVersion(present.version, version)
    if (edit.currency !== undefined && edit.currency !== present.currency) throw badField('/currency', `${present.currency}: the sums on record are in it`, edit.currency)
    const row = demandChanged(await updateGarage(tx, id, version, edit))
    await changed(tx, actor, id, 'garage.edited', { garage: id, fields: Object.keys(edit) })
    return shownGarage(row)
  })
}

export async function listStaff(database: Database, actor: Actor, id: string): Promise<StaffMember[]> {
  await demandGarage(database.prisma, actor, 'garages.read', id)
  return staff(database, id)
}

/** Keeps who changed a garage's settings, and tells its screens. */
export async function changed(tx: Transaction, actor: Actor, garage: string, action: string, subject: Readonly<Record<string, unknown>>): Promise<void> {
  await audit(tx, actor, garage, action, subject)
  await emit(tx, { kind: 'garage.changed', garageId: garage, body: { action, ...subject } })
}

function shownGarage({ createdAt: _, lastJobNumber: __, ...row }: GarageRow): Garage {
  return row as Garage
}
