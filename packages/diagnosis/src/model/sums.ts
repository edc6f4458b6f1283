import { CAUSES } from '../knowledge/causes.ts'
import { around, bridged, sumChain, type ChainSums } from './chain.ts'
import type { Emission, Workspace } from './emission.ts'
import type { Flags } from './flags.ts'

/** Sums over everything hidden, kept in parts so that marginals can be asked for one by one. */
export interface EngineSums {
  readonly gaskets: readonly (readonly number[])[]
  /** [subset of forbidden groups][gasket] */
  readonly chains: readonly (readonly ChainSums[])[]
  /** Prior of the cells times the weight of the subset, summed over causes: [subset] */
  readonly base: readonly Float64Array[]
  /** Product of all gaskets' totals: [subset] */
  readonly products: readonly Float64Array[]
  readonly total: number
}

/** Chains of every gasket, put together over the cells. */
export function sumEngine(gaskets: readonly (readonly number[])[], emissions: readonly Emission[], flags: Flags, space: Workspace): EngineSums {
  const { grid, states } = space
  const chains = flags.subsets.map((_, k) => gaskets.map((list) => sumChain(list.map((i) => emissions[i]!.sums[k]!), states.bridgePrior, grid.cells)))
  const products = chains.map((sums) => productOf(sums.map((s) => s.total), grid.cells))
  const base = flags.subsets.map((_, k) => {
    const out = new Float64Array(grid.cells)
    grid.prior.forEach((array, e) => {
      const w = flags.weights[e]![k]!
      for (let cell = 0; cell < grid.cells; cell++) out[cell]! += w * array[cell]!
    })
    return out
  })
  let total = 0
  products.forEach((product, k) => { for (let cell = 0; cell < grid.cells; cell++) total += base[k]![cell]! * product[cell]! })
  return { gaskets, chains, base, products, total }
}

/** For cylinder i and each subset: all but its own readings, [bridge level * cells + cell]. */
export function aroundOf(sums: EngineSums, cylinder: number, space: Workspace): Float64Array[] {
  const { cells } = space.grid
  const g = sums.gaskets.findIndex((list) => list.includes(cylinder))
  const j = sums.gaskets[g]!.indexOf(cylinder)
  return sums.chains.map((chains, k) => {
    const out = around(chains[g]!, j, space.states.bridgePrior, cells)
    const others = elsewhere(sums, k, g, cells)
    for (let at = 0; at < out.length; at += cells) for (let cell = 0; cell < cells; cell++) out[at + cell]! *= others[cell]!
    return out
  })
}

function elsewhere(sums: EngineSums, k: number, g: number, cells: number): Float64Array {
  const others = productOf(sums.chains[k]!.filter((_, h) => h !== g).map((s) => s.total), cells)
  for (let cell = 0; cell < cells; cell++) others[cell]! *= sums.base[k]![cell]!
  return others
}

/** Probability of each engine-wide cause. */
export function causesOf(sums: EngineSums, flags: Flags, space: Workspace): Float64Array {
  const causes = new Float64Array(CAUSES.length)
  CAUSES.forEach((_, e) => {
    sums.products.forEach((product, k) => {
      const w = flags.weights[e]![k]!
      const prior = space.grid.prior[e]!
      for (let cell = 0; cell < product.length; cell++) causes[e]! += w * prior[cell]! * product[cell]!
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
  const { cells } = space.grid
  let probability = 0
  sums.chains.forEach((chains, k) => {
    const part = bridged(chains[g]!, j, space.states.bridgePrior.length, cells)
    const others = elsewhere(sums, k, g, cells)
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
  let total = 0, level = 0, area = 0
  for (let q = 0; q < grid.columns; q++) {
    const c = grid.classOf[q]!
    const from = grid.leakFrom[c]!, width = grid.leakTo[c]! - from
    for (let at = 0; at < grid.rises.length * width; at++) {
      const cell = grid.offset[q]! + at
      let p = 0
      for (let k = 0; k < sums.products.length; k++) p += sums.base[k]![cell]! * sums.products[k]![cell]!
      total += p
      level += p * grid.level[q]!
      area += p * grid.healthyAreas[from + at % width]!
    }
  }
  return { level: level / total, healthyArea: area / total }
}

function productOf(arrays: readonly Float64Array[], length: number): Float64Array {
  const out = new Float64Array(length).fill(1)
  for (const array of arrays) for (let i = 0; i < length; i++) out[i]! *= array[i]!
  return out
}
