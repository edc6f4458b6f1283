import type { Actor, Case, Comparison, Evaluation, JobEvaluation, Operation, Pair, StoredEvaluation } from '@evenbore/contract'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { problem } from '../../platform/problems/problem.ts'
import { canonicalText } from '../trail/service.ts'
import { caseOfJob, type JobCase } from './case.ts'
import { comparisonOf, hashed, opinionOn } from './model.ts'
import { keepEvaluationRow, readEvaluation } from './store.ts'

export { caseOfJob, type JobCase } from './case.ts'

/** The opinion on any case: nothing is kept. */
export async function evaluateCase(actor: Actor, given: Case, ranking: boolean): Promise<Evaluation> {
  demand(actor, 'evaluate', {})
  return opinionOn(hashed(given), ranking)
}

/** What one session shows against another: nothing is kept. */
export async function compareCases(actor: Actor, pair: Pair): Promise<Comparison> {
  demand(actor, 'evaluate', {})
  return comparisonOf(pair)
}

/** The opinion on a job as it stands, with the case behind it. */
export async function evaluateJob(database: Database, actor: Actor, job: string, ranking: boolean): Promise<JobEvaluation> {
  const built = await caseOfJob(database, job)
  demand(actor, 'sessions.read', { garage: built.garage, bay: built.bay })
  return { job, case: built.given, readingIds: [...built.readingIds], evaluation: await opinionOn(hashed(built.given), ranking) }
}

/** An opinion that is to be kept: computed before the transaction that decides on it, so that no lock waits for the model. */
export type Opinion = { readonly of: JobCase; readonly caseHash: string; readonly evaluation: Evaluation }

/** The full opinion on a job as it stands (or on the sessions named), for an action that rests on it. */
export async function opinionForDecision(database: Database, job: string, sessions?: readonly string[]): Promise<Opinion> {
  const of = await caseOfJob(database, job, sessions)
  const asked = hashed(of.given)
  return { of, caseHash: asked.hash, evaluation: await opinionOn(asked, true) }
}

/** Two opinions' cases compared, for a retest; null where the engine's description has another number of cylinders by now. */
export async function compareSides(before: Opinion, after: Opinion, work: readonly string[]): Promise<Comparison | null> {
  if (before.of.given.engine.cylinders !== after.of.given.engine.cylinders) return null
  return comparisonOf({ before: before.of.given, after: after.of.given, work: work as Operation[] })
}

/** Keeps an opinion for good, in the transaction of the decision that rests on it; answers its id. */
export function keepOpinion(tx: Transaction, { of, caseHash, evaluation }: Opinion): Promise<string> {
  // The case's text carries the ids of its readings, so that a replay can name them.
  const caseText = canonicalText({ case: of.given, readingIds: of.readingIds })
  return keepEvaluationRow(tx, { job: of.job, engine: of.engine, caseHash, model: evaluation.model, caseText, resultText: canonicalText(evaluation) })
}

/** An evaluation as it was kept; never computed anew. */
export async function storedEvaluation(tx: Transaction, actor: Actor, id: string): Promise<StoredEvaluation> {
  const row = await readEvaluation(tx, id)
  if (row === null) throw problem('not-found')
  demand(actor, 'sessions.read', { garage: row.job.garageId, bay: row.job.bayId })
  const { case: given } = JSON.parse(row.caseText) as { case: Case }
  return { id, job: row.jobId, model: row.model, createdAt: row.createdAt.toISOString(), case: given, evaluation: JSON.parse(row.resultText) as Evaluation }
}

/** What was believed when it was decided: for findings and reports, which have asked for permission already. */
export async function keptBelief(tx: Transaction, id: string): Promise<Evaluation | null> {
  const row = await readEvaluation(tx, id)
  return row === null ? null : (JSON.parse(row.resultText) as Evaluation)
}
