import { type StateSpace } from '../model/states.ts'
import { BRIDGED, LABELS, leastCost, type Stakes } from './stakes.ts'

/** What is believed of one cylinder: the states that have any probability, apart for engines not worn (0) and evenly worn (1). */
export interface Belief {
  readonly state: Int32Array
  readonly worn: Uint8Array
  readonly label: Uint8Array
  readonly probability: Float64Array
}

/** States with less probability than this teach nothing that counts. */
const LEAST = 1e-5

/** Lists what is believed of a cylinder. */
export function beliefOf(states: StateSpace, probabilities: Float64Array, wornPart: Float64Array): Belief {
  const state: number[] = [], worn: number[] = [], probability: number[] = []
  for (let s = 0; s < states.count; s++) {
    const parts = [probabilities[s]! - wornPart[s]!, wornPart[s]!]
    parts.forEach((p, w) => {
      if (p < LEAST) return
      state.push(s); worn.push(w); probability.push(p)
    })
  }
  return {
    state: Int32Array.from(state), worn: Uint8Array.from(worn), probability: Float64Array.from(probability),
    label: Uint8Array.from(state, (s) => (states.bridgeLevel[s]! > 0 && states.own[s] === 0 ? BRIDGED : states.own[s]!)),
  }
}

/** Chance of each outcome of a test for a state, in an engine not worn (0) or evenly worn (1): writes numbers that sum to one into `out`. */
export type OutcomeTable = (s: number, worn: number, out: Float64Array) => void

/** A test's outcomes on one cylinder. */
export interface Outcomes {
  readonly count: number
  readonly table: OutcomeTable
}

/** What a test is expected to teach: bits, minutes of repair that it is expected to save, and the chance that it settles the engine. */
export interface Worth {
  readonly bits: number
  readonly saved: number
  readonly settles: number
}

/** Probability at which an explanation counts for half as settled, and how fast it does about it (logarithm of the odds). */
export interface Settled {
  readonly at: number
  readonly blur: number
}

/** For how much an explanation of this probability counts as settled, 0 to 1: no cliff, or the smallest test would be worth most just below it. */
export function settledness(probability: number, { at, blur }: Settled): number {
  const odds = (p: number): number => Math.log(Math.max(1e-9, p) / Math.max(1e-9, 1 - p))
  return 1 / (1 + Math.exp((odds(at) - odds(probability)) / blur))
}

/** What a test of one cylinder is measured against. */
export interface Question {
  readonly belief: Belief
  readonly stakes: Stakes
  /** Least probability that each other cylinder is sound and no gasket leaks, 0 while one of them is unread: without it "nothing wrong" cannot be settled here. */
  readonly othersSound: number
  /** Whether its dry pressure is still to be read. */
  readonly unread: boolean
  /** Of engines not evenly worn, the part with another cause common to all cylinders. */
  readonly otherCause: number
  /** Probability of the likeliest explanation that lies elsewhere: another cylinder's fault, or a cause common to all. */
  readonly elsewhere: number
  /** From where on an explanation counts as settled; null when one is already. */
  readonly settled: Settled | null
}

/**
 * Expected worth of a test about one cylinder, summed exactly over states and outcomes. Bits: what the outcome says of its label and of even
 * wear of the engine together, H(outcome) - H(outcome | label, wear). Saved: expected cost of the best decision now less that after the outcome.
 */
export function worthOf(question: Question, { count, table }: Outcomes): Worth {
  const { belief, otherCause } = question
  const joint = new Float64Array(WEARS * LABELS * count)
  const out = new Float64Array(count)
  for (let i = 0; i < belief.state.length; i++) {
    table(belief.state[i]!, belief.worn[i]!, out)
    const at = belief.worn[i]! * LABELS + belief.label[i]!
    const p = belief.probability[i]!
    for (let o = 0; o < count; o++) joint[o * WEARS * LABELS + at]! += p * out[o]!
  }
  // causes other than wear change no outcome here: their part goes with the rest
  for (let o = 0; o < count; o++) {
    for (let label = 0; label < LABELS; label++) {
      const at = o * WEARS * LABELS + label
      joint[at + 2 * LABELS] = joint[at]! * otherCause
      joint[at]! *= 1 - otherCause
    }
  }
  return worthOfJoint(joint, question)
}

/** Nothing common to all cylinders, even wear, another cause. */
export const WEARS = 3

