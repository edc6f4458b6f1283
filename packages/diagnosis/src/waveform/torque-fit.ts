import { BINS_PER_HUMP, type Folded } from './fold.ts'
import { CYCLE_DEG, loadCurves, MOST_RELATIVE } from './gas-torque.ts'
import type { Fit } from './heights.ts'
import { solve } from './solve.ts'

/** Lags tried between load and current, in humps: the flywheel carries the engine over a stroke, and the current follows its speed. */
const LAGS = [0.08, 0.11, 0.15, 0.25, 0.35, 0.5, 0.7, 1, 1.5, 3]
const ROUNDS = 10
/** Firing top may stand so far from where the beat puts it, in humps. */
const MOST_SHIFT = 0.2
/** The best quarter is one on the mean: weighed as so many times all that was read. */
const HELD = 10
const DAMPING = 1e-3
/** No cylinder's compression moves by more than this in the last round. */
const SETTLED = 1e-3

/** Current of one cylinder by step of its compression and degree, and where the beat of an engine of such cylinders has its crest, degrees after firing top. */
interface Currents { readonly curves: readonly Float64Array[]; readonly crestDeg: number }
const known = new Map<string, Currents>()

/**
 * Fits a folded cycle by what the starter draws for the torque of the air in each cylinder: compression of each, where firing top stands, one scale
 * and one offset, by Gauss-Newton, for several lags of the flywheel. For small changes of speed the starter is a spring without mass, so the
 * current follows the load with a first-order lag, inertia times resistance over the square of the machine constant (electric machines, from memory).
 */
export function torqueFits(folded: Folded, cylinders: number, sign: 1 | -1): Fit[] {
  return LAGS.flatMap((lag) => fitTorque(folded, cylinders, currentsOf(lag, cylinders), sign) ?? [])
}

function currentsOf(lag: number, cylinders: number): Currents {
  const key = `${lag} ${cylinders}`
  let currents = known.get(key)
  if (currents === undefined) {
    const curves = loadCurves().map(({ load }) => delayed(load, (lag * CYCLE_DEG) / cylinders))
    known.set(key, (currents = { curves, crestDeg: crestOf(curves[soundOf(curves)]!, cylinders) }))
  }
  return currents
}

const soundOf = (curves: readonly Float64Array[]): number => Math.round((curves.length - 1) / MOST_RELATIVE)

/** What follows a cycle that repeats with a first-order lag of so many degrees, less its mean. */
function delayed(load: Float64Array, lagDeg: number): Float64Array {
  const keep = Math.exp(-1 / lagDeg)
  let state = 0, sum = 0
  // the cycle begins where it ends: what one cycle leaves behind is left behind by all before it
  for (const value of load) state = keep * state + (1 - keep) * value
  state /= 1 - keep ** load.length
  const out = load.map((value) => {
    state = keep * state + (1 - keep) * value
    sum += state
    return state
  })
  return out.map((value) => value - sum / load.length)
}

/** Degrees from firing top to the nearest crest of the beat of an engine whose cylinders are all like this. */
function crestOf(curve: Float64Array, cylinders: number): number {
  let cosine = 0, sine = 0
  curve.forEach((value, deg) => {
    const angle = (2 * Math.PI * cylinders * (deg + 0.5)) / CYCLE_DEG
    cosine += value * Math.cos(angle)
    sine += value * Math.sin(angle)
  })
  return (Math.atan2(sine, cosine) * CYCLE_DEG) / (2 * Math.PI * cylinders)
}

