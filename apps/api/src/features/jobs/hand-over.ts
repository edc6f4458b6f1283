import type { Actor, HandOver, Job } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { closeSessions } from '../sessions/service.ts'
import { appendTrail } from '../trail/service.ts'
import { standingFacts, type JobFacts } from './facts.ts'
import { placeOf } from './moves.ts'
import { baselineOf, insertPromise, letGo } from './retest-store.ts'
import { demandJob, demandOpen, readJob } from './service.ts'
import { standingOf } from './standing.ts'
import { insertContact, lockJob, updateJob } from './store.ts'
import { told } from './told.ts'

/** Hands a car over: only a ready one. Frees its bay, and writes down the follow-up retests that are promised with it. */
export async function handOver(database: Database, actor: Actor, id: string, { odometerKm, note, followUps }: HandOver): Promise<Job> {
  demandDue(followUps)
  return database.transaction(async (tx) => {
    await lockJob(tx, id)
    const facts = await demandJob(tx, actor, 'jobs.hand-over', id)
    demandOpen(facts)
    demandReady(facts)
    await updateJob(tx, id, { handedOverAt: new Date(), handedOverById: personOf(actor), bayId: null, placedAt: null })
    // A car that leaves without the retest it came for still owes it.
    await letGo(tx, id)
    if (note !== undefined) await insertContact(tx, { jobId: id, kind: 'note', text: note, byId: personOf(actor) })
    await told(tx, facts, { handedOver: true })
    await closeSessions(tx, actor, placeOf(facts))
    const promised = await promise(tx, actor, facts, followUps)
    await appendTrail(tx, { engine: facts.engine, job: id, garage: facts.garage, kind: 'handed-over', actor, body: { odometerKm, followUps: promised } })
    return readJob(tx, actor, id)
  })
}

/** A promise without a date, an odometer value or an event would never fall due. */
function demandDue(followUps: HandOver['followUps']): void {
  followUps.forEach(({ latest, odometerKm, event }, at) => {
    if (latest === null && odometerKm === null && event === null) throw badField(`/followUps/${at}`, 'a latest date, an odometer value or an event')
  })
}

function demandReady(facts: JobFacts): void {
  const { state, since, waitsFor, beside } = standingOf(standingFacts(facts))
  if (state === 'ready') return
  const owed = beside.includes('unplaced-readings') ? ' Readings that came late wait to be placed.' : ''
  throw problem('wrong-state', `Job ${facts.code} is not ready: it stands at ${state} since ${since}, and waits for ${waitsFor}.${owed}`)
}

async function promise(tx: Transaction, actor: Actor, facts: JobFacts, followUps: HandOver['followUps']): Promise<string[]> {
  const baselineSessionId = followUps.length === 0 ? null : await baselineOf(tx, facts.id)
  const ids: string[] = []
  for (const followUp of followUps) {
    const retest = await insertPromise(tx, { ...followUp, jobId: facts.id, engineId: facts.engine, baselineSessionId, createdById: personOf(actor) })
    await emit(tx, { kind: 'retest.changed', garageId: facts.garage, jobId: facts.id, engineId: facts.engine, body: { retest } })
    await appendTrail(tx, { engine: facts.engine, job: facts.id, garage: facts.garage, kind: 'retest-promised', actor, body: { retest, baselineSession: baselineSessionId, ...followUp } })
    ids.push(retest)
  }
  return ids
}
