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
export function sumChain(emissions: readonly Float64Array[], bridgePrior: Float64Array, cells: number): ChainSums {
  const n = emissions.length
  const levels = bridgePrior.length
  const forward: Float64Array[] = [new Float64Array(levels * cells)]
  forward[0]!.fill(1, 0, cells)
  for (let j = 1; j < n; j++) {
    const into = through(forward[j - 1]!, emissions[j - 1]!, levels, cells, j === 1)
    for (let b = 0; b < levels; b++) for (let k = b * cells; k < (b + 1) * cells; k++) into[k]! *= bridgePrior[b]!
    forward.push(into)
  }
  const backward: Float64Array[] = new Array(n)
  backward[n - 1] = new Float64Array(levels * cells)
  backward[n - 1]!.fill(1, 0, cells)
  for (let j = n - 2; j >= 0; j--) {
    const last = j === n - 2
    const after = last ? backward[j + 1]! : backward[j + 1]!.slice()
    if (!last) for (let b = 0; b < levels; b++) for (let k = b * cells; k < (b + 1) * cells; k++) after[k]! *= bridgePrior[b]!
    backward[j] = through(after, emissions[j + 1]!, levels, cells, last)
  }
  const total = new Float64Array(cells)
  const around = cavity(forward[n - 1]!, backward[n - 1]!, bridgePrior, cells, n === 1, true)
  const last = emissions[n - 1]!
  for (let b = 0; b < levels; b++) for (let k = 0; k < cells; k++) total[k]! += around[b * cells + k]! * last[b * cells + k]!
  return { total, forward, backward }
}

/** out[b] = sum over a of into[a] own[max(a, b)]; `only`: only a = 0 can be. */
function through(into: Float64Array, own: Float64Array, levels: number, cells: number, only: boolean): Float64Array {
  const out = new Float64Array(levels * cells)
  if (only) {
    for (let b = 0; b < levels; b++) for (let k = 0; k < cells; k++) out[b * cells + k] = into[k]! * own[b * cells + k]!
    return out
  }
  for (let k = 0; k < cells; k++) {
    let above = 0
    for (let a = levels - 1; a >= 0; a--) {
      out[a * cells + k] = above
      above += into[a * cells + k]! * own[a * cells + k]!
    }
    let upTo = 0
    for (let b = 0; b < levels; b++) {
      upTo += into[b * cells + k]!
      out[b * cells + k]! += upTo * own[b * cells + k]!
    }
  }
  return out
}

/** All but cylinder j's own readings, by the bridge level it feels. */
export function around(sums: ChainSums, j: number, bridgePrior: Float64Array, cells: number): Float64Array {
  return cavity(sums.forward[j]!, sums.backward[j]!, bridgePrior.subarray(0, sums.forward[j]!.length / cells), cells, j === 0, j === sums.forward.length - 1)
}

function cavity(forward: Float64Array, backward: Float64Array, bridgePrior: Float64Array, cells: number, first: boolean, last: boolean): Float64Array {
  const levels = bridgePrior.length
  const out = new Float64Array(levels * cells)
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
  return out
}

/** The part of the total with a bridge between cylinders j and j+1. */
export function bridged(sums: ChainSums, j: number, cells: number): Float64Array {
  const out = new Float64Array(cells)
  const before = sums.forward[j + 1]!, after = sums.backward[j]!
  for (let b = 1; b * cells < before.length; b++) for (let k = 0; k < cells; k++) out[k]! += before[b * cells + k]! * after[b * cells + k]!
  return out
}
