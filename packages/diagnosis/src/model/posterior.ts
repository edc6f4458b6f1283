import { CAUSES } from '../knowledge/causes.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { sumChain, type ChainSums } from './chain.ts'
import { gaugeEvidence } from './compression.ts'
import { emit, fillState, type Emission, type Workspace } from './emission.ts'
import type { Evidence } from './evidence.ts'
import { signatures, weighFlags, type Flags } from './flags.ts'
import { layGrid, type GaugeEvidence, type Grid } from './grid.ts'
import { tabulatePercent } from './leakage.ts'
import { tabulateEars } from './listening.ts'
import { OWN_COUNT, buildStates, type StateSpace } from './states.ts'

/** A finished inference: everything later rooms need to ask "what if". */
export interface Inference {
  readonly evidence: Evidence
  readonly space: Workspace
  readonly gauge: readonly GaugeEvidence[]
  readonly emissions: readonly Emission[]
  readonly flags: Flags
  /** For each cylinder and subset of forbidden groups: all but its own readings, [bridge level * cells + cell], prior of the cells and weight of the subset included. */
  readonly around: readonly (readonly Float64Array[])[]
  /** Sum over everything, the scale of `around`. */
  readonly total: number
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

const spaces = new WeakMap<Knowledge, Map<string, StateSpace>>()

function stateSpace(evidence: Evidence, knowledge: Knowledge, refine: number): StateSpace {
  let known = spaces.get(knowledge)
  if (known === undefined) spaces.set(knowledge, (known = new Map()))
  const key = `${evidence.displacementCm3};${evidence.speedRatio};${refine}`
  let states = known.get(key)
  if (states === undefined) {
    if (known.size > 64) known.clear()
    known.set(key, (states = buildStates(knowledge, evidence.displacementCm3, evidence.speedRatio, refine)))
  }
  return states
}

/** Exact inference on the grid. `refine` divides every step of the grid (for the test that the grid is fine enough). */
export function infer(evidence: Evidence, knowledge: Knowledge, refine = 1): Inference {
  const states = stateSpace(evidence, knowledge, refine)
  const gauge = evidence.cylinders.map((c) => gaugeEvidence(c, evidence, knowledge))
  const grid = layGrid(evidence, gauge, states, knowledge, refine)
  const flags = weighFlags(evidence.engine, knowledge)
  const space: Workspace = {
    knowledge, states, grid, ears: tabulateEars(knowledge), curve: tabulatePercent(evidence),
    signature: signatures(states, knowledge), subsets: flags.subsets,
  }
  const emissions = evidence.cylinders.map((c, i) => emit(i, c, gauge[i]!, evidence, space))
  return conclude(evidence, space, gauge, flags, emissions)
}

/** Chains, cells and marginals from the emissions of all cylinders. */
export function conclude(
  evidence: Evidence, space: Workspace, gauge: readonly GaugeEvidence[], flags: Flags, emissions: readonly Emission[],
): Inference {
  const { grid, states } = space
  const chains = flags.subsets.map((_, k) => evidence.gaskets.map((list) => sumChain(list.map((i) => emissions[i]!.sums[k]!), states.bridgePrior, grid.cells)))
  const products = chains.map((sums) => productOf(sums.map((s) => s.total), grid.cells))
  const base = flags.subsets.map((_, k) => weightedPrior(grid.prior, flags.weights, k, grid.cells))
  let total = 0
  products.forEach((product, k) => { for (let cell = 0; cell < grid.cells; cell++) total += base[k]![cell]! * product[cell]! })
  const causes = new Float64Array(CAUSES.length)
  CAUSES.forEach((_, e) => {
    products.forEach((product, k) => {
      const w = flags.weights[e]![k]!
      for (let cell = 0; cell < grid.cells; cell++) causes[e]! += w * grid.prior[e]![cell]! * product[cell]!
    })
  })
  normalise(causes)
  const { level, healthyArea } = commonMeans(base, products, grid)
  const around: Float64Array[][] = evidence.cylinders.map(() => [])
  const bridges = evidence.gaskets.map((list) => new Float64Array(Math.max(0, list.length - 1)))
  flags.subsets.forEach((_, k) => {
    evidence.gaskets.forEach((list, g) => {
      const others = productOf(chains[k]!.filter((_, h) => h !== g).map((s) => s.total), grid.cells)
      for (let cell = 0; cell < grid.cells; cell++) others[cell]! *= base[k]![cell]!
      list.forEach((i, j) => {
        const cavity = chains[k]![g]!.around[j]!
        const out = new Float64Array(cavity.length)
        for (let at = 0; at < cavity.length; at++) out[at] = cavity[at]! * others[at % grid.cells]!
        around[i]!.push(out)
      })
      chains[k]![g]!.bridged.forEach((sum, j) => {
        for (let cell = 0; cell < grid.cells; cell++) bridges[g]![j]! += sum[cell]! * others[cell]! / total
      })
    })
  })
  const stateProbabilities = evidence.cylinders.map((_, i) => statePosterior(emissions[i]!, around[i]!, space))
  const own = stateProbabilities.map((p) => {
    const sums = new Float64Array(OWN_COUNT)
    for (let s = 0; s < states.count; s++) sums[states.own[s]!]! += p[s]!
    return sums
  })
  return { evidence, space, gauge, emissions, flags, around, total, causes, level, healthyArea, bridges: bridges.map(clampAll), own, states: stateProbabilities }
}

function commonMeans(base: readonly Float64Array[], products: readonly Float64Array[], grid: Grid): { level: number; healthyArea: number } {
  const perLevel = grid.rises.length * grid.leakCount
  let sum = 0, level = 0, healthyArea = 0
  products.forEach((product, k) => {
    for (let cell = 0; cell < grid.cells; cell++) {
      const p = base[k]![cell]! * product[cell]!
      sum += p
      level += p * grid.levels[Math.floor(cell / perLevel) % grid.levels.length]!
      healthyArea += p * grid.healthyAreas[cell % grid.leakCount]!
    }
  })
  return { level: level / sum, healthyArea: healthyArea / sum }
}

/** Probability of each state of one cylinder, given what surrounds it. */
export function statePosterior(emission: Emission, around: readonly Float64Array[], space: Workspace): Float64Array {
  const { states, grid } = space
  const out = new Float64Array(states.count)
  const row = new Float64Array(grid.cells)
  const combined = combineBySignature(around, space)
  for (let s = 0; s < states.count; s++) {
    fillState(s, emission, space, row)
    const weights = combined.get(space.signature[s]!)!
    const at = states.bridgeLevel[s]! * grid.cells
    let sum = 0
    for (let cell = 0; cell < grid.cells; cell++) sum += row[cell]! * weights[at + cell]!
    out[s] = sum
  }
  normalise(out)
  return out
}

/** For each signature of groups: the surroundings summed over the subsets that allow it. */
function combineBySignature(around: readonly Float64Array[], space: Workspace): Map<number, Float64Array> {
  const map = new Map<number, Float64Array>()
  for (const signature of new Set(space.signature)) {
    const allowed = around.filter((_, k) => (signature & space.subsets[k]!) === 0)
    if (allowed.length === 1) map.set(signature, allowed[0]!)
    else {
      const sum = new Float64Array(allowed[0]!.length)
      for (const array of allowed) for (let i = 0; i < sum.length; i++) sum[i]! += array[i]!
      map.set(signature, sum)
    }
  }
  return map
}

function productOf(arrays: readonly Float64Array[], length: number): Float64Array {
  const out = new Float64Array(length).fill(1)
  for (const array of arrays) for (let i = 0; i < length; i++) out[i]! *= array[i]!
  return out
}

function weightedPrior(prior: readonly Float64Array[], weights: readonly Float64Array[], subset: number, cells: number): Float64Array {
  const out = new Float64Array(cells)
  prior.forEach((array, e) => {
    const w = weights[e]![subset]!
    for (let cell = 0; cell < cells; cell++) out[cell]! += w * array[cell]!
  })
  return out
}

/** Inclusion and exclusion may leave a trace below zero: cut it, and let the rest sum to one. */
function normalise(values: Float64Array): void {
  let sum = 0
  for (let i = 0; i < values.length; i++) {
    if (!(values[i]! > 0)) values[i] = 0
    sum += values[i]!
  }
  if (sum > 0) for (let i = 0; i < values.length; i++) values[i]! /= sum
}

function clampAll(values: Float64Array): Float64Array {
  return values.map((x) => Math.min(1, Math.max(0, x)))
}

export type { ChainSums }
