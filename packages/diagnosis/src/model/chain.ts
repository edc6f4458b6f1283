import { fresh, type Take } from './room.ts'

/** Sums of a chain of cylinders under one gasket, for each cell of the grid. */
export interface ChainSums {
  /** The sum over all states of all cylinders and bridges of this gasket. */
  readonly total: Float64Array
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
 */
export function sumChain(emissions: readonly Float64Array[], bridgePrior: Float64Array, cells: number, take: Take = fresh): ChainSums {
  const n = emissions.length
  const levels = bridgePrior.length
  const forward: (Float64Array | null)[] = [null], backward: (Float64Array | null)[] = [null]
  for (let j = 1; j < n; j++) forward.push(j === 1 ? emissions[0]! : through(forward[j - 1]!, emissions[j - 1]!, bridgePrior, cells, take))
  for (let j = n - 2; j >= 0; j--) backward.unshift(j === n - 2 ? emissions[n - 1]! : through(backward[0]!, emissions[j + 1]!, bridgePrior, cells, take))
  const total = take(cells)
  const before = forward[n - 1]!, last = emissions[n - 1]!
  if (before === null) total.set(last.subarray(0, cells))
  else for (let b = 0; b < levels; b++) for (let k = 0, at = b * cells; k < cells; k++, at++) total[k]! += bridgePrior[b]! * before[at]! * last[at]!
  return { total, forward, backward }
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
