import { CAUSES } from '../knowledge/causes.ts'
import { around, bridged, sumChain, type ChainSums } from './chain.ts'
import type { Emission, Workspace } from './emission.ts'
import type { Flags } from './flags.ts'

/** Sums over everything hidden, kept in parts so that marginals can be asked for one by one. */
export interface EngineSums {
  /** Cells of the grid that carry any weight; the arrays below hold these alone. */
  readonly kept: Int32Array
  readonly gaskets: readonly (readonly number[])[]
  /** [subset of forbidden groups][gasket] */
  readonly chains: readonly (readonly ChainSums[])[]
  /** Prior of the cells times the weight of the subset, summed over causes: [subset] */
  readonly base: readonly Float64Array[]
  /** Product of all gaskets' totals: [subset] */
  readonly products: readonly Float64Array[]
  readonly total: number
}

/** Cells this far below the best carry nothing. */
const LEAST_CELL = 1e-8

/** Cells in which the readings of all cylinders together, bridges at their best, leave weight. */
function liveCells(emissions: readonly Emission[], space: Workspace): Int32Array {
  const { cells, prior } = space.grid
  const levels = space.states.bridgePrior.length
  const score = new Float64Array(cells)
  for (const array of prior) for (let cell = 0; cell < cells; cell++) score[cell]! += array[cell]!
  for (const { sums } of emissions) {
    const all = sums[0]!
    for (let cell = 0; cell < cells; cell++) {
      // a bridge is rare but may explain what nothing else does: count its levels at a thousandth
      let most = all[cell]!
      for (let b = 1; b < levels; b++) if (all[b * cells + cell]! * 1e-3 > most) most = all[b * cells + cell]! * 1e-3
      score[cell]! *= most
    }
  }
  let best = 0
  for (let cell = 0; cell < cells; cell++) if (score[cell]! > best) best = score[cell]!
  let count = 0
  for (let cell = 0; cell < cells; cell++) if (score[cell]! >= best * LEAST_CELL) count++
  const kept = new Int32Array(count)
  for (let cell = 0, at = 0; cell < cells; cell++) if (score[cell]! >= best * LEAST_CELL) kept[at++] = cell
  return kept
}

function pick(values: Float64Array, kept: Int32Array, cells: number, blocks: number): Float64Array {
  const out = new Float64Array(blocks * kept.length)
  for (let b = 0; b < blocks; b++) for (let k = 0; k < kept.length; k++) out[b * kept.length + k] = values[b * cells + kept[k]!]!
  return out
}

/** Chains of every gasket, put together over the cells that matter. */
export function sumEngine(gaskets: readonly (readonly number[])[], emissions: readonly Emission[], flags: Flags, space: Workspace): EngineSums {
  const { grid, states } = space
  const kept = liveCells(emissions, space)
  const levels = states.bridgePrior.length
  const chains = flags.subsets.map((_, k) => gaskets.map((list) =>
    sumChain(list.map((i) => pick(emissions[i]!.sums[k]!, kept, grid.cells, levels)), states.bridgePrior, kept.length)))
  const products = chains.map((sums) => productOf(sums.map((s) => s.total), kept.length))
  const prior = grid.prior.map((array) => pick(array, kept, grid.cells, 1))
  const base = flags.subsets.map((_, k) => {
    const out = new Float64Array(kept.length)
    prior.forEach((array, e) => {
      const w = flags.weights[e]![k]!
      for (let cell = 0; cell < out.length; cell++) out[cell]! += w * array[cell]!
    })
    return out
  })
  let total = 0
  products.forEach((product, k) => { for (let cell = 0; cell < product.length; cell++) total += base[k]![cell]! * product[cell]! })
  return { kept, gaskets, chains, base, products, total }
}

