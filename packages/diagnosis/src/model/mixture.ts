import type { Knowledge } from '../knowledge/knowledge.ts'
import { expMinus } from './exponential.ts'

/** A function of the true logarithmic pressure x: the sum of w N(x; mean, variance). Flat triples w, mean, variance. */
export type Mixture = Float64Array

const MOST_PARTS = 6

/** One reading of the gauge: good, badly seated (low), or saying little; one that did not hold is low more often than not. */
function oneReading(logPa: number, variance: number, dropped: boolean, knowledge: Knowledge): Mixture {
  if (dropped) {
    const { tight, shift, spread } = knowledge.noise.dropped.value
    return Float64Array.of(tight, logPa, variance, 1 - tight, logPa + shift, variance + spread ** 2)
  }
  const low = knowledge.noise.seatedBadly.value
  const odd = knowledge.noise.anythingElse.value
  return Float64Array.of(
    1 - low.chance - odd.chance, logPa, variance,
    low.chance, logPa + low.shift, variance + low.spread ** 2,
    odd.chance, logPa + odd.shift, variance + odd.spread ** 2,
  )
}

/**
 * What repeated readings of one cylinder say together. Agreeing repeats narrow; contradicting ones leave several
 * peaks, the higher the better because a bad seat can only lose pressure. Order does not matter: readings are sorted.
 * Of many parts the heaviest six are kept.
 */
export function combineReadings(
  readings: readonly { readonly logPa: number; readonly variance: number; readonly dropped: boolean }[], knowledge: Knowledge,
): Mixture | null {
  const sorted = [...readings].sort((a, b) => a.logPa - b.logPa || a.variance - b.variance)
  let all: Mixture | null = null
  for (const { logPa, variance, dropped } of sorted) {
    const one = oneReading(logPa, variance, dropped, knowledge)
    all = all === null ? one : keepHeaviest(product(all, one))
  }
  return all
}

function product(a: Mixture, b: Mixture): Mixture {
  const parts = new Float64Array(a.length * (b.length / 3))
  let at = 0
  for (let i = 0; i < a.length; i += 3) {
    for (let j = 0; j < b.length; j += 3) {
      const va = a[i + 2]!
      const vb = b[j + 2]!
      const gap = a[i + 1]! - b[j + 1]!
      const density = Math.exp(-0.5 * gap * gap / (va + vb)) / Math.sqrt(2 * Math.PI * (va + vb))
      parts[at++] = a[i]! * b[j]! * density
      parts[at++] = (a[i + 1]! * vb + b[j + 1]! * va) / (va + vb)
      parts[at++] = va * vb / (va + vb)
    }
  }
  return parts
}

function keepHeaviest(mixture: Mixture): Mixture {
  const count = mixture.length / 3
  const order = Array.from({ length: count }, (_, i) => i).sort((i, j) => mixture[3 * j]! - mixture[3 * i]! || i - j)
  const kept = order.slice(0, MOST_PARTS)
  let sum = 0
  for (const i of kept) sum += mixture[3 * i]!
  const out = new Float64Array(3 * kept.length)
  kept.forEach((i, k) => {
    // scaled so that long lists of repeats neither overflow nor vanish; a factor common to all states changes nothing
    out[3 * k] = sum > 0 ? mixture[3 * i]! / sum : 1 / kept.length
    out[3 * k + 1] = mixture[3 * i + 1]!
    out[3 * k + 2] = mixture[3 * i + 2]!
  })
  return out
}

/** Density of a mixture seen through a further normal scatter of the given variance. */
export function densityThrough(mixture: Mixture, x: number, variance: number): number {
  let sum = 0
  for (let i = 0; i < mixture.length; i += 3) {
    const v = mixture[i + 2]! + variance
    const gap = x - mixture[i + 1]!
    sum += mixture[i]! * expMinus(0.5 * gap * gap / v) / Math.sqrt(v)
  }
  return sum
}

/**
 * Densities of a mixture seen through a further normal scatter, at `xs[from..to) - shift`, written to `out` from `at` on:
 * what does not change from point to point is worked out once.
 */
export function densitiesThrough(mixture: Mixture, variance: number, xs: Float64Array, shift: number, from: number, to: number, out: Float64Array, at: number): void {
  out.fill(0, at, at + to - from)
  for (let i = 0; i < mixture.length; i += 3) {
    const v = mixture[i + 2]! + variance
    const half = 0.5 / v, weight = mixture[i]! / Math.sqrt(v), centre = mixture[i + 1]! + shift
    for (let k = from; k < to; k++) {
      const gap = xs[k]! - centre
      out[at + k - from]! += weight * expMinus(gap * gap * half)
    }
  }
}
