import { may, type Actor, type Engine, type EngineEdit, type EngineHistoryEntry, type NewEngine } from '@evenbore/contract'
import { z } from 'zod'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { decodeCursor, toPage, type Page } from '../../platform/http/cursor.ts'
import { demandChanged, demandVersion } from '../../platform/http/etag.ts'
import { emit } from '../../platform/live/outbox.ts'
import { problem } from '../../platform/problems/problem.ts'
import { garagesOf } from '../garages/service.ts'
import { plateKey } from '../vehicles/service.ts'
import { knownFamily } from './families/service.ts'
import { demandWhole, laidOver } from './specification.ts'
import { engineById, engines, history, insertEngine, updateEngine, type EngineRow } from './store.ts'

export { demandNotFitted, fitEngine } from './fittings/service.ts'
export { laidOver } from './specification.ts'
export type { EngineRow }

export type EngineQuery = { readonly q?: string | undefined; readonly after?: string | undefined; readonly limit: number }

/** Engines of the chain by description. */
export async function listEngines(database: Database, actor: Actor, query: EngineQuery): Promise<Page<Engine>> {
  demand(actor, 'engines.read', {})
  const after = decodeCursor(query.after, z.tuple([z.string(), z.uuid()]))
  const q = query.q?.trim() ?? ''
  const search = q === '' ? null : { words: q.split(/\s+/), plateKey: plateKey(q) }
  const rows = await engines(database, search, platesOf(actor), after, query.limit)
  return toPage(rows, query.limit, ({ description, id }) => [description, id], (row) => shownEngine(row, actor))
}

export async function readEngine(database: Database, actor: Actor, id: string): Promise<Engine> {
  demand(actor, 'engines.read', {})
  return shownEngine(await knownEngine(database.prisma, id), actor)
}

/** Makes an engine, within the transaction of what needs it. */
export async function makeEngine(tx: Transaction, actor: Actor, engine: NewEngine): Promise<EngineRow> {
  demand(actor, 'engines.write', {})
  const { family, ownValues, ...fields } = engine
  const known = await knownFamily(tx, family, '/family')
  demandWhole(known?.specification as object | undefined, ownValues)
  const row = await insertEngine(tx, { familyId: family, specification: ownValues, ...fields })
  await emit(tx, { kind: 'engine.changed', garageId: null, engineId: row.id, body: { made: true } })
  return row
}

/** Edits an engine; its values must still make a whole with its family's. */
export async function editEngine(database: Database, actor: Actor, id: string, version: number, edit: EngineEdit): Promise<Engine> {
  demand(actor, 'engines.write', {})
  return database.transaction(async (tx) => {
    const present = await knownEngine(tx, id)
    demandVersion(present.version, version)
    const { family, ownValues, ...fields } = edit
    if (family !== undefined || ownValues !== undefined) {
      const known = family === undefined ? present.family : await knownFamily(tx, family, '/family')
      demandWhole(known?.specification as object | undefined, ownValues ?? (present.specification as object))
    }
    const data = { ...fields, ...(family === undefined ? {} : { familyId: family }), ...(ownValues === undefined ? {} : { specification: ownValues }) }
    demandChanged((await updateEngine(tx, id, version, data)) ? [id] : [])
    await emit(tx, { kind: 'engine.changed', garageId: null, engineId: id, body: { fields: Object.keys(edit) } })
    return shownEngine(await knownEngine(tx, id), actor)
  })
}

/** What happened to an engine over the years. Of another garage's jobs the date and the garage are told. */
export async function readHistory(database: Database, actor: Actor, id: string): Promise<EngineHistoryEntry[]> {
  demand(actor, 'engines.read', {})
  await knownEngine(database.prisma, id)
  const rows = await history(database, id, platesOf(actor))
  return rows.map((row) => ({ ...row, at: new Date(row.at).toISOString() }) as EngineHistoryEntry)
}

/** @throws problem `not-found` */
export async function knownEngine(tx: Transaction, id: string): Promise<EngineRow> {
  const row = await engineById(tx, id)
  if (row === null) throw problem('not-found')
  return row
}

/** An engine as the API shows it to this actor: the plate of another garage's car is not told. */
export function shownEngine(row: EngineRow, actor: Actor): Engine {
  const fitting = row.fittings[0]
  const seesPlate = fitting !== undefined && may(actor, 'jobs.read', { garage: fitting.vehicle.garageId })
  return {
    id: row.id,
    family: row.family === null ? null : { id: row.family.id, name: row.family.name },
    description: row.description,
    stampedNumber: row.stampedNumber,
    specification: laidOver(row.family?.specification as object | undefined, row.specification as object),
    ownValues: row.specification as Engine['ownValues'],
    history: row.history as Engine['history'],
    leads: (row.family?.leads ?? null) as Engine['leads'],
    fittedIn: fitting === undefined ? null : { fitting: fitting.id, vehicle: fitting.vehicleId, plate: seesPlate ? fitting.vehicle.plate : null, from: fitting.from.toISOString() },
    version: row.version,
  }
}

/** Garages whose plates and jobs an actor may see; null for all. */
function platesOf(actor: Actor): readonly string[] | null {
  const own = garagesOf(actor)
  return own === 'all' ? null : own
}
