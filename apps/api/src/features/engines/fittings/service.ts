import { may, type Actor, type EngineEvent, type Fitting, type NewEngineEvent, type NewFitting, type Removal, type SameEngine } from '@evenbore/contract'
import { personOf } from '../../../access/actors.ts'
import { demand } from '../../../access/door.ts'
import type { Database, Transaction } from '../../../platform/database/database.ts'
import { emit } from '../../../platform/live/outbox.ts'
import { badField, problem } from '../../../platform/problems/problem.ts'
import { appendTrail } from '../../trail/service.ts'
import { demandVehicle } from '../../vehicles/service.ts'
import { engineById } from '../store.ts'
import { endFitting, fittingById, fittingOfEngine, fittingOfVehicle, insertFitting, type FittingRow } from './store.ts'

/** Clocks differ a little; what lies further ahead has not happened. */
const AHEAD_MS = 5 * 60_000

/** Fits an engine into a vehicle. The engine that sat in the vehicle until then is removed at that moment. */
export async function fitInto(database: Database, actor: Actor, engine: string, { vehicle, from, odometerKm }: NewFitting): Promise<Fitting> {
  return database.transaction(async (tx) => {
    demand(actor, 'engines.write', {})
    if ((await engineById(tx, engine)) === null) throw problem('not-found')
    const row = await demandVehicle(tx, actor, 'engines.write', vehicle)
    return shown(await fitEngine(tx, actor, { engine, vehicle, garage: row.garageId, from: past(from, '/from'), odometerKm }))
  })
}

/** What fitting needs to know. */
export type Fit = { readonly engine: string; readonly vehicle: string; readonly garage: string; readonly from: Date; readonly odometerKm: number | null }

/** Fits an engine within a transaction, also for book-in; both engines' trails say so. */
export async function fitEngine(tx: Transaction, actor: Actor, { engine, vehicle, garage, from, odometerKm }: Fit): Promise<FittingRow> {
  await demandNotFitted(tx, actor, engine)
  const before = await fittingOfVehicle(tx, vehicle)
  if (before !== null) await end(tx, actor, before, from)
  const row = await insertFitting(tx, { engineId: engine, vehicleId: vehicle, from, odometerKm, createdById: personOf(actor) })
  await emit(tx, { kind: 'engine.changed', garageId: garage, engineId: engine, body: { fitted: vehicle } })
  await appendTrail(tx, { engine, garage, kind: 'fitted', actor, body: { fitting: row.id, vehicle, from: from.toISOString(), odometerKm } })
  return row
}

/** @throws problem `conflict` that names the vehicle an engine sits in */
export async function demandNotFitted(tx: Transaction, actor: Actor, engine: string): Promise<void> {
  const present = await fittingOfEngine(tx, engine)
  if (present === null) return
  const { plate, garageId } = present.vehicle
  const where = may(actor, 'jobs.read', { garage: garageId }) ? `in ${plate}` : 'in a car of another garage'
  throw problem('conflict', `This engine sits ${where} since ${present.from.toISOString().slice(0, 10)}. Record its removal first (fitting ${present.id}).`)
}

/** Records that an engine was taken out. */
export async function removeEngine(database: Database, actor: Actor, fitting: string, { until }: Removal): Promise<Fitting> {
  return database.transaction(async (tx) => {
    const row = await fittingById(tx, fitting)
    demand(actor, 'engines.write', { garage: row?.vehicle.garageId })
    if (row === null) throw problem('not-found')
    if (row.until !== null) throw problem('conflict', `This engine was taken out at ${row.until.toISOString()}.`)
    const at = past(until, '/until')
    await end(tx, actor, row, at)
    return shown({ ...row, until: at })
  })
}

/** Keeps what happened to the engine itself, in its trail. */
export async function recordEvent(database: Database, actor: Actor, engine: string, { kind, at, text }: NewEngineEvent): Promise<EngineEvent> {
  return database.transaction(async (tx) => {
    demand(actor, 'engines.write', {})
    const row = await engineById(tx, engine)
    if (row === null) throw problem('not-found')
    const event = { kind, at: past(at, '/at').toISOString(), text }
    const garage = row.fittings[0]?.vehicle.garageId ?? null
    await emit(tx, { kind: 'engine.changed', garageId: garage, engineId: engine, body: { event: kind } })
    await appendTrail(tx, { engine, garage, kind: 'engine-event', actor, body: event })
    return { engine, ...event }
  })
}

/** Says in both trails that two records are one engine. Neither goes away: both have been signed for. */
export async function recordSame(database: Database, actor: Actor, engine: string, { same, reason }: SameEngine): Promise<SameEngine & { engine: string }> {
  if (same === engine) throw badField('/same', 'another engine', same)
  return database.transaction(async (tx) => {
    demand(actor, 'engines.write', {})
    if ((await engineById(tx, engine)) === null) throw problem('not-found')
    if ((await engineById(tx, same)) === null) throw badField('/same', 'an engine of the chain', same)
    await emit(tx, { kind: 'engine.changed', garageId: null, engineId: engine, body: { same } })
    // In the order of their ids: two people who link the same pair at once do not wait for each other.
    for (const one of [engine, same].sort()) {
      await appendTrail(tx, { engine: one, kind: 'same-engine', actor, body: { same: one === engine ? same : engine, reason } })
    }
    return { engine, same, reason }
  })
}

async function end(tx: Transaction, actor: Actor, fitting: FittingRow, until: Date): Promise<void> {
  if (until <= fitting.from) throw badField('/from', `later than ${fitting.from.toISOString()}, when the engine in this vehicle was fitted`, until.toISOString())
  if (!(await endFitting(tx, fitting.id, until))) throw problem('conflict', 'Somebody else recorded the removal of this engine just now.')
  const garage = fitting.vehicle.garageId
  await emit(tx, { kind: 'engine.changed', garageId: garage, engineId: fitting.engineId, body: { removed: fitting.vehicleId } })
  await appendTrail(tx, { engine: fitting.engineId, garage, kind: 'removed', actor, body: { fitting: fitting.id, vehicle: fitting.vehicleId, until: until.toISOString() } })
}

/** Now, or the moment named, which must have come. */
function past(instant: string | undefined, path: string): Date {
  if (instant === undefined) return new Date()
  const at = new Date(instant)
  if (at.getTime() > Date.now() + AHEAD_MS) throw badField(path, 'a moment that has come', instant)
  return at
}

function shown(row: FittingRow): Fitting {
  return { id: row.id, engine: row.engineId, vehicle: row.vehicleId, from: row.from.toISOString(), until: row.until?.toISOString() ?? null, odometerKm: row.odometerKm }
}
