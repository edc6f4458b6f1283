import { solve } from './solve.ts'
import { type EvenTrace, medianOf, swing, withoutTrend } from './resample.ts'
import type { Rhythm } from './rhythm.ts'

/** Heights of the humps of one engine cycle, by place (hump number modulo the number of cylinders). */
export interface Heights {
  readonly heights: readonly number[]
  /** standard deviation of each height */
  readonly scatters: readonly number[]
  /** number of the first hump inside the trace */
  readonly firstHump: number
  /** where the crests stand against whole hump numbers: 0, or a half where the clamp was the wrong way round */
  readonly shift: number
  /** whole engine cycles in the trace */
  readonly cycles: number
}

/** Widths at half height tried for a hump, in humps: narrow on a four, overlapping on an eight. */
const WIDTHS = [0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 1, 1.1, 1.2, 1.3]
/** Shapes tried: a raised cosine, and a bell with longer skirts. Both are one at the crest and a half at half the width. */
const SHAPES: readonly ((away: number, width: number) => number)[] = [
  (away, width) => (Math.abs(away) < width ? (1 + Math.cos((Math.PI * away) / width)) / 2 : 0),
  (away, width) => Math.exp(-Math.LN2 * (2 * away / width) ** 2),
]
/** No shape is the true one, so residuals count for less than noise alone would make them: part of the log-likelihood. */
const TEMPER = 0.5
/** Part of a cycle that may be missing from the last one. */
const CYCLE_SLACK = 0.3
/** Shifts of the crests tried against the phase of the beat, in humps. */
const SHIFTS = [-0.1, -0.05, 0, 0.05, 0.1]
const BINS_PER_HUMP = 16
/** A clamp the wrong way round turns humps into dips: the other way than the level suggests is believed only when it fits so much better. */
const TURNED_FITS = 0.7
/** A level below zero by so many swings suggests a turned clamp. */
const TURNED_SWINGS = 3

/**
 * Lays the engine cycles over each other and fits one hump shape with a height for each place and an offset, by least squares. Width,
 * shift and shape are those of the smallest residual, averaged with others about as good.
 */
export function humpHeights({ values, step }: EvenTrace, { humpsPerSecond, drift, phase }: Rhythm, cylinders: number): Heights {
  const flat = withoutTrend(values)
  const bins = BINS_PER_HUMP * cylinders
  const sums = new Float64Array(bins)
  const squares = new Float64Array(bins)
  const counts = new Float64Array(bins)
  const hump = (i: number): number => (humpsPerSecond + (drift / 2) * i * step) * i * step + phase
  for (let i = 0; i < flat.length; i++) {
    const cycle = hump(i) / cylinders
    const bin = Math.min(bins - 1, Math.floor((cycle - Math.floor(cycle)) * bins))
    sums[bin]! += flat[i]!
    squares[bin]! += flat[i]! ** 2
    counts[bin]!++
  }
  const humps = hump(flat.length - 1) - hump(0)
  const cycles = Math.floor(humps / cylinders + CYCLE_SLACK)
  const noise = scatterOf(sums, squares, counts)
  let best: Fit | null = null
  const turned = medianOf(values) < -TURNED_SWINGS * swing(flat)
  for (const sign of turned ? ([-1, 1] as const) : ([1, -1] as const)) {
    const fits: Fit[] = []
    for (const shape of SHAPES) {
      for (const width of WIDTHS) {
        for (const shift of SHIFTS) {
          // the beat's crests are the troughs of a turned trace
          const next = fitShape(sums, counts, cylinders, (away) => shape(away, width), sign === 1 ? shift : shift + 0.5, sign, noise)
          if (next?.upright) fits.push(next)
        }
      }
    }
    const fit = together(fits, noise, bins - cylinders - 1)
    if (fit && (!best || fit.residual < TURNED_FITS * best.residual)) best = fit
  }
  const firstHump = Math.ceil(hump(0) - 0.5)
  return { heights: best?.heights ?? [], scatters: best?.scatters ?? [], firstHump, shift: best?.sign === -1 ? 0.5 : 0, cycles }
}

interface Fit {
  readonly sign: 1 | -1
  /** the humps stand up on the whole, seen with this sign */
  readonly upright: boolean
  readonly heights: number[]
  readonly scatters: number[]
  readonly residual: number
}

/** The mean of all fits by how well they fit, heights on one scale; how the good ones differ widens the scatter. */
function together(fits: readonly Fit[], noise: number, freedom: number): Fit | null {
  const best = fits.reduce<Fit | null>((found, each) => (!found || each.residual < found.residual ? each : found), null)
  if (!best) return null
  const variance = Math.max(noise * noise, best.residual / freedom, 1e-12)
  const weights = fits.map(({ residual }) => Math.exp((-TEMPER * (residual - best.residual)) / (2 * variance)))
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  const scale = ({ heights }: Fit): number => heights.reduce((sum, height) => sum + height, 0) / heights.length
  const mean = (of: (fit: Fit) => number): number => fits.reduce((sum, fit, index) => sum + weights[index]! * of(fit), 0) / total
  const heights = best.heights.map((_, place) => mean((fit) => fit.heights[place]! / scale(fit)))
  return {
    ...best,
    heights,
    scatters: best.scatters.map((scatter, place) => Math.hypot(scatter / scale(best), Math.sqrt(mean((fit) => (fit.heights[place]! / scale(fit) - heights[place]!) ** 2)))),
  }
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

function fitShape(sums: Float64Array, counts: Float64Array, cylinders: number, shape: (away: number) => number, shift: number, sign: 1 | -1, noise: number): Fit | null {
  const size = cylinders + 1
  const normal = Array.from({ length: size }, () => new Float64Array(size))
  const right = new Float64Array(size)
  const row = new Float64Array(size)
  const predict: Float64Array[] = []
  for (let bin = 0; bin < sums.length; bin++) {
    if (counts[bin] === 0) continue
    const at = (bin + 0.5) / BINS_PER_HUMP
    for (let place = 0; place < cylinders; place++) {
      let away = at - place - shift
      away -= cylinders * Math.round(away / cylinders)
      row[place] = sign * shape(away)
    }
    row[cylinders] = 1
    predict.push(Float64Array.from(row))
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) normal[i]![j]! += counts[bin]! * row[i]! * row[j]!
      right[i]! += sums[bin]! * row[i]!
    }
  }
  const solution = solve(normal, right)
  if (!solution) return null
  let residual = 0
  let line = 0
  for (let bin = 0; bin < sums.length; bin++) {
    if (counts[bin] === 0) continue
    const expected = predict[line++]!
    let fitted = 0
    for (let i = 0; i < size; i++) fitted += solution.x[i]! * expected[i]!
    residual += counts[bin]! * (sums[bin]! / counts[bin]! - fitted) ** 2
  }
  const heights = Array.from(solution.x.subarray(0, cylinders))
  return {
    sign,
    upright: heights.reduce((sum, height) => sum + height, 0) > 0,
    residual,
    heights,
    scatters: Array.from({ length: cylinders }, (_, place) => noise * Math.sqrt(Math.max(0, solution.inverseDiagonal[place]!))),
  }
}
