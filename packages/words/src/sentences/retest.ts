import type { Retest } from '@evenbore/contract'
import type { Words } from '../en.ts'

interface Here {
  readonly date: (day: string) => string
  readonly when: (instant: string) => string
  readonly number: (value: number) => string
}

/** The date row that counts: the newest. */
export function dueOf(retest: Retest): Retest['dates'][number] | undefined {
  return retest.dates.toSorted((a, b) => b.at.localeCompare(a.at))[0]
}

/** When a retest is due, whichever comes first, as people say it. */
export function dueWords(retest: Retest, words: Words, here: Here): string {
  const due = dueOf(retest)
  if (!due) return ''
  return [
    due.latest ? words.desk.dueOn(here.date(due.latest)) : '',
    due.odometerKm === null ? '' : words.office.atKm(here.number(due.odometerKm)),
    due.event ? words.office.whenEvent(due.event) : '',
    due.bookedFor ? words.desk.bookedFor(here.when(due.bookedFor)) : '',
  ].filter(Boolean).join(', ')
}

/** A retest in one line: why, when due or what it came to. */
export function retestWords(retest: Retest, words: Words, here: Here): string {
  const { office, desk } = words
  // the reason of a release retest is always the same, and the server's
  const why = retest.kind === 'release' ? desk.beforeHandOver : retest.reason
  if (retest.outcome) {
    const came = retest.outcome === 'waived' ? office.waived : retest.outcome === 'passed' ? office.passed.toLowerCase() : office.failed.toLowerCase()
    return `${why}; ${office.decidedBy(came, retest.decidedBy?.name ?? desk.nobody, retest.decidedAt ? here.when(retest.decidedAt) : '')}${retest.outcomeReason ? `: ${words.ui.quoted(retest.outcomeReason)}` : ''}`
  }
  const late = retest.overdueDays !== null && retest.overdueDays > 0 ? desk.overdue(retest.overdueDays) : ''
  return [why, late, dueWords(retest, words, here)].filter(Boolean).join(', ')
}
