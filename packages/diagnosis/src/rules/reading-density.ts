import type { CombinedCylinder, CompressionEvidence } from '../admission/types.ts'
import { noise } from '../knowledge/noise.ts'
import { normalBelow } from './normal.ts'

/** Steps of the table of one cylinder; even, for Simpson's rule. Doubling it moves no probability by more than 1e-5 (a test). */
const STEPS = 48
/** Standard deviations beyond the marks that the table covers. */
const REACH = 6
/** Where a reading did not hold the table is this much wider and finer; so many standard deviations of what leaked away are covered. */
const FINER = 12
const LEAKED_REACH = 4

/**
 * What is assumed of a cylinder before it is read, as JCGM 106:2012 asks; the figures from memory, kept weak so that the readings
 * decide: on engines brought in for testing it lies near its sisters (each good to 3 percent, so two of them differ by 4), with
 * `unlike` the chance that wear or a fault puts it anywhere in `range` times the level.
 * Without it the spread of many noisy readings would be taken for the spread of the cylinders, and the verdicts would be too severe.
 */
const SISTERS = { scatter: 0.04, unlike: 0.4, range: 0.8 } as const

/** Where the needle of one cylinder truly stood, given its readings: a tabulated density and distribution function. */
export interface ReadingDensity {
  readonly cylinder: number
  readonly low: number
  readonly high: number
  readonly step: number
  /** density at each node */
  readonly density: Float64Array
  /** probability below each node */
  readonly below: Float64Array
  readonly mean: number
  readonly variance: number
}

/**
 * Density of the needle's true position from one cylinder's combined readings. Every reading is an interval (half a mark either
 * side) blurred by repeatability; repeats multiply; repeats that contradict each other are widened by their own scatter. One that
 * did not hold for ten seconds bounds from below: now and then right, mostly low by what the adaptor let go.
 * @param sisters the other cylinders' pressures (Pa), for what is assumed beforehand; none: nothing is
 */
export function readingDensity({ cylinder, evidence, pa, widening }: CombinedCylinder, sisters: readonly number[] = [], wanted = STEPS): ReadingDensity {
  const dropped = evidence.filter(({ heldTenSeconds, pa: read }) => heldTenSeconds === false && read > 0)
  const steps = dropped.length > 0 ? FINER * wanted : wanted
  // repeats that agree multiply; those that contradict each other are blurred until they overlap
  const sds = evidence.map(({ sdPa }) => sdPa * widening)
  const single = evidence.length === 1
  const narrow = (single ? 1 : 1.4) * (Math.min(...sds) / Math.sqrt(evidence.length))
  const halfMark = Math.max(...evidence.map(({ lowPa, highPa }) => (highPa - lowPa) / 2))
  const low = Math.min(pa, ...(single ? evidence.map(({ lowPa }) => lowPa) : [pa - halfMark])) - REACH * narrow
  const high = Math.max(pa, ...evidence.map(({ highPa }) => (single ? highPa : pa + halfMark)), censored(evidence), ...dropped.map(({ pa: read }) => read * LEAKED_MOST)) + REACH * narrow
  const step = (high - low) / steps
  const fine = new Float64Array(2 * steps + 1)
  let scale = -Infinity
  for (let i = 0; i <= 2 * steps; i++) {
    const x = low + (i * step) / 2
    let logLikelihood = 0
    for (let k = 0; k < evidence.length; k++) logLikelihood += logReading(evidence[k]!, x, sds[k]!)
    fine[i] = sisters.length > 0 ? logLikelihood + Math.log(likeSisters(x, sisters)) : logLikelihood
    scale = Math.max(scale, fine[i]!)
  }
  for (let i = 0; i < fine.length; i++) fine[i] = Math.exp(fine[i]! - scale)
  return tabulate(cylinder, low, high, step, steps, fine)
}

const ROOT_TWO_PI = Math.sqrt(2 * Math.PI)
const LEAKED = noise.dropped.value
const LEAKED_MOST = Math.exp(LEAKED.shift + LEAKED_REACH * LEAKED.spread)

