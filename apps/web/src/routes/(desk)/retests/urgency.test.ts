import type { Retest } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { changeWord } from '@evenbore/words/sentences/change.ts'
import { byUrgency } from './urgency.ts'

const retest = (id: string, over: Partial<Retest> & { latest?: string; bookedFor?: string }): Retest => {
  const { latest = null, bookedFor = null, ...rest } = over
  return {
    id, job: 'j', code: 'K 1', engine: 'e', kind: 'follow-up', reason: '', baselineSession: null, session: null, fulfilledByJob: null, overdueDays: null, outcome: null, outcomeReason: null, decidedAt: null, decidedBy: null, createdAt: '2026-05-01T00:00:00Z',
    dates: [{ id: `${id}d`, latest, odometerKm: null, event: null, bookedFor, reason: null, by: null, at: '2026-05-01T00:00:00Z' }], ...rest,
  }
}

test('what is overdue comes first, the longest overdue at the top; then what stands before a hand-over; then by date', () => {
  const groups = byUrgency([
    retest('later', { latest: '2026-06-01' }), retest('booked', { bookedFor: '2026-05-08T09:00:00Z' }), retest('release', { kind: 'release' }),
    retest('six', { overdueDays: 6 }), retest('nine', { overdueDays: 9 }), retest('sooner', { latest: '2026-05-20' }),
  ])
  expect(groups.map(({ urgency, retests }) => [urgency, retests.map(({ id }) => id)])).toEqual([['overdue', ['nine', 'six']], ['due', ['release']], ['booked', ['booked']], ['later', ['sooner', 'later']]])
})

test('nothing is said of a change where the two may not be compared', () => {
  expect(changeWord({ improved: null, unchanged: null, worse: null })).toBeUndefined()
  expect(changeWord({ improved: 0.1, unchanged: 0.7, worse: 0.2 })).toEqual({ word: 'unchanged', probability: 0.7 })
})
