import type { Case, Suggestion, SuggestedTest } from '@evenbore/contract'
import type { Inference } from '../model/posterior.ts'
import { candidates, type Candidate } from './candidates.ts'
import { LABEL_COUNT, labelOf } from './information.ts'
import { sayTest } from './says.ts'

/** The ranking, and whether nothing pays any more. */
export interface NextTests {
  readonly next: Suggestion[]
  readonly enough: { says: string } | null
}

/** Ranks what could be done next by expected bits for each minute of labour. */
export function nextTests(given: Case, inference: Inference): NextTests {
  const { stopping } = inference.space.knowledge
  const singles = candidates(given, inference)
  const all: { tests: SuggestedTest[]; bits: number; minutes: number }[] = singles.map((c) => ({ tests: [c.test], bits: c.bits, minutes: c.minutes }))
  const pair = cheapPair(singles)
  if (pair !== null) all.push(pair)
  const ranked = all
    .map((s) => ({ ...s, bitsPerMinute: s.bits / Math.max(0.2, s.minutes) }))
    .sort((a, b) => b.bitsPerMinute - a.bitsPerMinute || a.minutes - b.minutes || JSON.stringify(a.tests).localeCompare(JSON.stringify(b.tests)))
  const best = ranked[0]
  const settled = inference.states.every((_, i) => leadOf(inference, i) >= stopping.settled.value)
  const worth = ranked.filter((s) => s.bitsPerMinute >= stopping.leastBitsPerMinute.value)
  const kept = (worth.length > 0 ? worth : ranked.slice(0, 1)).slice(0, stopping.suggestions.value)
  const someRead = given.readings.some((r) => r.test === 'compression' || r.test === 'leakage')
  const pays = best !== undefined && best.bitsPerMinute >= stopping.leastBitsPerMinute.value && !(settled && someRead && best.bitsPerMinute < 0.05)
  return {
    next: kept.map((s) => ({ tests: s.tests, bits: s.bits, minutes: s.minutes, bitsPerMinute: s.bitsPerMinute, says: s.tests.map(sayTest).join('; then ') + '.' })),
    enough: pays ? null : { says: settled ? 'Every cylinder has a clear leading explanation; no further test pays for its time.' : 'No test at hand would teach enough for its time.' },
  }
}

/** Probability of the leading explanation of one cylinder. */
function leadOf(inference: Inference, i: number): number {
  const sums = new Float64Array(LABEL_COUNT)
  const { states } = inference.space
  for (let s = 0; s < states.count; s++) sums[labelOf(states, s)]! += inference.states[i]![s]!
  return Math.max(...sums)
}

/** The two best tests of one cylinder under six minutes each, done together while the hand is there. */
function cheapPair(singles: readonly Candidate[]): { tests: SuggestedTest[]; bits: number; minutes: number } | null {
  const cheap = singles.filter((c) => c.minutes <= 6 && c.test.cylinders?.length === 1)
    .sort((a, b) => b.bits / b.minutes - a.bits / a.minutes)
  const first = cheap[0]
  const second = cheap.find((c) => c !== first && c.test.cylinders![0] === first?.test.cylinders![0] && c.test.test !== first?.test.test)
  if (first === undefined || second === undefined) return null
  // what the second adds after the first is not known without doing the sum over both: count it at its least, the smaller of the two
  return { tests: [first.test, second.test], bits: Math.max(first.bits, second.bits), minutes: first.minutes + second.minutes }
}