function fitTorque({ sums, counts, noise }: Folded, cylinders: number, { curves, crestDeg }: Currents, sign: 1 | -1): Fit | null {
  const spacing = CYCLE_DEG / cylinders, step = MOST_RELATIVE / (curves.length - 1)
  // the beat's crests are the troughs of a turned trace
  const usualTop = (sign === 1 ? 0 : 0.5) - crestDeg / spacing
  const bins = [...counts.keys()].filter((bin) => counts[bin]! > 0)
  const power = bins.reduce((sum, bin) => sum + counts[bin]!, 0) * meanSquare(curves[soundOf(curves)]!)
  const SCALE = cylinders, OFFSET = cylinders + 1, SHIFT = cylinders + 2, size = cylinders + 3
  const heights = new Float64Array(cylinders).fill(1), row = new Float64Array(size)
  let scale = 1, offset = 0, shift = 0, solved: ReturnType<typeof solve> = null
  /** Writes what each unknown changes at a bin, and gives the current there less the offset. */
  const currentAt = (bin: number): number => {
    let shape = 0, turn = 0
    for (let place = 0; place < cylinders; place++) {
      let deg = ((bin + 0.5) / BINS_PER_HUMP - place - usualTop - shift) * spacing - 0.5
      deg -= CYCLE_DEG * Math.floor(deg / CYCLE_DEG)
      const from = Math.floor(deg) % CYCLE_DEG, to = (from + 1) % CYCLE_DEG, part = deg - Math.floor(deg)
      const k = Math.min(curves.length - 2, Math.floor(heights[place]! / step)), up = heights[place]! / step - k
      const weak = curves[k]!, strong = curves[k + 1]!
      const low = weak[from]! + part * (weak[to]! - weak[from]!), high = strong[from]! + part * (strong[to]! - strong[from]!)
      shape += sign * (low + up * (high - low))
      turn += sign * ((1 - up) * (weak[to]! - weak[from]!) + up * (strong[to]! - strong[from]!))
      row[place] = (scale * sign * (high - low)) / step
    }
    row[SCALE] = shape
    row[OFFSET] = 1
    row[SHIFT] = -scale * turn * spacing
    return scale * shape
  }
  ;[scale, offset] = straightLine(bins.map((bin) => [currentAt(bin), sums[bin]! / counts[bin]!, counts[bin]!]))
  for (let round = 0; round < ROUNDS && scale > 0; round++) {
    const normal = Array.from({ length: size }, () => new Float64Array(size)), right = new Float64Array(size)
    for (const bin of bins) {
      const left = sums[bin]! / counts[bin]! - currentAt(bin) - offset
      for (let i = 0; i < size; i++) {
        for (let j = 0; j <= i; j++) normal[i]![j]! += counts[bin]! * row[i]! * row[j]!
        right[i]! += counts[bin]! * row[i]! * left
      }
    }
    holdBest(heights, HELD * power * scale ** 2, normal, right)
    for (let i = 0; i < size; i++) {
      normal[i]![i]! *= 1 + DAMPING
      for (let j = 0; j < i; j++) normal[j]![i] = normal[i]![j]!
    }
    solved = solve(normal, right)
    if (solved === null) return null
    const { x } = solved
    for (let place = 0; place < cylinders; place++) heights[place] = Math.min(MOST_RELATIVE, Math.max(0, heights[place]! + x[place]!))
    scale += x[SCALE]!
    offset += x[OFFSET]!
    shift = Math.min(MOST_SHIFT, Math.max(-MOST_SHIFT, shift + x[SHIFT]!))
    if (x.subarray(0, cylinders).every((change) => Math.abs(change) < SETTLED)) break
  }
  if (!(scale > 0) || solved === null) return null
  const { inverseDiagonal } = solved
  const residual = bins.reduce((sum, bin) => sum + counts[bin]! * (sums[bin]! / counts[bin]! - currentAt(bin) - offset) ** 2, 0)
  return { residual, heights: [...heights], scatters: Array.from(heights, (_, place) => noise * Math.sqrt(Math.max(0, inverseDiagonal[place]!))) }
}

/** Adds to the lower half of the normal equations that the best quarter is one on the mean: else a greater scale would do for lower heights. */
function holdBest(heights: Float64Array, weight: number, normal: readonly Float64Array[], right: Float64Array): void {
  const best = [...heights.keys()].sort((a, b) => heights[b]! - heights[a]!).slice(0, Math.ceil(heights.length / 4))
  const missing = best.length - best.reduce((sum, place) => sum + heights[place]!, 0)
  for (const i of best) {
    for (const j of best) if (j <= i) normal[i]![j]! += weight
    right[i]! += weight * missing
  }
}

/** Slope and height at zero of the straight line through points [x, y, weight]. */
function straightLine(points: readonly (readonly [x: number, y: number, weight: number])[]): [slope: number, offset: number] {
  const mean = (of: (x: number, y: number) => number): number => points.reduce((sum, [x, y, weight]) => sum + weight * of(x, y), 0) / points.reduce((sum, [, , weight]) => sum + weight, 0)
  const x = mean((at) => at), y = mean((_, value) => value)
  const slope = mean((at, value) => (at - x) * (value - y)) / mean((at) => (at - x) ** 2)
  return [slope, y - slope * x]
}

function meanSquare(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value * value, 0) / values.length
}