/** Logarithm of the chance of one reading where a tight adaptor would have put the needle at x; of a leaking one it reads less. */
function logReading({ lowPa, highPa, pa, heldTenSeconds }: CompressionEvidence, x: number, sd: number): number {
  const tight = logInterval(lowPa, highPa, x, sd)
  if (heldTenSeconds !== false || !(pa > 0) || !(x > 0)) return tight
  const away = (Math.log(x / pa) - LEAKED.shift) / LEAKED.spread
  const low = ((highPa - lowPa) / pa) * Math.exp(-0.5 * away * away) / (LEAKED.spread * ROOT_TWO_PI)
  return Math.log(LEAKED.tight * Math.exp(tight) + (1 - LEAKED.tight) * low + 1e-300)
}

/** Sisters that are sound resemble each other: density of one cylinder's pressure given the others', relative to a flat one. */
function likeSisters(x: number, sisters: readonly number[]): number {
  let density = 0
  for (const sister of sisters) {
    const sd = SISTERS.scatter * Math.max(sister, 1)
    const away = (x - sister) / sd
    if (Math.abs(away) < 8) density += Math.exp(-0.5 * away * away) / sd
  }
  const level = Math.max(...sisters, 1)
  return ((1 - SISTERS.unlike) * density) / (sisters.length * ROOT_TWO_PI) + SISTERS.unlike / (SISTERS.range * level)
}

/** A gauge at the end of its span says only "at least": the table must reach as far as that is believed. */
function censored(evidence: readonly CompressionEvidence[]): number {
  return Math.max(...evidence.map(({ pa, lowPa, highPa }) => (highPa - pa > 2 * (pa - lowPa) ? highPa : pa)))
}

/** Logarithm of the chance that a needle at x is read within an interval; far out where the chance vanishes, its leading term. */
function logInterval(lowPa: number, highPa: number, x: number, sd: number): number {
  const chance = normalBelow((highPa - x) / sd) - normalBelow((lowPa - x) / sd)
  if (chance > 1e-280) return Math.log(chance)
  const away = Math.max(lowPa - x, x - highPa, 0) / sd
  return -0.5 * away * away - 600
}

function tabulate(cylinder: number, low: number, high: number, step: number, steps: number, fine: Float64Array): ReadingDensity {
  const density = new Float64Array(steps + 1)
  const below = new Float64Array(steps + 1)
  let total = 0
  let first = 0
  let second = 0
  const middle = (low + high) / 2
  for (let i = 0; i <= steps; i++) {
    density[i] = fine[2 * i]!
    if (i === 0) continue
    // Simpson's rule on each step, with its midpoint
    total += (step / 6) * (fine[2 * i - 2]! + 4 * fine[2 * i - 1]! + fine[2 * i]!)
    below[i] = total
  }
  for (let i = 0; i <= steps; i++) {
    density[i] = density[i]! / total
    below[i] = below[i]! / total
    const share = simpson(i, steps) * step * density[i]!
    const away = low + i * step - middle
    first += share * away
    second += share * away * away
  }
  return { cylinder, low, high, step, density, below, mean: middle + first, variance: Math.max(0, second - first * first) }
}

/** Weight of a node in Simpson's rule over the whole table, in steps. */
export function simpson(index: number, steps: number): number {
  if (index === 0 || index === steps) return 1 / 3
  return index % 2 === 1 ? 4 / 3 : 2 / 3
}

/** Probability that the needle stood at or below x (cubic through the table's values and densities). */
export function probabilityBelow(table: ReadingDensity, x: number): number {
  if (x <= table.low) return 0
  if (x >= table.high) return 1
  const place = (x - table.low) / table.step
  const index = Math.min(Math.floor(place), table.density.length - 2)
  const t = place - index
  const from = table.below[index]!
  const to = table.below[index + 1]!
  const rise = table.density[index]! * table.step
  const fall = table.density[index + 1]! * table.step
  const t2 = t * t
  const t3 = t2 * t
  return from * (2 * t3 - 3 * t2 + 1) + rise * (t3 - 2 * t2 + t) + to * (3 * t2 - 2 * t3) + fall * (t3 - t2)
}
