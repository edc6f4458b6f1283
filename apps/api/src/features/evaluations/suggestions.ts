import type { Actor, NewSuggestionDecision, SuggestionDecision } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { newId } from '../../platform/ids.ts'
import { emit } from '../../platform/live/outbox.ts'
import { demandOpen, jobPlace } from '../sessions/service.ts'
import { appendTrail } from '../trail/service.ts'
import { keepOpinion, opinionForDecision } from './service.ts'
import { insertDecision, readDecisions, readNames, type DecisionRow } from './store.ts'

/** Suggested tests that were taken or declined, in the order of the decisions. */
export async function listDecisions(tx: Transaction, actor: Actor, job: string): Promise<SuggestionDecision[]> {
  const place = await jobPlace(tx, job)
  demand(actor, 'sessions.read', { garage: place.garage, bay: place.bay })
  const rows = await readDecisions(tx, job)
  const names = await readNames(tx, rows.map(({ byId }) => byId))
  return rows.map((row) => shown(row, names))
}

/**
 * Takes or declines a suggested test. The technician decides; what he was shown is kept with it.
 * @param transaction runs what is written; by a key, where the request has one
 */
export async function decideSuggestion(database: Database, actor: Actor, job: string, input: NewSuggestionDecision, transaction = database.transaction): Promise<SuggestionDecision> {
  const place = await jobPlace(database.prisma, job)
  demand(actor, 'suggestions.decide', { garage: place.garage })
  // Reckoned before anything is held in the database.
  const opinion = await opinionForDecision(database, job)
  return transaction(async (tx) => {
    demandOpen(place)
    const evaluationId = await keepOpinion(tx, opinion)
    const { decision, suggestion } = input
    const reason = input.decision === 'declined' ? input.reason : null
    const instead = input.decision === 'declined' ? input.instead : null
    const row = await insertDecision(tx, { id: newId(), jobId: job, evaluationId, suggestion, decision, reason, ...(instead === null ? {} : { instead }), byId: personOf(actor) })
    await emit(tx, { kind: 'suggestion.decided', garageId: place.garage, jobId: job, engineId: place.engine, body: { decision, suggestionDecision: row.id } })
    await appendTrail(tx, {
      engine: place.engine, job, garage: place.garage, kind: decision === 'taken' ? 'suggestion-taken' : 'suggestion-declined', actor,
      body: { evaluation: evaluationId, model: opinion.evaluation.model, suggestion, ...(reason === null ? {} : { reason }), ...(instead === null ? {} : { instead }) },
    })
    return shown(row, await readNames(tx, [row.byId]))
  })
}

function shown(row: DecisionRow, names: ReadonlyMap<string, string>): SuggestionDecision {
  return {
    id: row.id, job: row.jobId, evaluation: row.evaluationId, decision: row.decision as SuggestionDecision['decision'], suggestion: row.suggestion as SuggestionDecision['suggestion'],
    instead: (row.instead as string | null) ?? null, reason: row.reason, by: row.byId === null ? null : { id: row.byId, name: names.get(row.byId) ?? '' }, at: row.at.toISOString(),
  }
}
