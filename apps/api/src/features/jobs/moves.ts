import type { Actor, BayPlacement, Cancellation, Job, TestingClosed } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { demandEmpty, openBay } from '../garages/bays/service.ts'
import { closeSessions, type JobPlace } from '../sessions/service.ts'
import { appendTrail } from '../trail/service.ts'
import { standingFacts, type JobFacts } from './facts.ts'
import { letGo } from './retest-store.ts'
import { demandJob, demandOpen, readJob } from './service.ts'
import { repairUnderWay, standingOf } from './standing.ts'
import { lockJob, updateJob } from './store.ts'
import { told } from './told.ts'

/** Puts a job into a bay, or takes it out of one. */
export async function placeJob(database: Database, actor: Actor, id: string, { bay }: BayPlacement): Promise<Job> {
  return database.transaction(async (tx) => {
    const facts = await demandJob(tx, actor, 'jobs.place', id)
    demandOpen(facts)
    if (bay !== facts.bay) {
      if (bay !== null) await demandFree(tx, facts.garage, bay, '/bay')
      await updateJob(tx, id, { bayId: bay, placedAt: bay === null ? null : new Date() })
      await told(tx, facts, { bay })
    }
    return readJob(tx, actor, id)
  })
}

/** @throws problem for a bay that is closed, not of this garage, or taken; the last names the job in it */
export async function demandFree(tx: Transaction, garage: string, bay: string, path: string): Promise<void> {
  if ((await openBay(tx, garage, bay)) === undefined) throw badField(path, 'an open bay of this garage', bay)
  await demandEmpty(tx, bay)
}

/** Ends testing with nothing found: the car can go once nothing is owed. */
export async function closeTesting(database: Database, actor: Actor, id: string, { note }: TestingClosed): Promise<Job> {
  return database.transaction(async (tx) => {
    await lockJob(tx, id)
    const facts = await demandJob(tx, actor, 'sessions.write', id)
    demandOpen(facts)
    const { state } = standingOf(standingFacts(facts))
    if (state !== 'testing') throw problem('wrong-state', `Testing is closed while a job is testing; job ${facts.code} stands at ${state}.`)
    await updateJob(tx, id, { testingClosedAt: new Date(), testingClosedById: personOf(actor) })
    await told(tx, facts, { testingClosed: true })
    await closeSessions(tx, actor, placeOf(facts))
    await appendTrail(tx, { engine: facts.engine, job: id, garage: facts.garage, kind: 'testing-closed', actor, body: { note: note ?? null } })
    return readJob(tx, actor, id)
  })
}

/** Cancels a job. A car whose engine is under repair cannot simply go: finish the repair and its retest, or have it waived. */
export async function cancelJob(database: Database, actor: Actor, id: string, { reason }: Cancellation): Promise<Job> {
  return database.transaction(async (tx) => {
    await lockJob(tx, id)
    const facts = await demandJob(tx, actor, 'jobs.cancel', id)
    demandOpen(facts)
    if (repairUnderWay(standingFacts(facts))) throw problem('wrong-state', `The repair of job ${facts.code} was started: finish it, and decide its release retest or have it waived.`)
    await updateJob(tx, id, { cancelledAt: new Date(), cancelReason: reason, bayId: null, placedAt: null })
    await letGo(tx, id)
    await told(tx, facts, { cancelled: true })
    await closeSessions(tx, actor, placeOf(facts))
    await appendTrail(tx, { engine: facts.engine, job: id, garage: facts.garage, kind: 'cancelled', actor, body: { reason } })
    return readJob(tx, actor, id)
  })
}

/** A job as what hangs on it knows it. */
export function placeOf(facts: JobFacts): JobPlace {
  const over = facts.handedOverAt !== null ? 'handed over' : facts.cancelledAt !== null ? 'cancelled' : null
  return { id: facts.id, code: facts.code, garage: facts.garage, engine: facts.engine, bay: facts.bay, over }
}
