import type { Case, Suggestion } from '@evenbore/contract'
import type { Inference } from '../model/posterior.ts'
import type { EngineSize } from '../repairs/minutes.ts'
import { candidates, scoreOf, type Candidate } from './candidates.ts'
import { nothingCommon } from './questions.ts'
import { sayOpen, sayTest } from './says.ts'
import { stakesOf } from './stakes.ts'

/** The ranking, and whether nothing pays any more. */
export interface NextTests {
  readonly next: Suggestion[]
  readonly enough: { says: string } | null
}

/** A test that teaches less than this is not worth a line. */
const LEAST_BITS = 1e-3

/**
 * Ranks what could be done next by what it is worth for each minute: minutes of repair that it is expected to save, and the bits it is
 * expected to teach at what a bit is worth. A test pays when it is worth more than its own minutes; when none does, enough is known.
 */
export function nextTests(given: Case, inference: Inference, size: EngineSize): NextTests {
  const { stopping } = inference.space.knowledge
  const sorted = candidates(given, inference, stakesOf(size, inference.space.knowledge))
    .filter((c) => c.bits >= LEAST_BITS)
    .map((c) => ({ ...c, score: scoreOf(c, inference) }))
    .sort((a, b) => b.score - a.score || a.minutes - b.minutes || JSON.stringify(a.tests).localeCompare(JSON.stringify(b.tests)))
  // a test that says something of the cylinders and of the whole engine comes up twice: it is worth the greater of the two at least
  const ranked = [...new Map(sorted.toReversed().map((c) => [JSON.stringify(c.tests), c])).values()].toReversed()
  const paying = fewOfEach(ranked.filter((c) => c.score > 1))
  const kept = (paying.length > 0 ? paying : ranked.slice(0, 1)).slice(0, stopping.suggestions.value)
  return {
    next: kept.map(({ tests, bits, minutes }) => ({
      tests: [...tests], bits, minutes, bitsPerMinute: bits / Math.max(0.2, minutes), says: `${tests.map(sayTest).join('; then ')}.${sayOpen(tests, inference)}`,
    })),
    enough: paying.length > 0 ? null : { says: enoughBecause(inference) },
  }
}

/** Of the same tests on more and more cylinders so many stand in the list: it is short, and other tests are to be seen as well. */
const MOST_ROUNDS = 2

/** The first few of each round: the same tests on other cylinders. */
function fewOfEach<T extends Pick<Candidate, 'tests'>>(ranked: readonly T[]): T[] {
  const seen = new Map<string, number>()
  return ranked.filter(({ tests }) => {
    const round = JSON.stringify(tests.map((test) => ({ ...test, cylinders: undefined })))
    const count = (seen.get(round) ?? 0) + 1
    seen.set(round, count)
    return count <= MOST_ROUNDS
  })
}

function enoughBecause({ own, causes, space }: Inference): string {
  const settled = space.knowledge.stopping.settled.value
  if (!own.every((p) => p.some((x) => x >= settled))) return 'No test at hand would teach or save enough for its time.'
  if (Math.max(...causes) < settled && !nothingCommon({ causes })) {
    return 'Each cylinder has a clear leading explanation; what all of them have in common is not settled: look at throttle, cranking speed, gauge and valve timing.'
  }
  return 'Every cylinder has a clear leading explanation; no further test pays for its time.'
}
