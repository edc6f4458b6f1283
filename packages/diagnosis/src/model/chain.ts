import { fresh, type Take } from './room.ts'

/** Sums of a chain of cylinders under one gasket, for each cell of the grid; null for what was not asked. */
export interface ChainSums {
  /** forward[j][b]: cylinders before j summed out, given a bridge of level b between j-1 and j, its chance not included; null for the first. */
  readonly forward: readonly (Float64Array | null)[]
  /** backward[j][b]: cylinders from j+1 on, given a bridge of level b between j and j+1, its chance not included; null for the last. */
  readonly backward: readonly (Float64Array | null)[]
}

/**
 * Forward-backward over the bridges of one gasket. `emissions[j]` holds the likelihood of cylinder j for each bridge level it
 * may feel ([level * cells + cell]); between neighbours stands a bridge of level b with chance `bridgePrior[b]`, b = 0 none; a
 * cylinder with bridges on both sides feels the greater. Levels are summed by running sums, so work grows with their number, not its square.
 * The arrays of the first and last cylinder stand in the answer themselves: nothing else is before or behind their neighbours.
 *
 * @param first the first and the last cylinder of which the surroundings are wanted: no sums are made beyond them
 */
export function sumChain(emissions: readonly Float64Array[], bridgePrior: Float64Array, cells: number, take: Take = fresh, first = 0, last = emissions.length - 1): ChainSums {
  const n = emissions.length
  const forward = new Array<Float64Array | null>(n).fill(null), backward = new Array<Float64Array | null>(n).fill(null)
  for (let j = 1; j <= last; j++) forward[j] = j === 1 ? emissions[0]! : through(forward[j - 1]!, emissions[j - 1]!, bridgePrior, cells, take)
  for (let j = n - 2; j >= first; j--) backward[j] = j === n - 2 ? emissions[n - 1]! : through(backward[j + 1]!, emissions[j + 1]!, bridgePrior, cells, take)
  return { forward, backward }
}

/** The sum over all states of all cylinders and bridges of one gasket, for each cell, written to `out`. */
export function chainTotal(emissions: readonly Float64Array[], bridgePrior: Float64Array, cells: number, out: Float64Array, take: Take = fresh): Float64Array {
  const end = emissions.length - 1
  const before = sumChain(emissions, bridgePrior, cells, take, end).forward[end]!, last = emissions[end]!
  if (before === null) out.set(last.subarray(0, cells))
  else {
    out.fill(0)
    for (let b = 0; b < bridgePrior.length; b++) for (let k = 0, at = b * cells; k < cells; k++, at++) out[k]! += bridgePrior[b]! * before[at]! * last[at]!
  }
  return out
}

/** out[b] = sum over a of into[a] chance[a] own[max(a, b)]. */
function through(into: Float64Array, own: Float64Array, chance: Float64Array, cells: number, take: Take): Float64Array {
  const levels = chance.length
  const out = take(levels * cells)
  for (let k = 0; k < cells; k++) {
    let above = 0
    for (let a = levels - 1; a >= 0; a--) {
      out[a * cells + k] = above
      above += chance[a]! * into[a * cells + k]! * own[a * cells + k]!
    }
    let upTo = 0
    for (let b = 0; b < levels; b++) {
      upTo += chance[b]! * into[b * cells + k]!
      out[b * cells + k]! += upTo * own[b * cells + k]!
    }
  }
  return out
}

/** All but cylinder j's own readings, by the bridge level it feels: written to `out`, as many levels as there are chances. */
export function around({ forward, backward }: ChainSums, j: number, bridgePrior: Float64Array, cells: number, out: Float64Array): void {
  const before = forward[j]!, behind = backward[j]!
  const levels = bridgePrior.length
  if (before === null && behind === null) out.fill(0).fill(1, 0, cells)
  else if (before === null || behind === null) {
    const one = before ?? behind!
    for (let b = 0; b < levels; b++) for (let at = b * cells; at < (b + 1) * cells; at++) out[at] = bridgePrior[b]! * one[at]!
  } else {
    for (let k = 0; k < cells; k++) {
      let left = 0, right = 0
      for (let b = 0; b < levels; b++) {
        const f = bridgePrior[b]! * before[b * cells + k]!, g = bridgePrior[b]! * behind[b * cells + k]!
        out[b * cells + k] = f * (right + g) + left * g
        left += f
        right += g
      }
    }
  }
}

/** The part of the total with a bridge between cylinders j and j+1. */
export function bridged({ forward, backward }: ChainSums, j: number, bridgePrior: Float64Array, cells: number): Float64Array {
  const out = new Float64Array(cells)
  const before = forward[j + 1]!, after = backward[j]!
  for (let b = 1; b * cells < before.length; b++) for (let k = 0; k < cells; k++) out[k]! += bridgePrior[b]! * before[b * cells + k]! * after[b * cells + k]!
  return out
}
