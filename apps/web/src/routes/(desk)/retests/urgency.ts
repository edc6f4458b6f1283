import type { Retest } from '@evenbore/contract'
import { dueOf } from '@evenbore/words/sentences/retest.ts'

export type Urgency = 'overdue' | 'due' | 'booked' | 'later'
const ORDER: readonly Urgency[] = ['overdue', 'due', 'booked', 'later']

/** How pressing a retest is: past its date, owed before hand-over, booked for a time, or promised for later. */
export function urgencyOf(retest: Retest): Urgency {
  if (retest.overdueDays !== null && retest.overdueDays > 0) return 'overdue'
  if (dueOf(retest)?.bookedFor) return 'booked'
  return retest.kind === 'release' || retest.overdueDays === 0 ? 'due' : 'later'
}

/** Retests in groups, the most pressing first; within a group the longest overdue, then the earliest date. */
export function byUrgency(retests: readonly Retest[]): { readonly urgency: Urgency; readonly retests: readonly Retest[] }[] {
  const date = (retest: Retest) => dueOf(retest)?.bookedFor ?? dueOf(retest)?.latest ?? '9999'
  const sorted = retests.toSorted((a, b) => (b.overdueDays ?? -1) - (a.overdueDays ?? -1) || date(a).localeCompare(date(b)))
  return ORDER.map((urgency) => ({ urgency, retests: sorted.filter((retest) => urgencyOf(retest) === urgency) })).filter((group) => group.retests.length > 0)
}
