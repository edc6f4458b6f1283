import { type EvenTrace, swing, withoutTrend } from './resample.ts'
import type { Rhythm } from './rhythm.ts'

/** One engine cycle, all that were read laid over each other: sums and counts by bin, and the scatter of one point about its bin. */
export interface Folded {
  readonly sums: Float64Array
  readonly counts: Float64Array
  readonly noise: number
}

export const BINS_PER_HUMP = 16

/**
 * Lays the engine cycles of a trace over each other. Where the current is high the starter turns more slowly, so that less of the cycle passes:
 * `lead` is by how much, as part of the mean speed for the usual swing of the current (0: it turns evenly).
 */
export function foldCycles({ values, step }: EvenTrace, { humpsPerSecond, drift, phase }: Rhythm, cylinders: number, lead = 0): Folded {
  const flat = withoutTrend(values)
  const bins = BINS_PER_HUMP * cylinders
  const sums = new Float64Array(bins), squares = new Float64Array(bins), counts = new Float64Array(bins)
  const slower = (lead * humpsPerSecond * step) / (swing(flat) || 1)
  let behind = 0
  for (let i = 0; i < flat.length; i++) {
    behind += slower * flat[i]!
    const cycle = ((humpsPerSecond + (drift / 2) * i * step) * i * step + phase - behind) / cylinders
    const bin = Math.min(bins - 1, Math.floor((cycle - Math.floor(cycle)) * bins))
    sums[bin]! += flat[i]!
    squares[bin]! += flat[i]! ** 2
    counts[bin]!++
  }
  return { sums, counts, noise: scatterOf(sums, squares, counts) }
}

/** Standard deviation of one point about its bin: noise and what changes from cycle to cycle. */
function scatterOf(sums: Float64Array, squares: Float64Array, counts: Float64Array): number {
  let within = 0
  let freedom = 0
  for (let bin = 0; bin < sums.length; bin++) {
    if (counts[bin]! < 2) continue
    within += squares[bin]! - sums[bin]! ** 2 / counts[bin]!
    freedom += counts[bin]! - 1
  }
  return freedom > 0 ? Math.sqrt(Math.max(0, within / freedom)) : 0
}
