import { CAUSES } from '../knowledge/causes.ts'
import { around, bridged, chainTotal, sumChain } from './chain.ts'
import type { Flags } from './flags.ts'
import { trim } from './kept-cells.ts'
import { fresh, Room, type Take } from './room.ts'
import { OWN_COUNT } from './states.ts'
import type { Cells, Emission, KeptCells, Workspace } from './workspace.ts'

/** Sums over everything hidden, kept in parts so that marginals can be asked for one by one. */
export interface EngineSums {
  readonly kept: KeptCells
  readonly gaskets: readonly (readonly number[])[]
  /** Sums of each cylinder over its own states: [subset of forbidden groups][cylinder][bridge level * cells + cell] */
  readonly picked: readonly (readonly Float64Array[])[]
  /** Sums over a whole gasket, by cell: [subset of forbidden groups][gasket] */
  readonly totals: readonly (readonly Float64Array[])[]
  /** Prior of the cells times the weight of the subset, summed over causes, times the totals of all other gaskets: [subset][gasket] */
  readonly others: readonly (readonly Float64Array[])[]
  /** Product of all gaskets' totals: [subset] */
  readonly products: readonly Float64Array[]
  /** Prior times products: [subset] */
  readonly weights: readonly Float64Array[]
  readonly total: number
}

/** A cylinder's sums over the kept cells, which stand at these places of its blocks, for the states that a subset of forbidden groups allows: [level * cells + cell]. */
function pick({ blocks }: Emission, subset: number, levels: number, places: Int32Array, { grouping, states }: Workspace, take: Take): Float64Array {
  const all = states.bridgePrior.length
  const out = take(levels * places.length)
  for (const at of blocksOf({ blocks }, subset, levels, { grouping, states })) {
    const block = blocks[at]!, to = (at % all) * places.length
    for (let k = 0; k < places.length; k++) out[to + k]! += block[places[k]!]!
  }
  return out
}

/** Blocks of a cylinder that a subset of forbidden groups leaves. */
function blocksOf({ blocks }: Pick<Emission, 'blocks'>, subset: number, levels: number, { grouping, states }: Pick<Workspace, 'grouping' | 'states'>): number[] {
  const all = states.bridgePrior.length
  const list: number[] = []
  grouping.signatures.forEach((signature, at) => {
    if ((signature & subset) !== 0) return
    for (let b = 0; b < levels; b++) if (blocks[at * all + b] !== null) list.push(at * all + b)
  })
  return list
}

/** Bridge levels that a subset of forbidden groups leaves: all, or none but the first. */
function levelsOf(subset: number, { grouping, states }: Workspace): number {
  const levels = states.bridgePrior.length
  return grouping.signatures.some((signature, at) => (signature & subset) === 0 && grouping.levels[at]! > 1) ? levels : 1
}

/** The sums of every cylinder and gasket, put together over the cells that matter; `roughly` are those over which the cylinders were summed. */
export function sumEngine(gaskets: readonly (readonly number[])[], emissions: readonly Emission[], roughly: Cells, flags: Flags, space: Workspace): EngineSums {
  const { kept, places } = trim(roughly, emissions, space)
  const each = emissions.map((emission) => picks(emission, flags.subsets, places, space))
  const picked = flags.subsets.map((_, k) => each.map((list) => list[k]!))
  const totals = totalsOf(picked, gaskets, kept, space, fresh, new Room())
  return putTogether(kept, gaskets, picked, totals, flags, fresh)
}

/** A cylinder's sums for each subset of forbidden groups, of its blocks at these places; subsets that forbid nothing more of it share them. */
export function picks(emission: Emission, subsets: readonly number[], places: Int32Array, space: Workspace, take: Take = fresh): Float64Array[] {
  const known = new Map<string, Float64Array>()
  return subsets.map((subset) => {
    const levels = levelsOf(subset, space)
    const key = `${levels} ${blocksOf(emission, subset, levels, space).join()}`
    let sums = known.get(key)
    if (sums === undefined) known.set(key, (sums = pick(emission, subset, levels, places, space, take)))
    return sums
  })
}

