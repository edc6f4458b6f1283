import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Evidence } from './evidence.ts'
import type { EngineClass, GaugeEvidence } from './grid.ts'

/** Two cylinders (0-based) whose dry readings, or whose leakage readings, may have been noted the wrong way round; with this part of the engines. */
export interface Swap {
  readonly of: 'dry' | 'leakage'
  readonly cylinders: readonly [number, number]
  readonly share: number
}

/** The lower of two dry readings (difference of logarithms) and the greater of two leaks (points) that together look like a wrong note. */
const LEAST_LOWER = 0.1
const LEAST_MORE = 8
/** So many pairs are considered, those furthest apart first. */
const MOST_PAIRS = 2

/**
 * Notes that may stand under the wrong cylinder: of two cylinders next to each other on a gasket, the one that reads lower leaks clearly less.
 * Which of the two notes is wrong is not known, so either may be. Cylinders read more than once are known well enough.
 */
export function likelySwaps({ cylinders, gaskets }: Evidence, gauge: readonly GaugeEvidence[], knowledge: Knowledge): Swap[] {
  const chances = knowledge.noise.swapped.value
  const read = cylinders.flatMap(({ dry, leakage }, i) => {
    const [log, percent] = [gauge[i]!.before, leakage[0]?.percentAtReference ?? null]
    return dry.length === 1 && leakage.length === 1 && !leakage[0]!.wet && !leakage[0]!.rockersSlack && log !== null && percent !== null ? [{ i, log, percent }] : []
  })
  const next = (a: number, b: number): boolean => gaskets.some((list) => list.includes(a) && list.includes(b) && Math.abs(list.indexOf(a) - list.indexOf(b)) === 1)
  const neighbours = gaskets.reduce((sum, list) => sum + list.length - 1, 0)
  const pairs = read.flatMap((low) => read.flatMap((high) => {
    const apart = high.log - low.log
    return apart >= LEAST_LOWER && high.percent - low.percent >= LEAST_MORE && next(low.i, high.i) ? [{ apart, cylinders: [Math.min(low.i, high.i), Math.max(low.i, high.i)] as const }] : []
  })).sort((a, b) => b.apart - a.apart || a.cylinders[0] - b.cylinders[0]).slice(0, MOST_PAIRS)
  return pairs.flatMap(({ cylinders: pair }) => (['dry', 'leakage'] as const).map((of): Swap => ({ of, cylinders: pair, share: chances[of] / neighbours })))
}

/** The cylinder under which the notes of this one stand in engines of a class. */
export function notedUnder({ swap }: Pick<EngineClass, 'swap'>, of: Swap['of'], cylinder: number): number {
  if (swap === null || swap.of !== of || !swap.cylinders.includes(cylinder)) return cylinder
  return swap.cylinders[0] === cylinder ? swap.cylinders[1] : swap.cylinders[0]
}

/** Cylinders whose notes may be those of this one. */
export function mistakenFor(classes: readonly EngineClass[], cylinder: number): number[] {
  return [...new Set(classes.flatMap(({ swap }) => (swap?.cylinders.includes(cylinder) ? swap.cylinders.filter((other) => other !== cylinder) : [])))]
}
