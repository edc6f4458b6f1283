import type { Action, Actor, NewRetest, NewRetestDate, Retest } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import { demand } from '../../access/door.ts'
import type { Transaction } from '../../platform/database/database.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { demandJob } from '../jobs/service.ts'
import { appendTrail } from '../trail/service.ts'
import { insertDate, insertRetest, latestSession, lockRetest, readRetest, readSessionPlace, type Due, type RetestRow } from './store.ts'
import { toRetest } from './wire.ts'

type Owner = { readonly job: string; readonly engine: string; readonly garage: string }

/** A finished repair owes its release retest, against the session that the diagnosis rested on. In the transaction of the repair. */
export async function oweRelease(tx: Transaction, actor: Actor, { job, engine, garage }: Owner, repair: string, baselineSession: string | null): Promise<string> {
  const baseline = baselineSession ?? (await latestSession(tx, job, 'test'))
  const reason = 'before hand-over, after the repair'
  const id = await insertRetest(tx, { jobId: job, engineId: engine, kind: 'release', reason, repairId: repair, baselineSessionId: baseline, createdById: personOf(actor) })
  await emit(tx, { kind: 'retest.changed', garageId: garage, jobId: job, engineId: engine, body: { retest: id } })
  await appendTrail(tx, { engine, job, garage, kind: 'retest-promised', actor, body: { retest: id, kind: 'release', repair, baselineSession: baseline } })
  return id
}

/** Promises a follow-up: by a latest date, an odometer value or an event, whichever comes first. */
export async function promiseRetest(tx: Transaction, actor: Actor, job: string, input: NewRetest): Promise<Retest> {
  const { reason, baselineSession, ...due } = input
  demandDue(due)
  const facts = await demandJob(tx, actor, 'retests.write', job)
  if (facts.cancelledAt !== null) throw problem('wrong-state', `Job ${facts.code} was cancelled.`)
  if (baselineSession !== null && (await readSessionPlace(tx, baselineSession))?.engine !== facts.engine) throw badField('/baselineSession', 'the id of a session of this engine', baselineSession)
  const baseline = baselineSession ?? (await latestSession(tx, job))
  const id = await insertRetest(tx, { jobId: job, engineId: facts.engine, kind: 'follow-up', reason, baselineSessionId: baseline, createdById: personOf(actor) })
  await insertDate(tx, id, due, personOf(actor))
  await emit(tx, { kind: 'retest.changed', garageId: facts.garage, jobId: job, engineId: facts.engine, body: { retest: id } })
  await appendTrail(tx, { engine: facts.engine, job, garage: facts.garage, kind: 'retest-promised', actor, body: { retest: id, kind: 'follow-up', reason, baselineSession: baseline, ...due } })
  return toRetest((await readRetest(tx, id))!)
}

/** Another date, or a booking: the earlier rows stay. */
export async function moveRetest(tx: Transaction, actor: Actor, id: string, input: NewRetestDate): Promise<Retest> {
  if (input.bookedFor === null) demandDue(input)
  const retest = await undecided(tx, actor, 'retests.write', id)
  if (retest.kind === 'release' && input.bookedFor === null) throw problem('wrong-state', 'A release retest is done before hand-over; it can be booked, but has no date of its own.')
  const date = await insertDate(tx, id, input, personOf(actor))
  await emit(tx, { kind: 'retest.changed', garageId: retest.garage, jobId: retest.job, engineId: retest.engine, body: { retest: id } })
  await appendTrail(tx, { engine: retest.engine, job: retest.job, garage: retest.garage, kind: 'retest-date', actor, body: { retest: id, date, ...input } })
  return toRetest((await readRetest(tx, id))!)
}

/** The retest, held until the transaction ends. @throws problems `not-found`, `wrong-state` where it was decided */
export async function undecided(tx: Transaction, actor: Actor, action: Action, id: string): Promise<RetestRow> {
  await lockRetest(tx, id)
  const retest = await readRetest(tx, id)
  if (retest === undefined) throw problem('not-found')
  demand(actor, action, { garage: retest.garage, bay: retest.bay })
  if (retest.outcome !== null) throw problem('wrong-state', `This retest was decided already: ${retest.outcome}.`)
  return retest
}

/** A promise without a date, an odometer value or an event would never fall due. */
function demandDue({ latest, odometerKm, event }: Due): void {
  if (latest === null && odometerKm === null && event === null) throw badField('/latest', 'a latest date, an odometer value or an event')
}