/** For cylinder i and each subset: all but its own readings, [bridge level * cells + cell]. */
export function aroundOf(sums: EngineSums, cylinder: number, space: Workspace): Float64Array[] {
  const { cells } = space.grid
  const { kept } = sums
  const g = sums.gaskets.findIndex((list) => list.includes(cylinder))
  const j = sums.gaskets[g]!.indexOf(cylinder)
  const levels = space.states.bridgePrior.length
  return sums.chains.map((chains, k) => {
    const cavity = around(chains[g]!, j, space.states.bridgePrior, kept.length)
    const others = elsewhere(sums, k, g)
    const out = new Float64Array(levels * cells)
    for (let b = 0; b < levels; b++) for (let at = 0; at < kept.length; at++) out[b * cells + kept[at]!] = cavity[b * kept.length + at]! * others[at]!
    return out
  })
}

function elsewhere(sums: EngineSums, k: number, g: number): Float64Array {
  const others = productOf(sums.chains[k]!.filter((_, h) => h !== g).map((s) => s.total), sums.kept.length)
  for (let cell = 0; cell < others.length; cell++) others[cell]! *= sums.base[k]![cell]!
  return others
}

/** Probability of each engine-wide cause. */
export function causesOf(sums: EngineSums, flags: Flags, space: Workspace): Float64Array {
  const causes = new Float64Array(CAUSES.length)
  CAUSES.forEach((_, e) => {
    sums.products.forEach((product, k) => {
      const w = flags.weights[e]![k]!
      const prior = space.grid.prior[e]!
      for (let at = 0; at < product.length; at++) causes[e]! += w * prior[sums.kept[at]!]! * product[at]!
    })
  })
  let sum = 0
  for (let e = 0; e < causes.length; e++) {
    // inclusion and exclusion may leave a trace below zero
    causes[e] = Math.max(0, causes[e]!)
    sum += causes[e]!
  }
  if (sum > 0) for (let e = 0; e < causes.length; e++) causes[e]! /= sum
  return causes
}

/** Probability of a bridge between neighbours j and j+1 of gasket g. */
export function bridgeOf(sums: EngineSums, g: number, j: number, space: Workspace): number {
  const cells = sums.kept.length
  let probability = 0
  sums.chains.forEach((chains, k) => {
    const part = bridged(chains[g]!, j, space.states.bridgePrior.length, cells)
    const others = elsewhere(sums, k, g)
    for (let cell = 0; cell < cells; cell++) probability += part[cell]! * others[cell]!
  })
  return Math.min(1, Math.max(0, probability / sums.total))
}

/** Probability of a bridge, for each gasket and pair. */
export function bridgesOf(sums: EngineSums, space: Workspace): Float64Array[] {
  return sums.gaskets.map((list, g) => Float64Array.from({ length: Math.max(0, list.length - 1) }, (_, j) => bridgeOf(sums, g, j, space)))
}

/** Posterior means of the common level and of the healthy leak. */
export function commonMeans(sums: EngineSums, space: Workspace): { level: number; healthyArea: number } {
  const { grid } = space
  let total = 0, level = 0, area = 0, q = 0
  for (let at = 0; at < sums.kept.length; at++) {
    const cell = sums.kept[at]!
    while (q + 1 < grid.columns && grid.offset[q + 1]! <= cell) q++
    const from = grid.leakFrom[grid.classOf[q]!]!, width = grid.leakTo[grid.classOf[q]!]! - from
    let p = 0
    for (let k = 0; k < sums.products.length; k++) p += sums.base[k]![at]! * sums.products[k]![at]!
    total += p
    level += p * grid.level[q]!
    area += p * grid.healthyAreas[from + (cell - grid.offset[q]!) % width]!
  }
  return { level: level / total, healthyArea: area / total }
}

function productOf(arrays: readonly Float64Array[], length: number): Float64Array {
  const out = new Float64Array(length).fill(1)
  for (const array of arrays) for (let i = 0; i < length; i++) out[i]! *= array[i]!
  return out
}
