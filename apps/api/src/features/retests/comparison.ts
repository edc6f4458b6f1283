import type { Actor, RetestComparison } from '@evenbore/contract'
import { demand } from '../../access/door.ts'
import type { Database } from '../../platform/database/database.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { compareSides, opinionForDecision, type Opinion } from '../evaluations/service.ts'
import { jobOfSession, latestSession, operationsOf, readRetest, readSessionPlace, type RetestRow } from './store.ts'

/**
 * Before and after: the baseline session against the one that was measured for the retest (`session`, the one it was decided on, or the
 * latest that would do). A decided retest shows what was kept when it was decided.
 */
export async function readComparison(database: Database, actor: Actor, id: string, session?: string): Promise<RetestComparison> {
  const retest = await readRetest(database.prisma, id)
  if (retest === undefined) throw problem('not-found')
  demand(actor, 'retests.read', { garage: retest.garage, bay: retest.bay })
  if (session !== undefined && (await readSessionPlace(database.prisma, session))?.engine !== retest.engine) throw badField('/query/session', 'the id of a session of this engine', session)
  const after = session ?? retest.session ?? (await likelySession(database, retest))
  const kept = retest.comparison !== null && after === retest.session ? (JSON.parse(retest.comparison) as RetestComparison['comparison']) : undefined
  const sides = await bothSides(database, retest, after)
  return {
    retest: id, baselineSession: retest.baselineSession, session: after,
    comparison: kept ?? (await compare(database, retest, sides)),
    before: sides.before?.evaluation ?? null, after: sides.after?.evaluation ?? null,
  }
}

/** The comparison as it is kept with a decision; null where there is no baseline. */
export async function comparisonText(database: Database, retest: RetestRow, session: string): Promise<string | null> {
  const comparison = await compare(database, retest, await bothSides(database, retest, session))
  return comparison === null ? null : JSON.stringify(comparison)
}

type Sides = { readonly before: Opinion | null; readonly after: Opinion | null }

async function bothSides(database: Database, retest: RetestRow, session: string | null): Promise<Sides> {
  return { before: await sideOf(database, retest.baselineSession), after: await sideOf(database, session) }
}

async function sideOf(database: Database, session: string | null): Promise<Opinion | null> {
  const job = session === null ? undefined : await jobOfSession(database.prisma, session)
  return job === undefined || session === null ? null : opinionForDecision(database, job, [session])
}

async function compare(database: Database, retest: RetestRow, { before, after }: Sides): Promise<RetestComparison['comparison']> {
  if (before === null || after === null) return null
  return compareSides(before, after, await operationsOf(database.prisma, retest.repair))
}

/** What was measured for this retest so far: the job's latest release session, or the latest of the visit that fulfils a promise. */
async function likelySession(database: Database, retest: RetestRow): Promise<string | null> {
  if (retest.kind === 'release') return latestSession(database.prisma, retest.job, 'release')
  return retest.fulfilledByJob === null ? null : latestSession(database.prisma, retest.fulfilledByJob)
}