/** Subsets whose sums of the cylinders of a gasket are the same ones, together. */
function alike(picked: EngineSums['picked'], gasket: readonly number[]): { readonly list: readonly Float64Array[]; readonly subsets: number[] }[] {
  const found: { list: readonly Float64Array[]; subsets: number[] }[] = []
  picked.forEach((all, k) => {
    const list = gasket.map((i) => all[i]!)
    const same = found.find((one) => one.list.every((array, j) => array === list[j]))
    if (same === undefined) found.push({ list, subsets: [k] })
    else same.subsets.push(k)
  })
  return found
}

/** The sums over each whole gasket for each subset; `before` where nothing on it has changed. */
function totalsOf(
  picked: EngineSums['picked'], gaskets: EngineSums['gaskets'], { cells }: KeptCells, { states }: Workspace, take: Take, room: Room, before: (g: number) => readonly Float64Array[] | null = () => null,
): Float64Array[][] {
  const out = picked.map((): Float64Array[] => [])
  gaskets.forEach((gasket, g) => {
    const unchanged = before(g)
    if (unchanged !== null) return unchanged.forEach((total, k) => out[k]!.push(total))
    for (const { list, subsets } of alike(picked, gasket)) {
      room.takeBack()
      const total = chainTotal(list, levelPriors(list[0]!, cells.length, states), cells.length, take(cells.length), room.take)
      for (const k of subsets) out[k]!.push(total)
    }
  })
  return out
}

/**
 * The same engine with other sums for some cylinders and, perhaps, other evidence of the whole engine: what has not changed is not summed
 * again. The cells stay: what carried nothing with all readings is not looked at with fewer.
 *
 * @param replaced by cylinder: its sums for each subset of forbidden groups
 * @param take where the arrays come from: they are not needed longer than the answer; `room` is free again afterwards
 */
export function resum(sums: EngineSums, replaced: ReadonlyMap<number, readonly Float64Array[]>, flags: Flags, space: Workspace, take: Take, room: Room): EngineSums {
  const { kept, gaskets } = sums
  const picked = sums.picked.map((list, k) => list.map((before, i) => replaced.get(i)?.[k] ?? before))
  const totals = totalsOf(picked, gaskets, kept, space, take, room, (g) => (gaskets[g]!.some((i) => replaced.has(i)) ? null : sums.totals.map((list) => list[g]!)))
  return putTogether(kept, gaskets, picked, totals, flags, take)
}

/** Chances of as many bridge levels as an array over them and the cells has. */
function levelPriors({ length }: Float64Array, cells: number, { bridgePrior }: Workspace['states']): Float64Array {
  return bridgePrior.subarray(0, length / cells)
}

function putTogether(
  kept: KeptCells, gaskets: EngineSums['gaskets'], picked: EngineSums['picked'], totals: EngineSums['totals'], flags: Flags, take: Take,
): EngineSums {
  const { cells } = kept
  const products = totals.map((list) => (list.length === 1 ? list[0]! : productOf(list, cells.length, take)))
  const priors = CAUSES.map((_, e) => priorOf(e, kept, flags, take))
  const base = flags.subsets.map((_, k) => {
    const out = take(cells.length)
    CAUSES.forEach((_, e) => {
      const w = flags.weights[e]![k]!, prior = priors[e]!
      for (let at = 0; at < out.length; at++) out[at]! += w * prior[at]!
    })
    return out
  })
  const others = totals.map((list, k) => list.map((_, g) => (list.length === 1 ? base[k]! : productOf([base[k]!, ...list.filter((_t, h) => h !== g)], cells.length, take))))
  const weights = products.map((product, k) => productOf([base[k]!, product], cells.length, take))
  let total = 0
  for (const array of weights) for (let at = 0; at < array.length; at++) total += array[at]!
  return { kept, gaskets, picked, totals, others, products, weights, total }
}

