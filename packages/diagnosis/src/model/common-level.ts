import type { Cause } from '../knowledge/causes.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { CrankingSpeed, Evidence } from './evidence.ts'
import type { Grid } from './grid.ts'

/** A common level (logarithm of Pa) against what was expected of it, and what even wear has to do with it. */
export interface CommonLevel {
  readonly level: number
  readonly expected: Evidence['expected']
  readonly speedKnown: boolean
  /** Of the class of engine: 0 where it is not evenly worn. */
  readonly commonLoss: number
}

/** The level of a column of the grid. */
export function levelOfColumn(q: number, { level, classes, classOf }: Grid, { expected, speedKnown }: Pick<Evidence, 'expected' | 'speedKnown'>): CommonLevel {
  return { level: level[q]!, expected, speedKnown, commonLoss: classes[classOf[q]!]!.commonLoss }
}

/** Mean and variance of what a cause took from the level (negative natural logarithm): that it did shows in the level too, and so does what such an engine should read. */
export function shiftOf(cause: Cause, { level, expected, speedKnown }: CommonLevel, { causes }: Knowledge): { readonly mean: number; readonly variance: number } {
  const { shift, spread } = causes[cause].value
  const usual = cause === 'slow-cranking' && speedKnown ? 0 : shift
  const engine = expected.spread ** 2, own = spread ** 2
  return { mean: usual + (level - expected.logPa - usual) * own / (engine + own), variance: engine * own / (engine + own) }
}

/**
 * How likely the speeds in the current traces are under a cause, at a common level. Where the starter is as it should be the speed is a small part
 * of what is not known of the level; where it is slow, that is what the level lacks.
 */
export function weighSpeed(cause: Cause, at: CommonLevel, speeds: readonly CrankingSpeed[], knowledge: Knowledge): number {
  const { normalCrankingRpm, speedExponent } = knowledge.levels
  const { usual, trace, saysNothing } = knowledge.crankingSpeed
  const toLevel = speedExponent.value
  const shown = toLevel * speeds.reduce((sum, { rpm }) => sum + Math.log(rpm / normalCrankingRpm.value), 0) / speeds.length
  const due = cause === 'slow-cranking' ? shiftOf(cause, at, knowledge) : usualSpeed(cause, at, toLevel * usual.value, knowledge)
  const variance = due.variance + (toLevel * trace.value) ** 2
  return Math.exp(-0.5 * (shown - due.mean) ** 2 / variance) / Math.sqrt(variance) + saysNothing.value
}

/** What a usual starter does to the level, where the level is what it is. */
function usualSpeed(cause: Cause, { level, expected, commonLoss }: CommonLevel, spread: number, { causes, noise }: Knowledge): { readonly mean: number; readonly variance: number } {
  const worn = commonLoss > 0
  const shift = worn ? -commonLoss : causes[cause].value.shift
  const rest = expected.spread ** 2 + (worn ? noise.lossDispersion.value * commonLoss : causes[cause].value.spread) ** 2
  const own = Math.min(spread ** 2, 0.9 * rest)
  return { mean: (level - expected.logPa - shift) * own / rest, variance: own * (1 - own / rest) }
}
