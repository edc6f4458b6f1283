import type { Knowledge } from '../knowledge/knowledge.ts'
import { expMinus } from './exponential.ts'

/** A function of the true logarithmic pressure x: the sum of w N(x; mean, variance). Flat triples w, mean, variance. */
export type Mixture = Float64Array

const MOST_PARTS = 6

/** Normal parts (mean and sd of a logarithm) that together are level, within a third, from the reading down to a tenth of it. */
const BELOW_READING = [[-0.1, 0.1], [-0.45, 0.22], [-1.3, 0.55]] as const

/**
 * A reading of which it is not known whether the gauge was released before it. If not, every pressure below is as likely as a sound
 * sister's is to be read rightly: the chance itself was judged from the order of all, so the height of a level part is that density.
 */
function perhapsUnreleased(one: Mixture, chance: number, logPa: number, variance: number, knowledge: Knowledge): Mixture {
  const out = new Float64Array(one.length + 3 * BELOW_READING.length)
  for (let i = 0; i < one.length; i += 3) out.set([(1 - chance) * one[i]!, one[i + 1]!, one[i + 2]!], i)
  const usual = Math.sqrt(variance + 2 * knowledge.noise.sisters.value ** 2)
  BELOW_READING.forEach(([shift, sd], i) => out.set([chance * sd / usual, logPa + shift, sd * sd], one.length + 3 * i))
  return out
}

interface OneReading { readonly logPa: number; readonly variance: number; readonly dropped: boolean; readonly held?: boolean }

/** One reading of the gauge: good, badly seated (low), or saying little; one that did not hold is low more often than not. `wrong`: part of the usual chances of that. */
function oneReading({ logPa, variance, dropped, held }: OneReading, wrong: number, knowledge: Knowledge): Mixture {
  if (dropped) {
    const { tight, shift, spread } = knowledge.noise.dropped.value
    return Float64Array.of(tight, logPa, variance, 1 - tight, logPa + shift, variance + spread ** 2)
  }
  const low = knowledge.noise.seatedBadly.value
  const odd = knowledge.noise.anythingElse.value
  const lowChance = wrong * (held === true ? low.heldByHand : low.chance), oddChance = wrong * odd.chance
  return Float64Array.of(
    1 - lowChance - oddChance, logPa, variance,
    lowChance, logPa + low.shift, variance + low.spread ** 2,
    oddChance, logPa + odd.shift, variance + odd.spread ** 2,
  )
}

/**
 * What repeated readings of one cylinder say together. Agreeing repeats narrow; contradicting ones leave several
 * peaks, the higher the better because a bad seat can only lose pressure. Order does not matter: readings are sorted.
 * Of many parts the heaviest six are kept.
 *
 * @param wrong part of the usual chances that a single reading is wrong: less than one where another, with oil, rose from it as it should
 */
export function combineReadings(
  readings: readonly (OneReading & { readonly unreleased: number })[], wrong: number, knowledge: Knowledge,
): Mixture | null {
  const sorted = [...readings].sort((a, b) => a.logPa - b.logPa || a.variance - b.variance || a.unreleased - b.unreleased)
  let all: Mixture | null = null
  for (const reading of sorted) {
    const { logPa, variance, unreleased } = reading
    const plain = oneReading(reading, readings.length === 1 ? wrong : 1, knowledge)
    const one = unreleased > 0 ? perhapsUnreleased(plain, unreleased, logPa, variance, knowledge) : plain
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

/** Points at equal distances. */
export interface Ladder {
  readonly first: number
  readonly step: number
  readonly count: number
}

/** Densities below this are nothing, as `expMinus` has it: half of a table's numbers otherwise, and the slowest to reckon with. */
const NOTHING = 1e-28

/**
 * Densities of a mixture seen through a further normal scatter, at the points of a ladder less `shift`, written to `out` from `at` on.
 * From one point to the next a normal density changes by a factor that itself changes by a constant one, so going outward from the point
 * next to the peak takes two products a point; a hundred points out that is still good to 1e-11.
 */
export function densitiesThrough(mixture: Mixture, variance: number, { first, step, count }: Ladder, shift: number, out: Float64Array, at: number): void {
  out.fill(0, at, at + count)
  for (let i = 0; i < mixture.length; i += 3) {
    const v = mixture[i + 2]! + variance
    const half = 0.5 / v
    const start = first - shift - mixture[i + 1]!
    const peak = Math.min(count - 1, Math.max(0, Math.round(-start / step)))
    const gap = start + peak * step
    const top = mixture[i]! * expMinus(gap * gap * half) / Math.sqrt(v)
    if (top === 0) continue
    out[at + peak]! += top
    // towards the peak (less than half a step away, or there are no points on that side) the first factor grows by what it falls elsewhere
    const slope = expMinus(step * step * half), bend = slope * slope
    const lean = expMinus(2 * Math.abs(gap) * step * half), up = gap < 0 ? slope / lean : slope * lean, down = gap < 0 ? slope * lean : slope / lean
    for (let k = peak + 1, density = top, factor = up; k < count && density > NOTHING; k++) {
      density *= factor
      out[at + k]! += density
      factor *= bend
    }
    for (let k = peak - 1, density = top, factor = down; k >= 0 && density > NOTHING; k--) {
      density *= factor
      out[at + k]! += density
      factor *= bend
    }
  }
}
