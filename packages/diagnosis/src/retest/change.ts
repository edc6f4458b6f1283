import { normalBelow, normalDensity } from '../rules/normal.ts'

/** One cylinder's change: logarithm of after over before, with the standard deviation of its own noise. */
export interface CylinderLogChange {
  readonly log: number
  readonly sd: number
}

/** Probabilities that a cylinder became better, stayed, became worse; they sum to one. */
export interface ChangeProbabilities {
  readonly improved: number
  readonly unchanged: number
  readonly worse: number
}

/** How changes come about; all from memory. */
const CHANGES = {
  /** one cylinder of an engine nobody worked on: wear and chance; and of one that was worked on */
  withoutWork: { improved: 0.1, unchanged: 0.75, worse: 0.15 },
  withWork: { improved: 0.35, unchanged: 0.57, worse: 0.08 },
  /** the engine as a whole, beyond what another day explains */
  wholeWithoutWork: { improved: 0.03, worse: 0.06 },
  wholeWithWork: { improved: 0.15, worse: 0.04 },
  /** sound cylinders drift so much from one day to another, relative */
  drift: 0.01,
  /** smallest change worth the name, and the mean of what comes on top, in the logarithm */
  least: 0.03,
  more: 0.25,
} as const

/** Steps of the shift that all cylinders share, against its standard deviation; and where the grid ends. */
const STEPS_PER_SD = 8
const REACH = 4
const MOST_NODES = 4000

/**
 * Probabilities of change for all cylinders together. All may shift alike from one session to another: by the day's battery, oil
 * and air, which means nothing, or because the engine as a whole became better or worse. That shift is summed over a grid, so that
 * cylinders are judged against each other as well as against their past. A change of a cylinder's own is none (with a little
 * drift), or at least 3 percent with an exponential tail either way.
 *
 * @param commonSd standard deviation of the shift that means nothing, in the logarithm
 */
export function changeProbabilities(changes: readonly CylinderLogChange[], commonSd: number, worked: boolean): ChangeProbabilities[] {
  if (changes.length === 0) return []
  const own = worked ? CHANGES.withWork : CHANGES.withoutWork
  const whole = worked ? CHANGES.wholeWithWork : CHANGES.wholeWithoutWork
  const low = Math.min(-REACH * commonSd, ...changes.map(({ log, sd }) => log - REACH * sd))
  const high = Math.max(REACH * commonSd, ...changes.map(({ log, sd }) => log + REACH * sd))
  const nodes = Math.min(MOST_NODES, 1 + Math.ceil(((high - low) * STEPS_PER_SD) / commonSd))
  const logWeights: number[] = []
  const parts: ChangeProbabilities[][] = []
  for (let node = 0; node < nodes; node++) {
    const shift = low + ((high - low) * node) / (nodes - 1)
    const day = ((1 - whole.improved - whole.worse) * normalDensity(shift / commonSd)) / commonSd
    const up = whole.improved * tailDensity(shift - CHANGES.least, commonSd)
    const down = whole.worse * tailDensity(-shift - CHANGES.least, commonSd)
    const any = day + up + down
    let logWeight = Math.log(Math.max(any, 1e-300))
    parts.push(changes.map(({ log, sd }) => {
      const rest = log - shift
      const better = own.improved * tailDensity(rest - CHANGES.least, sd)
      const worse = own.worse * tailDensity(-rest - CHANGES.least, sd)
      const spread = Math.hypot(sd, CHANGES.drift)
      const same = (own.unchanged * normalDensity(rest / spread)) / spread
      const sum = better + same + worse
      logWeight += Math.log(Math.max(sum, 1e-300))
      if (!(sum > 0) || !(any > 0)) return { improved: log > 0 ? 1 : 0, unchanged: 0, worse: log > 0 ? 0 : 1 }
      // a cylinder that kept pace with a whole engine that changed, changed; one that went the other way is what it is on balance
      const balance = log > 0 ? 1 : 0
      return {
        improved: (day * better + up * (better + same + worse * balance) + down * better * balance) / (any * sum),
        unchanged: (day * same) / (any * sum),
        worse: (day * worse + down * (worse + same + better * (1 - balance)) + up * worse * (1 - balance)) / (any * sum),
      }
    }))
    logWeights.push(logWeight)
  }
  const most = Math.max(...logWeights)
  const weights = logWeights.map((each) => Math.exp(each - most))
  const total = weights.reduce((sum, each) => sum + each, 0)
  return changes.map((_, index) => {
    const mean = (key: keyof ChangeProbabilities): number => parts.reduce((sum, each, node) => sum + weights[node]! * each[index]![key], 0) / total
    return { improved: mean('improved'), unchanged: mean('unchanged'), worse: mean('worse') }
  })
}

/** Density at y of an exponential change of mean `more` seen through normal noise. */
function tailDensity(y: number, sd: number): number {
  const rate = 1 / CHANGES.more
  const exponent = (rate * rate * sd * sd) / 2 - rate * y
  return exponent > 600 ? 0 : rate * Math.exp(exponent) * normalBelow(y / sd - rate * sd)
}