/** The sums of a cylinder of which nothing was read, for the states that a subset allows: they change with the class of engine alone. */
export function unreadSums(prior: Float64Array, subset: number, levels: number, kept: KeptCells, { grid, grouping, states }: Workspace, take: Take): Float64Array {
  const count = kept.cells.length
  const out = take(levels * count)
  const byClass = new Float64Array(levels * grid.classes.length)
  for (const group of grouping.unread) {
    if ((grouping.signatures[group.signature]! & subset) !== 0 || group.bridgeLevel >= levels) continue
    for (const s of group.states) {
      for (let c = 0; c < grid.classes.length; c++) byClass[group.bridgeLevel * grid.classes.length + c]! += states.weight[s]! * prior[c * OWN_COUNT + states.own[s]!]!
    }
  }
  for (let q = 0; q < grid.columns; q++) {
    for (let b = 0; b < levels; b++) out.fill(byClass[b * grid.classes.length + grid.classOf[q]!]!, b * count + kept.from[q]!, b * count + kept.from[q + 1]!)
  }
  return out
}

/**
 * For each of these cylinders and each signature of its own states: all but its own readings, [bridge level * kept cells + cell], for the levels
 * that occur with it. `room` is free again afterwards.
 */
export function aroundOf(sums: EngineSums, cylinders: readonly number[], { grouping, subsets, states }: Workspace, take: Take, room: Room): Float64Array[][] {
  const count = sums.kept.cells.length
  const out = cylinders.map(() => grouping.levels.map((levels) => take(levels * count)))
  sums.gaskets.forEach((gasket, g) => {
    const asked = cylinders.flatMap((i, at) => (gasket.includes(i) ? [{ at, j: gasket.indexOf(i) }] : []))
    if (asked.length === 0) return
    const first = Math.min(...asked.map(({ j }) => j)), last = Math.max(...asked.map(({ j }) => j))
    for (const { list, subsets: same } of alike(sums.picked, gasket)) {
      room.takeBack()
      const priors = levelPriors(list[0]!, count, states)
      const chain = sumChain(list, priors, count, room.take, first, last)
      const weights = grouping.signatures.map((signature) => sumOf(same.filter((k) => (signature & subsets[k]!) === 0).map((k) => sums.others[k]![g]!), count, room.take))
      const cavity = room.take(priors.length * count)
      for (const { at, j } of asked) {
        around(chain, j, priors, count, cavity)
        weights.forEach((weight, s) => {
          if (weight === null) return
          const into = out[at]![s]!
          for (let b = 0; b * count < Math.min(into.length, cavity.length); b++) for (let k = 0, to = b * count; k < count; k++, to++) into[to]! += cavity[to]! * weight[k]!
        })
      }
    }
  })
  return out
}

/** Sum of some arrays; null of none. */
function sumOf(arrays: readonly Float64Array[], length: number, take: Take): Float64Array | null {
  if (arrays.length <= 1) return arrays[0] ?? null
  const out = take(length)
  for (const array of arrays) for (let i = 0; i < length; i++) out[i]! += array[i]!
  return out
}

/** Prior of the kept cells under a cause, by what other gauges and running compression showed. */
function priorOf(e: number, { prior, from }: KeptCells, { byColumn }: Flags, take: Take): Float64Array {
  const factor = byColumn[e]!
  if (factor === null) return prior[e]!
  const out = take(prior[e]!.length)
  for (let q = 0; q < factor.length; q++) for (let at = from[q]!; at < from[q + 1]!; at++) out[at] = factor[q]! * prior[e]![at]!
  return out
}

/** Weight of each column of the grid under each engine-wide cause, in the order of `CAUSES`. */
export function causeColumns({ kept, products }: Pick<EngineSums, 'kept' | 'products'>, flags: Flags): Float64Array[] {
  return CAUSES.map((_, e) => {
    const prior = priorOf(e, kept, flags, fresh)
    const columns = new Float64Array(kept.from.length - 1)
    products.forEach((product, k) => {
      const w = flags.weights[e]![k]!
      for (let q = 0; q < columns.length; q++) for (let at = kept.from[q]!; at < kept.from[q + 1]!; at++) columns[q]! += w * prior[at]! * product[at]!
    })
    return columns
  })
}

