import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Evidence } from './evidence.ts'
import type { EngineClass, GaugeEvidence } from './grid.ts'

/** Rounds of notes that can be wrong each by itself. */
export type Round = 'dry' | 'wet' | 'leakage'

/** Two cylinders (0-based) whose notes of one round may stand the wrong way round; with this part of the engines. */
export interface Swap {
  readonly of: Round
  readonly cylinders: readonly [number, number]
  readonly share: number
}

/** How far two dry readings, and the same two with oil, must be apart (difference of logarithms), and two leaks (points), to look like a wrong note. */
const LEAST_APART = 0.1
const LEAST_POINTS = 8
/** So many pairs are considered, those furthest apart first. */
const MOST_PAIRS = 2

/**
 * Notes that may stand under the wrong cylinder: of two cylinders next to each other on a gasket, the one that reads lower leaks clearly less,
 * or reads higher with oil. Which of the notes is wrong is not known, so each may be. Cylinders read more than once are known well enough.
 */
export function likelySwaps({ cylinders, gaskets }: Evidence, gauge: readonly GaugeEvidence[], knowledge: Knowledge): Swap[] {
  const chances = knowledge.noise.swapped.value
  const read = cylinders.flatMap(({ dry, wet, leakage }, i) => {
    const { before, rise } = gauge[i]!
    if (dry.length !== 1 || before === null) return []
    const plain = leakage.length === 1 && !leakage[0]!.wet && !leakage[0]!.rockersSlack
    return [{ i, before, oiled: wet.length === 1 && rise !== null ? before + rise.log : NaN, percent: plain ? (leakage[0]!.percentAtReference ?? NaN) : NaN }]
  })
  const next = (a: number, b: number): boolean => gaskets.some((list) => list.includes(a) && list.includes(b) && Math.abs(list.indexOf(a) - list.indexOf(b)) === 1)
  const neighbours = gaskets.reduce((sum, list) => sum + list.length - 1, 0)
  return read.flatMap((low) => read.flatMap((high) => {
    const apart = high.before - low.before
    if (!(apart >= LEAST_APART) || !next(low.i, high.i)) return []
    const against = (['wet', 'leakage'] as const).filter((of) => (of === 'wet' ? low.oiled - high.oiled >= LEAST_APART : high.percent - low.percent >= LEAST_POINTS))
    return against.length === 0 ? [] : [{ apart, of: ['dry', ...against] as const, cylinders: [Math.min(low.i, high.i), Math.max(low.i, high.i)] as const }]
  })).sort((a, b) => b.apart - a.apart || a.cylinders[0] - b.cylinders[0]).slice(0, MOST_PAIRS)
    .flatMap(({ of, cylinders: pair }) => of.map((round): Swap => ({ of: round, cylinders: pair, share: chances[round] / neighbours })))
}

/** The cylinder under which the notes of this one stand in engines of a class. */
export function notedUnder({ swap }: Pick<EngineClass, 'swap'>, of: Round, cylinder: number): number {
  if (swap === null || swap.of !== of || !swap.cylinders.includes(cylinder)) return cylinder
  return swap.cylinders[0] === cylinder ? swap.cylinders[1] : swap.cylinders[0]
}

/** Cylinders whose notes may be those of this one. */
export function mistakenFor(classes: readonly EngineClass[], cylinder: number): number[] {
  return [...new Set(classes.flatMap(({ swap }) => (swap?.cylinders.includes(cylinder) ? swap.cylinders.filter((other) => other !== cylinder) : [])))]
}
