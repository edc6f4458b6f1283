import type { AdmittedGauge } from '../admission/types.ts'
import { type Nodes, gaussLegendre } from './quadrature.ts'
import { type ReadingDensity, probabilityBelow, simpson } from './reading-density.ts'

/**
 * How the gauge errs as a whole: the class bounds a straight-line error whose ends (at zero and at full span) are independent and
 * rectangular within the bound. `zeroPa` shifts every reading, `gain` stretches all alike.
 */
export interface GaugeError {
  readonly boundPa: number
  readonly spanPa: number
}

/** The common error of a session's gauge; without a stated span it is scaled on the highest reading. */
export function gaugeError(gauge: AdmittedGauge, highestPa: number): GaugeError {
  return { boundPa: gauge.boundPa, spanPa: gauge.spanPa ?? 2 * Math.max(highestPa, 1) }
}

const FEW = gaussLegendre(4)
const SIX = gaussLegendre(6)
const MANY = gaussLegendre(24)
const NONE: Nodes = { at: [0], weight: [1] }
/** Half the difference of two independent rectangular values on [-1, 1]: a triangle, taken in two halves because of its corner. */
const TRIANGLE = triangle(gaussLegendre(3))

function triangle(half: Nodes): Nodes {
  const at = half.at.flatMap((x) => [-(1 + x) / 2, (1 + x) / 2])
  const weight = half.weight.flatMap((w, index) => [w, w].map((each) => each * (1 - (1 + half.at[index]!) / 2)))
  const total = weight.reduce((sum, each) => sum + each, 0)
  return { at, weight: weight.map((each) => each / total) }
}

/** A limit on the spread: lowest at least `part` of the highest, and at most `differencePa` below it. */
export interface SpreadLimit {
  readonly part?: number
  readonly differencePa?: number
}

/**
 * Probability that the true spread is within the limit, exactly up to quadrature: over the shared error of the gauge, and over
 * which cylinder is highest and how high, every other one must lie between the limit and that height.
 * Gain cancels in a ratio, zero cancels in a difference.
 */
export function probabilitySpreadInside(tables: readonly ReadingDensity[], limit: SpreadLimit, error: GaugeError): number {
  const zeros = error.boundPa === 0 || limit.part === undefined ? NONE : FEW
  // gain: two independent ends; where zero matters too, its end is given
  const ends = error.boundPa === 0 || limit.differencePa === undefined ? NONE : limit.part === undefined ? TRIANGLE : SIX
  let probability = 0
  for (let z = 0; z < zeros.at.length; z++) {
    const zeroPa = zeros.at[z]! * error.boundPa
    for (let e = 0; e < ends.at.length; e++) {
      const tiltPa = limit.part === undefined ? 2 * ends.at[e]! * error.boundPa : ends.at[e]! * error.boundPa - zeroPa
      const differencePa = limit.differencePa === undefined ? Infinity : limit.differencePa * (1 + tiltPa / error.spanPa)
      probability += zeros.weight[z]! * ends.weight[e]! * insideGiven(tables, limit.part ?? 0, (1 - (limit.part ?? 0)) * zeroPa, differencePa)
    }
  }
  return clamp(probability)
}

/** The same for one gauge error: lowest >= max(part x highest + shift, highest - difference). */
function insideGiven(tables: readonly ReadingDensity[], part: number, shift: number, difference: number): number {
  let highestLow = -Infinity
  for (const table of tables) highestLow = Math.max(highestLow, table.low)
  let probability = 0
  for (const top of tables) {
    if (top.high <= highestLow) continue
    const steps = top.density.length - 1
    for (let i = 0; i <= steps; i++) {
      const highest = top.low + i * top.step
      if (highest <= highestLow || top.density[i] === 0) continue
      const floor = part === 0 ? highest - difference : Math.max(part * highest + shift, highest - difference)
      if (floor > highest) continue
      let product = simpson(i, steps) * top.step * top.density[i]!
      for (const other of tables) {
        if (other === top) continue
        if (other.high <= highest && other.low >= floor) continue
        product *= probabilityBelow(other, highest) - (floor <= other.low ? 0 : probabilityBelow(other, floor))
        if (product < 1e-12) break
      }
      probability += product
    }
  }
  return probability
}

/** Probability that every cylinder truly stands at or above a pressure (a maker's minimum). */
export function probabilityAllAbove(tables: readonly ReadingDensity[], limitPa: number, error: GaugeError): number {
  return overGauge(error, limitPa, (indicated) => tables.reduce((product, table) => product * (1 - probabilityBelow(table, indicated)), 1))
}

/** Probability that every cylinder truly stands at or below a pressure (a maker's maximum). */
export function probabilityAllBelow(tables: readonly ReadingDensity[], limitPa: number, error: GaugeError): number {
  return overGauge(error, limitPa, (indicated) => tables.reduce((product, table) => product * probabilityBelow(table, indicated), 1))
}

/** Averages over the gauge's error at one pressure: what the needle shows there is off by a weighted sum of the two ends. */
function overGauge(error: GaugeError, truePa: number, inside: (indicatedPa: number) => number): number {
  if (error.boundPa === 0) return clamp(inside(truePa))
  const share = Math.min(1, truePa / error.spanPa)
  let probability = 0
  for (let a = 0; a < MANY.at.length; a++) {
    for (let b = 0; b < SIX.at.length; b++) {
      // the wider of the two shares gets the finer rule
      const wide = Math.max(share, 1 - share)
      const off = error.boundPa * (MANY.at[a]! * wide + SIX.at[b]! * (1 - wide))
      probability += MANY.weight[a]! * SIX.weight[b]! * inside(truePa + off)
    }
  }
  return clamp(probability)
}

/**
 * Probability that no cylinder truly lies below a part of the mean of all (normal approximation to each cylinder against the mean,
 * cylinders multiplied; one cylinder decides in practice).
 */
export function probabilityAboveMeanPart(tables: readonly ReadingDensity[], part: number, error: GaugeError, normalBelow: (z: number) => number): number {
  const count = tables.length
  const mean = tables.reduce((sum, table) => sum + table.mean, 0) / count
  const variance = tables.reduce((sum, table) => sum + table.variance, 0)
  let probability = 0
  for (let z = 0; z < FEW.at.length; z++) {
    const shift = (1 - part) * FEW.at[z]! * error.boundPa
    let product = 1
    for (const table of tables) {
      const own = 1 - part / count
      const sd = Math.sqrt(own * own * table.variance + (part / count) ** 2 * (variance - table.variance))
      product *= normalBelow((table.mean - part * mean - shift) / sd)
    }
    probability += FEW.weight[z]! * product
  }
  return clamp(probability)
}

const clamp = (value: number): number => Math.min(1, Math.max(0, value))
