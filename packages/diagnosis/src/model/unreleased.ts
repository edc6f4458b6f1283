import type { CompressionEvidence } from '../admission/types.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'

/**
 * Chance, for each reading (by its number) whose needle did not rise above the highest before it, that it only shows that former one:
 * the gauge was not released in between, and the cylinder's own pressure is at most what was read.
 *
 * Released readings come in any order: n of them rise (or stay) throughout by chance in (product of the factorials of equal ones) / n!
 * cases, an unreleased gauge always does (Bayes' rule on these two). First strokes decide where they were noted: of an unreleased gauge
 * they stand where the needle was, of a released one far below. Dry cranking readings of one session, each with its own place in the order.
 * The chance is taken reading by reading: that it was forgotten once does not raise it for the next.
 */
export function unreleasedChances(all: readonly CompressionEvidence[], knowledge: Knowledge): ReadonlyMap<number, number> {
  const chances = new Map<number, number>()
  const groups = Map.groupBy(all.filter(({ kind, usable, seq }) => kind === 'dry' && usable && seq !== null), ({ session }) => session)
  for (const group of groups.values()) {
    const order = group.toSorted((a, b) => a.seq! - b.seq!)
    if (order.length < 2 || new Set(order.map(({ seq }) => seq)).size < order.length) continue
    if (order.some(({ pa }, i) => i > 0 && pa < order[i - 1]!.pa * (1 - SLACK))) continue
    const chance = chanceOf(order, knowledge)
    if (chance < LEAST) continue
    order.forEach(({ reading, pa, resolutionPa }, i) => {
      if (i > 0 && pa - order[i - 1]!.pa <= resolutionPa * (1 + SLACK)) chances.set(reading, chance)
    })
  }
  return chances
}

/** Pressures that differ by this part are equal, in whatever unit they were noted. */
const SLACK = 1e-9
/** Chances below this move nothing that is shown. */
const LEAST = 1e-3

function chanceOf(order: readonly CompressionEvidence[], knowledge: Knowledge): number {
  const { chance: before, firstCarried, firstByChance } = knowledge.noise.unreleased.value
  let released = 1, equal = 1
  // equal readings change places unnoticed: k!/n! built up one reading at a time
  order.forEach(({ pa }, i) => {
    equal = i > 0 && pa <= order[i - 1]!.pa * (1 + SLACK) ? equal + 1 : 1
    released *= equal / (i + 1)
  })
  let odds = before / (1 - before) / released
  order.forEach(({ firstStrokePa }, i) => {
    if (i === 0 || firstStrokePa === null) return
    odds *= firstStrokePa >= firstCarried * order[i - 1]!.pa ? 1 / firstByChance : firstByChance
  })
  return odds / (1 + odds)
}
