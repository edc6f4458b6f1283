import type { Comparison, CylinderBelief, CylinderChange, Fault, Operation } from '@evenbore/contract'
import type { Knowledge } from '../knowledge/knowledge.ts'

/** A fault is followed up when it was at least this likely before. */
const SUSPECTED = 0.1
/** A fault goes by itself, or comes back into view, so often without work that aims at it; from memory. */
const GOES_ALONE = 0.1
/** Harm is told from this probability. */
const HARM_FROM = 0.15

/**
 * Probability that a fault that was there is gone: what the work done usually cures, weighed by what the new readings say against
 * what would be believed without them (odds with over odds without).
 */
export function curedFaults(
  before: readonly CylinderBelief[], after: readonly CylinderBelief[], without: readonly CylinderBelief[], work: readonly Operation[], { operations }: Knowledge,
): Comparison['cured'] {
  const curesBy = (fault: Fault): number => 1 - work.reduce((left, operation) => left * (1 - (operations[operation]?.value.cures[fault] ?? 0)), 1 - GOES_ALONE)
  return before.flatMap(({ cylinder, faults }) => faults.filter(({ probability }) => probability >= SUSPECTED).map(({ fault, probability }) => {
    const now = chance(after, cylinder, fault)
    const evidence = odds(now) / odds(chance(without, cylinder, fault))
    const stays = odds(1 - curesBy(fault)) * evidence
    return { cylinder, fault, before: probability, after: now, cured: 1 / (1 + stays) }
  }))
}

/**
 * Harm that was not there before: a cylinder believed sound then, and worse now. Of a cylinder that was not read again nothing is told. Where carbon
 * was suspected a lower reading is what its removal looks like: there harm is what is believed to be wrong now.
 *
 * @param read cylinders with any reading after the work
 */
export function newHarm(before: readonly CylinderBelief[], after: readonly CylinderBelief[], changes: readonly CylinderChange[], read: ReadonlySet<number>): Comparison['newHarm'] {
  return changes.filter(({ cylinder }) => read.has(cylinder)).flatMap(({ cylinder, worse }) => {
    const then = before.find((belief) => belief.cylinder === cylinder)?.sound ?? 0
    const unsound = 1 - (after.find((belief) => belief.cylinder === cylinder)?.sound ?? 1)
    const carbon = chance(before, cylinder, 'carbon-build-up')
    const probability = carbon < SUSPECTED ? then * (worse ?? unsound) : (then + carbon) * Math.max(0, unsound - chance(after, cylinder, 'carbon-build-up'))
    if (probability < HARM_FROM) return []
    const says = worse === null
      ? `Cylinder ${cylinder} was believed sound before and is not now.`
      : `Cylinder ${cylinder} was believed sound before and has probably lost compression since.`
    return [{ cylinder, probability, says }]
  })
}

function chance(beliefs: readonly CylinderBelief[], cylinder: number, fault: Fault): number {
  return beliefs.find((belief) => belief.cylinder === cylinder)?.faults.find((each) => each.fault === fault)?.probability ?? 0
}

/** Odds, kept away from the ends. */
const odds = (probability: number): number => Math.min(1 - 1e-9, Math.max(1e-9, probability)) / Math.min(1, Math.max(1e-9, 1 - probability))
