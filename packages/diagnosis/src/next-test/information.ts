import { OWN_COUNT, type StateSpace } from '../model/states.ts'

/** Label of a state as far as a decision goes: own fault, or a bridge, which counts as an explanation of its own. */
export function labelOf(states: StateSpace, s: number): number {
  return states.bridgeLevel[s]! > 0 && states.own[s] === 0 ? OWN_COUNT : states.own[s]!
}

export const LABEL_COUNT = OWN_COUNT + 1

/** Chance of each outcome for a state: writes `outcomes` numbers that sum to one into `out`. */
export type OutcomeTable = (s: number, out: Float64Array) => void

/** What a test is expected to teach. */
export interface Yield {
  readonly bits: number
}

/**
 * Expected information (bits) of a test with `count` outcomes about the label of one cylinder: H(outcome) - H(outcome | label),
 * summed exactly over all states and outcomes.
 */
export function expectedBits(probabilities: Float64Array, states: StateSpace, table: OutcomeTable, count: number): number {
  const joint = new Float64Array(LABEL_COUNT * count)
  const outcome = new Float64Array(count)
  const out = new Float64Array(count)
  const labels = new Float64Array(LABEL_COUNT)
  for (let s = 0; s < states.count; s++) {
    const p = probabilities[s]!
    if (p < 1e-6) continue
    table(s, out)
    const label = labelOf(states, s)
    labels[label]! += p
    for (let o = 0; o < count; o++) {
      joint[label * count + o]! += p * out[o]!
      outcome[o]! += p * out[o]!
    }
  }
  let bits = 0
  for (let o = 0; o < count; o++) bits -= plogp(outcome[o]!)
  for (let l = 0; l < LABEL_COUNT; l++) {
    if (labels[l]! === 0) continue
    for (let o = 0; o < count; o++) {
      const p = joint[l * count + o]!
      if (p > 0) bits += p * Math.log2(p / labels[l]!)
    }
  }
  return Math.max(0, bits)
}

/** Information of a yes-or-no sign about a yes-or-no question: chance of the thing, of the sign with and without it. */
export function bitsOfSign(thing: number, withThing: number, without: number): number {
  const yes = thing * withThing + (1 - thing) * without
  const entropy = (p: number): number => -plogp(p) - plogp(1 - p)
  return Math.max(0, entropy(yes) - thing * entropy(withThing) - (1 - thing) * entropy(without))
}

function plogp(p: number): number {
  return p > 0 ? p * Math.log2(p) : 0
}
