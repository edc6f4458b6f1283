import type { Actor, Retest, RetestOutcome, Waiver } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { keepOpinion, opinionForDecision } from '../evaluations/service.ts'
import { demandJob, demandOpen } from '../jobs/service.ts'
import { closeSessions, jobPlace } from '../sessions/service.ts'
import { appendTrail } from '../trail/service.ts'
import { comparisonText } from './comparison.ts'
import { undecided } from './owed.ts'
import { decideRetest, finishedAt, readRetest, readSessionPlace, type RetestRow } from './store.ts'
import { toRetest } from './wire.ts'

/**
 * The technician's answer, after the comparison was seen; what was shown is kept with it. A failed release retest ends approval,
 * permission and repair: the job is testing again. A follow-up is decided by the visit that measured.
 */
export async function decideOutcome(database: Database, actor: Actor, id: string, input: RetestOutcome): Promise<Retest> {
  const before = await readRetest(database.prisma, id)
  if (before === undefined) throw problem('not-found')
  demand(actor, 'retests.read', { garage: before.garage, bay: before.bay })
  const session = await measuredIn(database.prisma, before, input.session)
  const evidence = await opinionForDecision(database, session.job, [session.id])
  const comparison = await comparisonText(database, before, session.id)
  return database.transaction(async (tx) => {
    const retest = await undecided(tx, actor, 'retests.decide', id)
    demandOpen(await demandJob(tx, actor, 'retests.decide', session.job))
    const evaluation = await keepOpinion(tx, evidence)
    const { outcome, reason = null } = input
    await decideRetest(tx, id, {
      outcome, outcomeReason: reason, sessionId: session.id, comparison, decidedAt: new Date(), decidedById: personOf(actor), ...(retest.kind === 'follow-up' ? { fulfilledByJobId: session.job } : {}),
    })
    await tell(tx, retest, outcome)
    await closeSessions(tx, actor, await jobPlace(tx, session.job), session.id)
    await appendTrail(tx, {
      engine: retest.engine, job: retest.job, garage: retest.garage, kind: outcome === 'passed' ? 'retest-passed' : 'retest-failed', actor,
      body: { retest: id, kind: retest.kind, session: session.id, baselineSession: retest.baselineSession, evaluation, model: evidence.evaluation.model, reason, comparison: comparison === null ? null : JSON.parse(comparison) as unknown },
    })
    return toRetest((await readRetest(tx, id))!)
  })
}

/** A manager lets a car go without its retest, with a reason. */
export async function waiveRetest(database: Database, actor: Actor, id: string, { reason }: Waiver): Promise<Retest> {
  return database.transaction(async (tx) => {
    const retest = await undecided(tx, actor, 'retests.waive', id)
    await decideRetest(tx, id, { outcome: 'waived', outcomeReason: reason, decidedAt: new Date(), decidedById: personOf(actor) })
    await tell(tx, retest, 'waived')
    await appendTrail(tx, { engine: retest.engine, job: retest.job, garage: retest.garage, kind: 'retest-waived', actor, body: { retest: id, kind: retest.kind, reason } })
    return toRetest((await readRetest(tx, id))!)
  })
}

/** The session that answers a retest: of the job after its repair for a release, of the same engine later on for a follow-up. */
async function measuredIn(tx: Transaction, retest: RetestRow, session: string) {
  const found = await readSessionPlace(tx, session)
  const fits = found !== undefined && found.engine === retest.engine && (retest.kind === 'follow-up' ? found.id !== retest.baselineSession : found.job === retest.job)
  if (!fits) throw badField('/session', retest.kind === 'release' ? 'the id of a session of this job' : 'the id of a later session of this engine', session)
  if (retest.repair !== null && found.receivedAt <= ((await finishedAt(tx, retest.repair)) ?? new Date(0))) throw badField('/session', 'a session opened after the repair was finished', session)
  if (!found.hasReadings) throw badField('/session', 'a session with at least one reading', session)
  return found
}

async function tell(tx: Transaction, retest: RetestRow, outcome: string): Promise<void> {
  await emit(tx, { kind: 'retest.changed', garageId: retest.garage, jobId: retest.job, engineId: retest.engine, body: { retest: retest.id, outcome } })
}