/** The same from the joint probabilities of outcome, wear and label: [(outcome * WEARS + wear) * LABELS + label]. */
export function worthOfJoint(joint: Float64Array, question: Question): Worth {
  const { stakes, settled } = question
  const wide = WEARS * LABELS
  const count = joint.length / wide
  const before = new Float64Array(wide), labels = new Float64Array(LABELS)
  let bits = 0, after = 0, settles = 0
  for (let o = 0; o < count; o++) {
    let outcome = 0
    for (let k = 0; k < wide; k++) {
      const p = joint[o * wide + k]!
      before[k]! += p
      outcome += p
      bits += plogp(p)
    }
    if (outcome <= 0) continue
    bits -= plogp(outcome)
    labelsOf(joint, o * wide, labels)
    after += leastCost(stakes, labels, 0)
    if (settled !== null) settles += outcome * settledness(leader(joint, o * wide, labels, outcome, question), settled)
  }
  for (let k = 0; k < wide; k++) bits -= plogp(before[k]!)
  labelsOf(before, 0, labels)
  if (settled !== null) {
    const all = labels.reduce((sum, p) => sum + p, 0)
    settles -= all * settledness(leader(before, 0, labels, all, question), settled)
  }
  return { bits: Math.max(0, bits), saved: Math.max(0, leastCost(stakes, labels, 0) - after), settles: Math.max(0, settles) }
}

/** Sums the kinds of wear: joint probabilities of wear and label, from `at` on, into those of the labels. */
function labelsOf(joint: Float64Array, at: number, labels: Float64Array): void {
  for (let label = 0; label < LABELS; label++) {
    labels[label] = 0
    for (let wear = 0; wear < WEARS; wear++) labels[label]! += joint[at + wear * LABELS + label]!
  }
}

/** Probability of the likeliest explanation of the engine: a fault here or elsewhere, or nothing wrong; the joint probabilities sum to `all`. */
function leader(joint: Float64Array, at: number, labels: Float64Array, all: number, { othersSound, elsewhere }: Question): number {
  let none = 0, fault = 0
  for (let label = 0; label < LABELS; label++) {
    none += joint[at + label]!
    if (label > 0 && labels[label]! > fault) fault = labels[label]!
  }
  return Math.max(elsewhere, fault / all, Math.min(labels[0]! / all, none / all, othersSound))
}

/**
 * What a test is expected to say of one thing that has `probabilities`, by its chance of each outcome under each: mutual information in bits,
 * and the chance that one of them counts as settled after it. The last of the list ("nothing") settles nothing by itself.
 */
export function worthOfLists(probabilities: ArrayLike<number>, chances: readonly (readonly number[])[], settled: Settled | null): Pick<Worth, 'bits' | 'settles'> {
  const all = Array.from(probabilities)
  const counts = (list: readonly number[], sum: number): number => (settled === null ? 0 : sum * settledness(Math.max(...list.slice(0, -1)) / sum, settled))
  let bits = 0, settles = -counts(all, 1)
  for (let o = 0; o < chances[0]!.length; o++) {
    const joint = all.map((p, k) => p * chances[k]![o]!)
    const outcome = joint.reduce((sum, p) => sum + p, 0)
    if (outcome <= 0) continue
    joint.forEach((p, k) => { bits += plogp(p) - p * Math.log2(outcome) - (all[k]! > 0 ? p * Math.log2(all[k]!) : 0) })
    settles += counts(joint, outcome)
  }
  return { bits: Math.max(0, bits), settles: Math.max(0, settles) }
}

/** Two tests of one cylinder done one after the other: all pairs of outcomes, which its state makes independent. */
export function both(a: Outcomes, b: Outcomes): Outcomes {
  const first = new Float64Array(a.count), second = new Float64Array(b.count)
  return {
    count: a.count * b.count,
    table: (s, worn, out) => {
      a.table(s, worn, first)
      b.table(s, worn, second)
      for (let i = 0; i < a.count; i++) for (let j = 0; j < b.count; j++) out[i * b.count + j] = first[i]! * second[j]!
    },
  }
}

/** Information of a yes-or-no sign about a yes-or-no question: chance of the thing, of the sign with and without it. */
export function bitsOfSign(thing: number, withThing: number, without: number): number {
  const yes = thing * withThing + (1 - thing) * without
  return Math.max(0, entropy(yes) - thing * entropy(withThing) - (1 - thing) * entropy(without))
}

/** Bits that a yes or no of this probability holds. */
export function entropy(p: number): number {
  return -plogp(p) - plogp(1 - p)
}

function plogp(p: number): number {
  return p > 0 ? p * Math.log2(p) : 0
}
