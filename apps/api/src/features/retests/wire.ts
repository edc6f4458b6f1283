import type { Retest } from '@evenbore/contract'
import type { RetestRow } from './store.ts'

/** A retest as it goes on the wire. */
export function toRetest(row: RetestRow): Retest {
  const { id, job, code, engine, kind, reason, baselineSession, session, fulfilledByJob, dates, overdueDays, outcome, outcomeReason, decidedBy } = row
  return {
    id, job, code, engine, kind, reason, baselineSession, session, fulfilledByJob, dates, overdueDays, outcome, outcomeReason, decidedBy,
    decidedAt: row.decidedAt?.toISOString() ?? null, createdAt: row.createdAt.toISOString(),
  }
}
