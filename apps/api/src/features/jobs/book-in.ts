import type { Actor, NewJob } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import type { Transaction } from '../../platform/database/database.ts'
import { badField, ProblemError } from '../../platform/problems/problem.ts'
import { demandCustomer, makeCustomer } from '../customers/service.ts'
import { demandNotFitted, fitEngine, knownEngine, makeEngine } from '../engines/service.ts'
import { demandGarage } from '../garages/service.ts'
import { appendTrail } from '../trail/service.ts'
import { demandVehicle, makeVehicle } from '../vehicles/service.ts'
import { demandFree } from './moves.ts'
import { takeUp } from './retest-store.ts'
import { demandJob } from './service.ts'
import { insertJob, nextCode } from './store.ts'
import { told } from './told.ts'

/**
 * Books a car in: customer, vehicle and engine are named or made along the way, the engine is fitted where it was not, all in the one
 * transaction of the job.
 * @returns the id of the job
 */
export async function bookIn(tx: Transaction, actor: Actor, garage: string, input: NewJob): Promise<string> {
  await demandGarage(tx, actor, 'jobs.write', garage)
  const customer = await customerOf(tx, actor, garage, input.customer)
  const vehicle = await vehicleOf(tx, actor, garage, customer, input.vehicle)
  const engine = await engineOf(tx, actor, garage, vehicle, input)
  if (input.bay !== null) await demandFree(tx, garage, input.bay, '/bay')
  if (input.comeBackOf !== null) await demandComeBack(tx, actor, garage, input.comeBackOf)
  const { complaint, odometerKm, priorWork, promisedAt, bay, comeBackOf, fulfils } = input
  const code = await nextCode(tx, garage)
  const id = await insertJob(tx, {
    garageId: garage, code, customerId: customer, vehicleId: vehicle.id, engineId: engine, complaint, odometerKm, priorWork, promisedAt,
    bayId: bay, placedAt: bay === null ? null : new Date(), comeBackOfId: comeBackOf, bookedById: personOf(actor),
  })
  if (fulfils.length > 0 && (await takeUp(tx, id, engine, fulfils)) !== new Set(fulfils).size) {
    throw badField('/fulfils', 'follow-up retests of this engine that are still owed and that no other job is for', fulfils)
  }
  await told(tx, { id, garage, engine }, { booked: true, bay })
  await appendTrail(tx, {
    engine, job: id, garage, kind: 'job-booked', actor,
    body: { code, vehicle: vehicle.id, customer, odometerKm, priorWork, promisedAt, comeBackOf, fulfils },
  })
  return id
}

async function customerOf(tx: Transaction, actor: Actor, garage: string, named: NewJob['customer']): Promise<string> {
  if (typeof named !== 'string') return (await makeCustomer(tx, actor, garage, named)).id
  const row = await orNull(demandCustomer(tx, actor, 'customers.read', named))
  if (row === null || row.garageId !== garage || row.erasedAt !== null) throw badField('/customer', 'a customer of this garage', named)
  return row.id
}

async function vehicleOf(tx: Transaction, actor: Actor, garage: string, customer: string, named: NewJob['vehicle']): Promise<{ readonly id: string; readonly engine: string | null }> {
  if (typeof named !== 'string') return makeVehicle(tx, actor, garage, { customer, ...named })
  const row = await orNull(demandVehicle(tx, actor, 'vehicles.read', named))
  if (row === null || row.garageId !== garage) throw badField('/vehicle', 'a vehicle of this garage', named)
  return row
}

/** The engine that the job is about. One that sits in another car is refused by name; the one that sat in this car is taken out. */
async function engineOf(tx: Transaction, actor: Actor, garage: string, vehicle: { readonly id: string; readonly engine: string | null }, { engine, odometerKm }: NewJob): Promise<string> {
  if (engine === undefined) {
    if (vehicle.engine === null) throw badField('/engine', 'an engine, since none is known to sit in this vehicle', 'nothing')
    return vehicle.engine
  }
  if (engine === vehicle.engine) return vehicle.engine
  let id: string
  if (typeof engine === 'string') {
    if ((await orNull(knownEngine(tx, engine))) === null) throw badField('/engine', 'an engine of the chain', engine)
    await demandNotFitted(tx, actor, engine)
    id = engine
  } else id = (await orMoved(makeEngine(tx, actor, engine), '/engine')).id
  await fitEngine(tx, actor, { engine: id, vehicle: vehicle.id, garage, from: new Date(), odometerKm })
  return id
}

async function demandComeBack(tx: Transaction, actor: Actor, garage: string, job: string): Promise<void> {
  const before = await orNull(demandJob(tx, actor, 'jobs.read', job))
  if (before === null || before.garage !== garage || before.handedOverAt === null) throw badField('/comeBackOf', 'a job of this garage that was handed over', job)
}

/** A record named in the body that is not there is a bad field of the body, not a missing page. */
async function orNull<T>(found: Promise<T>): Promise<T | null> {
  return found.catch((error: unknown) => {
    if (error instanceof ProblemError && error.code === 'not-found') return null
    throw error
  })
}

/** The fields of a record made along the way lie deeper in this body. */
async function orMoved<T>(made: Promise<T>, at: string): Promise<T> {
  return made.catch((error: unknown) => {
    if (!(error instanceof ProblemError) || error.details.errors === undefined) throw error
    throw new ProblemError(error.code, { ...error.details, errors: error.details.errors.map((one) => ({ ...one, path: `${at}${one.path}` })) })
  })
}
