import type { Floor, JobSummary } from '@evenbore/contract'

/**
 * The floor after one job changed: `alone` is that job by itself, as the server has it now. What did not change stays the same object,
 * so that only its row and the one it left are drawn anew.
 */
export function withJob(floor: Floor, id: string, alone: Floor): Floor {
  const bays = new Map(alone.bays.map((bay) => [bay.id, bay]))
  return {
    ...floor,
    bays: floor.bays.map((bay) => {
      const now = bays.get(bay.id)
      if (now?.job) return now
      return bay.job?.id === id ? { ...bay, job: null } : bay
    }),
    elsewhere: placed(floor.elsewhere, id, alone.elsewhere, bySince),
    waitsForDecision: placed(floor.waitsForDecision, id, alone.waitsForDecision, bySince),
    retestsDue: placed(floor.retestsDue, id, alone.retestsDue, byUrgency),
    ready: placed(floor.ready, id, alone.ready, bySince),
  }
}

/** Does the floor show other bays than it did? Then a patch is not enough. */
export function sameBays(floor: Floor, alone: Floor): boolean {
  return floor.bays.length === alone.bays.length && floor.bays.every(({ id, name }, i) => alone.bays[i]?.id === id && alone.bays[i]?.name === name)
}

type Retest = Floor['retestsDue'][number]
function placed<Row extends JobSummary | Retest>(rows: readonly Row[], id: string, mine: readonly Row[], order: (a: Row, b: Row) => number): Row[] {
  const others = rows.filter((row) => jobOf(row) !== id)
  if (others.length === rows.length && mine.length === 0) return rows as Row[]
  return mine.length === 0 ? others : [...others, ...mine].sort(order)
}
function jobOf(row: JobSummary | Retest): string {
  return 'retest' in row ? row.job : row.id
}

const compared = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
/** Who waits longest comes first, as the server sorts. */
function bySince(a: JobSummary, b: JobSummary): number {
  return compared(a.standing.since, b.standing.since)
}
/** Before hand-over first, then the longest overdue, then the earliest due. */
function byUrgency(a: Retest, b: Retest): number {
  return compared(b.kind, a.kind) || (b.overdueDays ?? -Infinity) - (a.overdueDays ?? -Infinity) || compared(a.due ?? '~', b.due ?? '~') || compared(a.code, b.code)
}
