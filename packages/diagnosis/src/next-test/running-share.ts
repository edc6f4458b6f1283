import type { Case, SuggestedTest } from '@evenbore/contract'
import { CAUSES } from '../knowledge/causes.ts'
import { levelOfColumn } from '../model/common-level.ts'
import { excessAt, excessOf } from '../model/running-share.ts'
import type { Inference } from '../model/posterior.ts'
import { causeColumns } from '../model/sums.ts'
import { bandsOf } from './outcomes.ts'

/** Edges of the excess of running over cranking (natural logarithm) between outcomes. */
const EXCESS_EDGES = [-0.2, -0.1, 0, 0.1, 0.2, 0.3, 0.45]
/** Part of the readings that say nothing of the cause: spread over all outcomes alike. */
const ASTRAY = 0.05

/** Columns of less than this part of the heaviest do not count here. */
const LEAST_COLUMN = 1e-2

/** A test, and the chance of each of its outcomes under each cause, in the order of `CAUSES`. */
export interface CauseOutcomes {
  readonly test: SuggestedTest
  readonly chances: readonly (readonly number[])[]
}

/**
 * Running compression of the one cylinder that read highest, at idle, or in a snap of the throttle once an idle was read: chance of each outcome
 * under each cause, summed over the common levels. Null where none was read dry, where both were done, and for a diesel.
 */
export function runningShareOutcomes(given: Case, { gauge, space: { knowledge, grid }, sums, flags, evidence }: Inference): CauseOutcomes | null {
  const shares = evidence.engine.filter((e) => e.kind === 'running-share')
  const ran = given.readings.filter((r) => r.test === 'compression' && (r.running === true || r.snap === true))
  const snap = ran.length > 0
  if (given.engine.fuel !== 'petrol' || ran.some((r) => r.test === 'compression' && r.snap === true)) return null
  const highest = gauge.reduce<number | null>((best, { before }, i) => (before !== null && (best === null || before > gauge[best]!.before!) ? i : best), null)
  if (highest === null) return null
  const spread = (snap ? knowledge.running.snap : knowledge.running.idle).value.spread
  const out = new Float64Array(EXCESS_EDGES.length + 1)
  const chances = causeColumns(sums, flags).map((columns, e) => {
    const sum = new Array<number>(out.length).fill(0)
    const least = LEAST_COLUMN * columns.reduce((most, weight) => Math.max(most, weight), 0)
    let total = 0
    columns.forEach((weight, q) => {
      if (!(weight > least)) return
      const at = levelOfColumn(q, grid, evidence)
      let { mean, variance } = excessOf(CAUSES[e]!, at, false, knowledge)
      if (snap && shares.length > 0 && variance > 0) {
        // the idle has said by how much
        const seen = excessAt(at.level, shares, knowledge), part = variance / (variance + seen.variance)
        mean += part * (seen.mean - mean)
        variance *= 1 - part
      }
      bandsOf(EXCESS_EDGES, mean, Math.sqrt(variance + spread ** 2), out)
      out.forEach((p, o) => { sum[o]! += weight * p })
      total += weight
    })
    return sum.map((p) => (1 - ASTRAY) * (total > 0 ? p / total : 1 / out.length) + ASTRAY / out.length)
  })
  return { test: { test: 'compression', running: true, ...(snap ? { snap } : {}), cylinders: [highest + 1] }, chances }
}
