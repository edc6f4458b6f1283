import type { Knowledge } from '../knowledge/knowledge.ts'
import { gaugeEvidence } from './compression.ts'
import { allPriors, likelihoodOf, summed } from './emission.ts'
import type { Evidence } from './evidence.ts'
import { signatures, weighFlags, type Flags } from './flags.ts'
import { layGrid, type GaugeEvidence } from './grid.ts'
import { groupStates } from './groups.ts'
import { roughlyKept } from './kept-cells.ts'
import { tabulatePercent } from './leakage.ts'
import { tabulateEars, type Ears } from './listening.ts'
import { fresh, Room } from './room.ts'
import { weighStates, type Tables } from './state-sums.ts'
import { OWN_COUNT, buildStates, type StateSpace } from './states.ts'
import { aroundOf, bridgesOf, causesOf, commonMeans, sumEngine, type EngineSums, type Healthy } from './sums.ts'
import type { Emission, Workspace } from './workspace.ts'

/** A finished inference: everything later rooms need to ask "what if". */
export interface Inference {
  readonly evidence: Evidence
  readonly space: Workspace
  readonly gauge: readonly GaugeEvidence[]
  /** What was read of each cylinder; the sums over its own states are in `sums`. */
  readonly emissions: readonly Omit<Emission, 'blocks'>[]
  readonly flags: Flags
  readonly sums: EngineSums
  /** For each cylinder all but its own readings, as `aroundOf` gives it. */
  readonly surroundings: readonly (readonly Float64Array[])[]
  readonly causes: Float64Array
  /** Posterior mean of the common level (logarithm of Pa). */
  readonly level: number
  /** Posterior means of the healthy leak (mm2) and of what oil gives back to a sound cylinder, in engines not worn and evenly worn. */
  readonly healthy: readonly [Healthy, Healthy]
  /** Probability of a bridge, for each gasket and neighbouring pair in order. */
  readonly bridges: readonly Float64Array[]
  /** Probability of each own state (0 sound, then faults), by cylinder. */
  readonly own: readonly Float64Array[]
  /** Probability of each state of the space, by cylinder. */
  readonly states: readonly Float64Array[]
  /** The part of it in which the engine is evenly worn. */
  readonly worn: readonly Float64Array[]
}

interface Prepared {
  readonly spaces: Map<string, StateSpace>
  readonly ears: Ears
}
const prepared = new WeakMap<Knowledge, Prepared>()

/** Tables that depend on the knowledge and the size of the engine only are built once. */
function prepare(evidence: Evidence, knowledge: Knowledge, refine: number): { states: StateSpace; ears: Ears } {
  let known = prepared.get(knowledge)
  if (known === undefined) prepared.set(knowledge, (known = { spaces: new Map(), ears: tabulateEars(knowledge) }))
  const { oilWay } = evidence
  const key = `${evidence.displacementCm3};${evidence.speedRatio};${oilWay.rings};${oilWay.valves.mean};${refine}`
  let states = known.spaces.get(key)
  if (states === undefined) {
    if (known.spaces.size >= 32) known.spaces.clear()
    known.spaces.set(key, (states = buildStates(knowledge, evidence.displacementCm3, evidence.speedRatio, oilWay, refine)))
  }
  return { states, ears: known.ears }
}

/** Exact inference on the grid. `refine` divides every step of the grid (for the test that the grid is fine enough). */
export function infer(evidence: Evidence, knowledge: Knowledge, refine = 1): Inference {
  const { states, ears } = prepare(evidence, knowledge, refine)
  const gauge = evidence.cylinders.map((c) => gaugeEvidence(c, evidence, knowledge))
  const grid = layGrid(evidence, gauge, states, knowledge, refine)
  const flags = weighFlags(evidence.engine, evidence, grid, knowledge)
  const space: Workspace = {
    knowledge, states, grid, ears, curve: tabulatePercent(evidence), subsets: flags.subsets,
    grouping: groupStates(states, signatures(states, knowledge), flags.subsets.reduce((bits, s) => bits | s, 0)),
  }
  const priors = allPriors(evidence, grid, knowledge)
  const likelihoods = evidence.cylinders.map((_, i) => likelihoodOf(i, gauge, evidence, space, priors[i]!))
  const roughly = roughlyKept(likelihoods, space)
  const withBlocks = likelihoods.map((likelihood) => summed(likelihood, roughly, space))
  const sums = sumEngine(evidence.gaskets, withBlocks, roughly, flags, space)
  // the largest arrays of all, and nobody asks for them again
  const emissions = withBlocks.map(({ blocks: _, ...kept }) => kept)
  const worn = emissions.map(() => new Float64Array(states.count))
  const room = new Room()
  const surroundings = aroundOf(sums, [...emissions.keys()], space, fresh, room)
  const stateProbabilities = emissions.map((emission, i) => normed(weighStates(emission, emission.scale, surroundings[i]!, sums.kept, space, worn[i]!), worn[i]!))
  const own = stateProbabilities.map((p) => byOwn(p, states))
  return { evidence, space, gauge, emissions, flags, sums, surroundings, causes: causesOf(sums, flags), ...commonMeans(sums, space), bridges: bridgesOf(sums, space, room), own, states: stateProbabilities, worn }
}

/** Weights as probabilities; what inclusion and exclusion left below zero is none. */
function normed(weights: Float64Array, part?: Float64Array): Float64Array {
  let sum = 0
  for (let s = 0; s < weights.length; s++) {
    if (!(weights[s]! > 0)) weights[s] = 0
    sum += weights[s]!
  }
  if (sum > 0) for (let s = 0; s < weights.length; s++) weights[s]! /= sum
  if (sum > 0 && part !== undefined) for (let s = 0; s < part.length; s++) part[s] = Math.min(weights[s]!, Math.max(0, part[s]! / sum))
  return weights
}

/** Probability of each own state of a cylinder (0 sound, then faults) by its tables and all that is not its own. */
export function ownProbabilities(tables: Tables, around: readonly Float64Array[], sums: EngineSums, space: Workspace): Float64Array {
  return byOwn(normed(weighStates(tables, 1, around, sums.kept, space)), space.states)
}

function byOwn(probabilities: Float64Array, states: StateSpace): Float64Array {
  const out = new Float64Array(OWN_COUNT)
  for (let s = 0; s < states.count; s++) out[states.own[s]!]! += probabilities[s]!
  return out
}
