import { BINS_PER_HUMP, type Folded } from './fold.ts'
import type { Fit } from './heights.ts'
import { solve } from './solve.ts'

/** Widths at half height tried for a hump, in humps: narrow on a four, overlapping on an eight. */
const WIDTHS = [0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 1, 1.1, 1.2, 1.3]
/** Shapes tried: a raised cosine, and a bell with longer skirts. Both are one at the crest and a half at half the width. */
const SHAPES: readonly ((away: number, width: number) => number)[] = [
  (away, width) => (Math.abs(away) < width ? (1 + Math.cos((Math.PI * away) / width)) / 2 : 0),
  (away, width) => Math.exp(-Math.LN2 * (2 * away / width) ** 2),
]
/** Shifts of the crests tried against the phase of the beat, in humps. */
const SHIFTS = [-0.1, -0.05, 0, 0.05, 0.1]

/** Fits of one hump shape, with a height for each place and an offset, to a folded cycle by least squares: those whose humps stand up on the whole. */
export function humpFits(folded: Folded, cylinders: number, sign: 1 | -1): Fit[] {
  return SHAPES.flatMap((shape) => WIDTHS.flatMap((width) => SHIFTS.flatMap((shift) => {
    // the beat's crests are the troughs of a turned trace
    const fit = fitShape(folded, cylinders, (away) => shape(away, width), sign === 1 ? shift : shift + 0.5, sign)
    return fit !== null && fit.heights.reduce((sum, height) => sum + height, 0) > 0 ? [fit] : []
  })))
}

function fitShape({ sums, counts, noise }: Folded, cylinders: number, shape: (away: number) => number, shift: number, sign: 1 | -1): Fit | null {
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
  return {
    residual,
    heights: Array.from(solution.x.subarray(0, cylinders)),
    scatters: Array.from({ length: cylinders }, (_, place) => noise * Math.sqrt(Math.max(0, solution.inverseDiagonal[place]!))),
  }
}