/** Probability of each engine-wide cause. */
export function causesOf(sums: EngineSums, flags: Flags): Float64Array {
  const causes = Float64Array.from(causeColumns(sums, flags), (columns) => columns.reduce((sum, weight) => sum + weight, 0))
  let sum = 0
  for (let e = 0; e < causes.length; e++) {
    // inclusion and exclusion may leave a trace below zero
    causes[e] = Math.max(0, causes[e]!)
    sum += causes[e]!
  }
  if (sum > 0) for (let e = 0; e < causes.length; e++) causes[e]! /= sum
  return causes
}

/** Probabilities of a bridge between neighbours j and j+1 of gasket g, for each of these j. `room` is free again afterwards. */
export function bridgesAt(sums: EngineSums, g: number, pairs: readonly number[], { states }: Workspace, room: Room): Float64Array {
  const count = sums.kept.cells.length
  const out = new Float64Array(pairs.length)
  if (pairs.length === 0) return out
  for (const { list, subsets } of alike(sums.picked, sums.gaskets[g]!)) {
    room.takeBack()
    const priors = levelPriors(list[0]!, count, states)
    const chain = sumChain(list, priors, count, room.take, Math.min(...pairs), Math.max(...pairs) + 1)
    const others = sumOf(subsets.map((k) => sums.others[k]![g]!), count, room.take)!
    pairs.forEach((j, at) => {
      const part = bridged(chain, j, priors, count)
      for (let k = 0; k < count; k++) out[at]! += part[k]! * others[k]!
    })
  }
  return out.map((weight) => Math.min(1, Math.max(0, weight / sums.total)))
}

/** Probability of a bridge, for each gasket and pair. */
export function bridgesOf(sums: EngineSums, space: Workspace, room: Room): Float64Array[] {
  return sums.gaskets.map((list, g) => bridgesAt(sums, g, Array.from({ length: list.length - 1 }, (_, j) => j), space, room))
}

/** What a sound cylinder of an engine shows: leak area in mm2, and rise by what oil seals. */
export interface Healthy {
  readonly area: number
  readonly sealed: number
}

/** Posterior means of the common level, and of what is healthy in engines not worn and evenly worn. */
export function commonMeans({ kept, weights, total }: EngineSums, { grid }: Workspace): { level: number; healthy: [Healthy, Healthy] } {
  let level = 0
  const part = [0, 0], area = [0, 0], sealed = [0, 0]
  for (let q = 0; q < grid.columns; q++) {
    const kind = grid.classes[grid.classOf[q]!]!
    const worn = kind.commonLoss > 0 ? 1 : 0
    const from = grid.leakFrom[grid.classOf[q]!]!, width = grid.leakTo[grid.classOf[q]!]! - from
    for (let at = kept.from[q]!; at < kept.from[q + 1]!; at++) {
      let p = 0
      for (const array of weights) p += array[at]!
      level += p * grid.level[q]!
      part[worn]! += p
      area[worn]! += p * grid.healthyAreas[from + (kept.cells[at]! - grid.offset[q]!) % width]!
      sealed[worn]! += p * kind.sealed
    }
  }
  const mean = (worn: 0 | 1, other: 0 | 1): Healthy => {
    const of = part[worn]! > 0 ? worn : other
    return { area: area[of]! / part[of]!, sealed: sealed[of]! / part[of]! }
  }
  return { level: level / total, healthy: [mean(0, 1), mean(1, 0)] }
}

function productOf(arrays: readonly Float64Array[], length: number, take: Take): Float64Array {
  const out = take(length).fill(1)
  for (const array of arrays) for (let i = 0; i < length; i++) out[i]! *= array[i]!
  return out
}
