import { fresh, type Take } from './room.ts'

/** Sums of a chain of cylinders under one gasket, for each cell of the grid. */
export interface ChainSums {
  /** The sum over all states of all cylinders and bridges of this gasket. */
  readonly total: Float64Array
  /** forward[j][b]: cylinders before j summed out, a bridge of level b between j-1 and j, its chance included. */
  readonly forward: readonly Float64Array[]
  /** backward[j][b]: cylinders from j+1 on, given a bridge of level b between j and j+1, its chance not included. */
  readonly backward: readonly Float64Array[]
}

/**
 * Forward-backward over the bridges of one gasket. `emissions[j]` holds the likelihood of cylinder j for each bridge level it
 * may feel ([level * cells + cell]); between neighbours stands a bridge of level b with chance `bridgePrior[b]`, b = 0 none; a
 * cylinder with bridges on both sides feels the greater. Levels are summed by running sums, so work grows with their number, not its square.
 */
export function sumChain(emissions: readonly Float64Array[], bridgePrior: Float64Array, cells: number, take: Take = fresh): ChainSums {
  const n = emissions.length
  const levels = bridgePrior.length
  const forward: Float64Array[] = [take(levels * cells)]
  forward[0]!.fill(1, 0, cells)
  for (let j = 1; j < n; j++) {
    const into = through(forward[j - 1]!, emissions[j - 1]!, null, levels, cells, j === 1, take)
    for (let b = 0; b < levels; b++) for (let k = b * cells; k < (b + 1) * cells; k++) into[k]! *= bridgePrior[b]!
    forward.push(into)
  }
  const backward: Float64Array[] = new Array(n)
  backward[n - 1] = take(levels * cells)
  backward[n - 1]!.fill(1, 0, cells)
  for (let j = n - 2; j >= 0; j--) backward[j] = through(backward[j + 1]!, emissions[j + 1]!, bridgePrior, levels, cells, j === n - 2, take)
  // nothing is behind the last: what is before it, times its own
  const total = take(cells)
  const before = forward[n - 1]!, last = emissions[n - 1]!
  for (let at = 0, k = 0; at < before.length; at++, k = k + 1 === cells ? 0 : k + 1) total[k]! += before[at]! * last[at]!
  return { total, forward, backward }
}

/** out[b] = sum over a of into[a] chance[a] own[max(a, b)], a null chance being one; `only`: only a = 0 can be, and its chance is in. */
function through(into: Float64Array, own: Float64Array, chance: Float64Array | null, levels: number, cells: number, only: boolean, take: Take): Float64Array {
  const out = take(levels * cells)
  if (only) {
    for (let b = 0; b < levels; b++) for (let k = 0; k < cells; k++) out[b * cells + k] = into[k]! * own[b * cells + k]!
    return out
  }
  for (let k = 0; k < cells; k++) {
    let above = 0
    for (let a = levels - 1; a >= 0; a--) {
      out[a * cells + k] = above
      above += (chance === null ? 1 : chance[a]!) * into[a * cells + k]! * own[a * cells + k]!
    }
    let upTo = 0
    for (let b = 0; b < levels; b++) {
      upTo += (chance === null ? 1 : chance[b]!) * into[b * cells + k]!
      out[b * cells + k]! += upTo * own[b * cells + k]!
    }
  }
  return out
}

/** All but cylinder j's own readings, by the bridge level it feels: written to `out`, as many levels as the sums have. */
export function around({ forward: ahead, backward: behind }: ChainSums, j: number, bridgePrior: Float64Array, cells: number, out: Float64Array): void {
  const forward = ahead[j]!, backward = behind[j]!
  const first = j === 0, last = j === ahead.length - 1
  const levels = forward.length / cells
  for (let k = 0; k < cells; k++) {
    let left = 0, right = 0
    for (let b = 0; b < levels; b++) {
      const f = first && b > 0 ? 0 : forward[b * cells + k]!
      const g = last ? (b === 0 ? backward[k]! : 0) : bridgePrior[b]! * backward[b * cells + k]!
      out[b * cells + k] = f * (right + g) + left * g
      left += f
      right += g
    }
  }
}

/** The part of the total with a bridge between cylinders j and j+1. */
export function bridged(sums: ChainSums, j: number, cells: number): Float64Array {
  const out = new Float64Array(cells)
  const before = sums.forward[j + 1]!, after = sums.backward[j]!
  for (let b = 1; b * cells < before.length; b++) for (let k = 0; k < cells; k++) out[k]! += before[b * cells + k]! * after[b * cells + k]!
  return out
}
