import type { Knowledge } from '../knowledge/knowledge.ts'
import { gaugeEvidence } from './compression.ts'
import { emit, weighGroup, type Emission, type Workspace } from './emission.ts'
import type { Evidence } from './evidence.ts'
import { signatures, weighFlags, type Flags } from './flags.ts'
import { layGrid, type GaugeEvidence } from './grid.ts'
import { groupStates } from './groups.ts'
import { tabulatePercent } from './leakage.ts'
import { tabulateEars, type Ears } from './listening.ts'
import { OWN_COUNT, buildStates, type StateSpace } from './states.ts'
import { aroundOf, bridgesOf, causesOf, commonMeans, sumEngine, type EngineSums } from './sums.ts'

/** A finished inference: everything later rooms need to ask "what if". */
export interface Inference {
  readonly evidence: Evidence
  readonly space: Workspace
  readonly gauge: readonly GaugeEvidence[]
  readonly emissions: readonly Emission[]
  readonly flags: Flags
  readonly sums: EngineSums
  readonly causes: Float64Array
  /** Posterior means of the common level (logarithm of Pa) and of the healthy leak area (mm2). */
  readonly level: number
  readonly healthyArea: number
  /** Probability of a bridge, for each gasket and neighbouring pair in order. */
  readonly bridges: readonly Float64Array[]
  /** Probability of each own state (0 sound, then faults), by cylinder. */
  readonly own: readonly Float64Array[]
  /** Probability of each state of the space, by cylinder. */
  readonly states: readonly Float64Array[]
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
  const flags = weighFlags(evidence.engine, knowledge)
  const space: Workspace = {
    knowledge, states, grid, ears, curve: tabulatePercent(evidence), subsets: flags.subsets,
    groups: groupStates(states, signatures(states, knowledge), flags.subsets.reduce((bits, s) => bits | s, 0)),
  }
  const emissions = evidence.cylinders.map((c, i) => emit(i, c, gauge[i]!, evidence, space))
  const sums = sumEngine(evidence.gaskets, emissions, flags, space)
  const stateProbabilities = evidence.cylinders.map((_, i) => statePosterior(emissions[i]!, aroundOf(sums, i, space), space))
  const own = stateProbabilities.map((p) => {
    const out = new Float64Array(OWN_COUNT)
    for (let s = 0; s < states.count; s++) out[states.own[s]!]! += p[s]!
    return out
  })
  return { evidence, space, gauge, emissions, flags, sums, causes: causesOf(sums, flags, space), ...commonMeans(sums, space), bridges: bridgesOf(sums, space), own, states: stateProbabilities }
}

/** Probability of each state of one cylinder, given what surrounds it. */
export function statePosterior(emission: Emission, around: readonly Float64Array[], space: Workspace): Float64Array {
  const out = weighStates(emission, around, space)
  let sum = 0
  for (let s = 0; s < out.length; s++) {
    if (!(out[s]! > 0)) out[s] = 0
    sum += out[s]!
  }
  if (sum > 0) for (let s = 0; s < out.length; s++) out[s]! /= sum
  return out
}

/** Weights of each own state of a cylinder (0 sound, then faults), not normed. */
export function ownWeights(emission: Emission, around: readonly Float64Array[], space: Workspace): Float64Array {
  const weights = weighStates(emission, around, space)
  const out = new Float64Array(OWN_COUNT)
  for (let s = 0; s < weights.length; s++) out[space.states.own[s]!]! += Math.max(0, weights[s]!)
  return out
}

function weighStates(emission: Emission, around: readonly Float64Array[], space: Workspace): Float64Array {
  const out = new Float64Array(space.states.count)
  const inner = new Float64Array(space.grid.rises.length * space.grid.leakCount)
  const combined = new Map<number, Float64Array>()
  const columnLive = liveColumns(around[0]!, space)
  for (const group of space.groups) {
    let weights = combined.get(group.signature)
    if (weights === undefined) combined.set(group.signature, (weights = allowed(group.signature, around, space)))
    weighGroup(group, emission, space, weights, columnLive, out, inner)
  }
  return out
}

function liveColumns(around: Float64Array, { grid }: Workspace): Uint8Array {
  return Uint8Array.from({ length: grid.columns }, (_, q) => {
    const to = q + 1 < grid.columns ? grid.offset[q + 1]! : grid.cells
    for (let cell = grid.offset[q]!; cell < to; cell++) if (around[cell]! !== 0) return 1
    return 0
  })
}

/** The surroundings summed over the subsets of forbidden groups that allow a signature. */
function allowed(signature: number, around: readonly Float64Array[], space: Workspace): Float64Array {
  const arrays = around.filter((_, k) => (signature & space.subsets[k]!) === 0)
  if (arrays.length === 1) return arrays[0]!
  const sum = new Float64Array(arrays[0]!.length)
  for (const array of arrays) for (let i = 0; i < sum.length; i++) sum[i]! += array[i]!
  return sum
}
