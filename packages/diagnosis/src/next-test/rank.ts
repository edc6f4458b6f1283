import type { Case, Suggestion } from '@evenbore/contract'
import type { Inference } from '../model/posterior.ts'
import type { EngineSize } from '../repairs/minutes.ts'
import { candidates, scoreOf, type Candidate } from './candidates.ts'
import type { Report } from './owed.ts'
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
 * expected to teach at what a bit is worth. A test pays when it is worth more than its own minutes; when none does, and no repeat is owed, enough is known.
 */
export function nextTests(given: Case, inference: Inference, size: EngineSize, report: Report): NextTests {
  const { stopping } = inference.space.knowledge
  const sorted = candidates(given, inference, stakesOf(size, inference.space.knowledge), report)
    .filter((c) => c.bits >= LEAST_BITS || c.owed !== undefined)
    .map((c) => ({ ...c, score: scoreOf(c, inference) }))
    .sort((a, b) => b.score - a.score || a.minutes - b.minutes || JSON.stringify(a.tests).localeCompare(JSON.stringify(b.tests)))
  // a test that says something of the cylinders and of the whole engine, or is owed as well, comes up twice: it is worth the greater of the two at least
  const ranked = [...Map.groupBy(sorted, ({ tests }) => JSON.stringify(tests)).values()].map(([best, ...same]) => ({ ...same.find(({ owed }) => owed !== undefined), ...best! }))
  const paying = fewOfEach(ranked.filter((c) => c.score > 1 || c.owed !== undefined))
  const kept = shortList(paying.length > 0 ? paying : ranked.slice(0, 1), stopping.suggestions.value)
  return {
    next: kept.map(({ tests, bits, minutes, owed }) => ({
      tests: [...tests], bits, minutes, bitsPerMinute: bits / Math.max(0.2, minutes), says: `${tests.map(sayTest).join('; then ')}.${owed === undefined ? sayOpen(tests, inference) : ` ${owed}`}`,
    })),
    enough: paying.length > 0 ? null : { says: enoughBecause(inference) },
  }
}

/** The first so many. What is owed is not worth most, or it would lead: it comes right behind what is, where it is seen. */
function shortList(ranked: readonly Candidate[], most: number): Candidate[] {
  const [best, ...others] = ranked
  if (best === undefined) return []
  return [best, ...others.filter((c) => c.owed !== undefined), ...others.filter((c) => c.owed === undefined)].slice(0, most)
}

/** Of the same tests on more and more cylinders so many stand in the list: it is short, and other tests are to be seen as well. */
const MOST_ROUNDS = 2

/** The first few of each round: the same tests on other cylinders. */
function fewOfEach<T extends Pick<Candidate, 'tests' | 'owed'>>(ranked: readonly T[]): T[] {
  const seen = new Map<string, number>()
  return ranked.filter(({ tests, owed }) => {
    if (owed !== undefined) return true
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
