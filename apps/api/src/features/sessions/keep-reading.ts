import type { Actor, ReadingKept, ReadingPut } from '@evenbore/contract'
import { demand } from '../../access/door.ts'
import type { Database } from '../../platform/database/database.ts'
import { constraintOf, sqlStateOf } from '../../platform/database/sql-state.ts'
import { hashOf } from '../../platform/http/idempotency.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { appendTrail } from '../trail/service.ts'
import { readingFaults } from './reading-faults.ts'
import { leftBody, readingRow } from './reading-row.ts'
import { keepReadingRow, keepReadingRowWithin, readReplaced, type KeepOutcome, type KeepReading, type ReplacedReading } from './reading-store.ts'
import { readSessionFacts, sessionFacts, type SessionFacts } from './session-facts.ts'

/** The answer, and whether this request was the first with its id. */
export type Kept = { readonly isNew: boolean; readonly kept: ReadingKept }

/** The same id twice at once, or an engine edited meanwhile, sends a request round again; it never takes more than this. */
const MOST_ROUNDS = 4

/**
 * Keeps a reading, a correction or a withdrawal; the same request again is answered as the first time.
 * Only what is well formed and possible is asked here: whether a reading may be compared is the evaluation's to judge.
 * @throws problems `not-found`, `not-allowed`, `invalid-request` (paths into the body), `id-reused`, `session-closed`, `already-replaced`
 */
export async function keepReading(database: Database, actor: Actor, session: string, reading: string, put: ReadingPut): Promise<Kept> {
  // By the session too: one id cannot name readings of two sessions.
  const requestHash = hashOf([session, put])
  let facts = await sessionFacts(database, session)
  for (let round = 0; round < MOST_ROUNDS; round++) {
    if (facts === undefined) throw problem('not-found')
    demand(actor, 'readings.write', { garage: facts.garage, apps: facts.apps })
    const replaced = put.replaces === undefined ? null : await replaceable(database, actor, put.replaces, reading)
    const faults = put.reading === undefined ? [] : readingFaults(put.reading, facts)
    // Faults against remembered facts may be out of date: they are told only when fresh facts say the same.
    if (faults.length > 0 && round > 0) throw problem('invalid-request', undefined, { errors: faults })
    const outcome = faults.length > 0 ? 'again' : await attempt(database, actor, facts, put, readingRow(actor, facts, reading, put, requestHash, replaced), replaced)
    if (outcome === undefined) throw problem('not-found')
    if (outcome !== 'again' && (outcome.isNew || outcome.priorHash !== null)) return answer(reading, requestHash, outcome)
    if (outcome !== 'again') demandPossible(put, outcome)
    facts = await readSessionFacts(database, session)
  }
  throw problem('conflict', 'This reading or its engine is being changed by somebody else; send it again.')
}

function answer(reading: string, requestHash: string, outcome: KeepOutcome): Kept {
  if (outcome.priorHash !== null && outcome.priorHash !== requestHash) {
    throw problem('id-reused', 'A reading with this id was sent before with another body. Correct it by a new reading that names this one in `replaces`.')
  }
  return { isNew: outcome.isNew, kept: { id: reading, receivedAt: outcome.receivedAt!.toISOString(), state: outcome.state! } }
}

/** Why nothing was written. Says nothing where the engine was edited or another request came first: those are tried again. */
function demandPossible(put: ReadingPut, outcome: KeepOutcome): void {
  if (!outcome.takerKnown) throw badField('/takenBy', 'the id of a person of the chain', put.takenBy)
  if (outcome.closed && put.offline === undefined) {
    throw problem('session-closed', 'The session is closed. Open another one, or send `offline` with a reading that was made before it was closed.')
  }
}

async function attempt(database: Database, actor: Actor, facts: SessionFacts, put: ReadingPut, row: KeepReading, replaced: ReplacedReading | null): Promise<KeepOutcome | 'again' | undefined> {
  try {
    if (replaced !== null && replaced.job !== facts.job) return await moveReading(database, actor, facts, put, row, replaced)
    const outcome = await keepReadingRow(database, row)
    if (outcome?.isNew === true) database.committed()
    return outcome
  } catch (error) {
    // Another correction of the same reading came first, or this very request twice at once: the next round sees which.
    if (sqlStateOf(error) === '23505' && constraintOf(error) === 'reading_replaced_once') return 'again'
    throw error
  }
}

/** A reading that turns out to be another job's: the job and the engine that it leaves are told as well. */
function moveReading(database: Database, actor: Actor, facts: SessionFacts, put: ReadingPut, row: KeepReading, left: ReplacedReading): Promise<KeepOutcome | undefined> {
  return database.transaction(async (tx) => {
    const outcome = await keepReadingRowWithin(tx, row)
    if (outcome?.isNew !== true) return outcome
    await emit(tx, { kind: 'reading.kept', garageId: left.garage, jobId: left.job, engineId: left.engine, body: { session: left.session, readingId: row.id, replaces: left.id } })
    await appendTrail(tx, { engine: left.engine, job: left.job, garage: left.garage, kind: put.withdrawn ? 'reading-withdrawn' : 'reading-replaced', actor, body: leftBody(facts, row.id, put, left) })
    return outcome
  })
}

/** The reading to be replaced: of a garage where the actor may write, and not replaced by another one yet. */
async function replaceable(database: Database, actor: Actor, replaces: string, by: string): Promise<ReplacedReading> {
  const replaced = await readReplaced(database, replaces)
  if (replaced === undefined || replaces === by) throw badField('/replaces', 'the id of a reading kept before', replaces)
  demand(actor, 'readings.write', { garage: replaced.garage, apps: replaced.apps })
  if (replaced.replacedBy !== null && replaced.replacedBy !== by) throw problem('already-replaced', `It was replaced by the reading ${replaced.replacedBy}.`)
  return replaced
}
