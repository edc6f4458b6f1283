import type { Actor, QuoteLineInput, QuoteVersion } from '@evenbore/contract'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { newId } from '../../platform/ids.ts'
import { emit } from '../../platform/live/outbox.ts'
import { ProblemError, problem } from '../../platform/problems/problem.ts'
import { keepOpinion, opinionForDecision, type Opinion } from '../evaluations/service.ts'
import { demandJob, demandOpen, lockJob } from '../jobs/service.ts'
import { closeSessions, jobPlace } from '../sessions/service.ts'
import { appendTrail } from '../trail/service.ts'
import { deleteDraft, insertVersion, readDraft, readNames, readPricing, readVersions } from './store.ts'
import { pricedLine, totalsOf } from './totals.ts'
import { peopleOf, toVersion } from './wire.ts'

/** The evidence that a version rests on, computed before any lock is taken. Null where the case is beyond what the model takes. */
export async function evidenceFor(database: Database, actor: Actor, job: string): Promise<Opinion | null> {
  await demandJob(database.prisma, actor, 'quotes.send', job)
  try {
    return await opinionForDecision(database, job)
  } catch (error) {
    if (error instanceof ProblemError && error.code === 'invalid-case') return null
    throw error
  }
}

/**
 * Sends the draft to the manager: it becomes a version that is never edited, with the evaluation it rests on. The draft is gone and
 * open sessions are closed. `basis`: the draft's version that the sender saw, where he says it.
 */
export async function sendVersion(tx: Transaction, actor: Actor, job: string, evidence: Opinion | null, basis?: number): Promise<QuoteVersion> {
  await lockJob(tx, job)
  const facts = await demandJob(tx, actor, 'quotes.send', job)
  demandOpen(facts)
  const draft = await readDraft(tx, job)
  if (draft === null) throw problem('wrong-state', 'There is no draft to send.')
  if (basis !== undefined && draft.version !== basis) throw problem('stale', `You send version ${basis} of the draft; it is at version ${draft.version} now. Read it again.`)
  const pricing = await readPricing(tx, facts.garage)
  const lines = (draft.lines as unknown as QuoteLineInput[]).map((line) => pricedLine(line, pricing.currency))
  const totals = totalsOf(lines, pricing)
  if (lines.length === 0 || totals === undefined) throw problem('wrong-state', 'The draft has no lines.')
  const evaluationId = evidence === null ? null : await keepOpinion(tx, evidence)
  const number = ((await readVersions(tx, job)).at(-1)?.number ?? 0) + 1
  const { currency, pricesIncludeTax, netMinor, taxMinor, totalMinor } = totals
  const version = await insertVersion(tx, { id: newId(), jobId: job, number, authorId: draft.authorId, note: draft.note, evaluationId, currency, pricesIncludeTax, netMinor, taxMinor, totalMinor }, lines)
  await deleteDraft(tx, job)
  await emit(tx, { kind: 'quote.sent', garageId: facts.garage, jobId: job, engineId: facts.engine, body: { quoteVersion: version.id, number } })
  await closeSessions(tx, actor, await jobPlace(tx, job))
  await appendTrail(tx, {
    engine: facts.engine, job, garage: facts.garage, kind: 'quote-sent', actor,
    body: { quoteVersion: version.id, number, author: draft.authorId, evaluation: evaluationId, model: evidence?.evaluation.model ?? null, lines, totals, note: draft.note },
  })
  return toVersion(version, await readNames(tx, peopleOf([version])))
}
