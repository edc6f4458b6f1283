import type { Fault } from '../knowledge/faults.ts'
import type { Inference } from './posterior.ts'

const LEAST_PROBABILITY = 0.01

/** Pairs of faults of one cylinder with at least one percent, the likeliest first; the costlier fault of each comes first. */
export function pairsOf(inference: Inference, cylinder: number): { faults: [Fault, Fault]; probability: number }[] {
  const { states } = inference.space
  const sums = new Float64Array(states.pairs.length)
  const probabilities = inference.states[cylinder]!
  for (let s = 0; s < states.count; s++) {
    const pair = states.pair[s]!
    if (pair >= 0) sums[pair]! += probabilities[s]!
  }
  return states.pairs
    .map(([first, second], p) => ({ faults: [first, second] as [Fault, Fault], probability: sums[p]! }))
    .filter((p) => p.probability >= LEAST_PROBABILITY)
    .sort((a, b) => b.probability - a.probability)
}
