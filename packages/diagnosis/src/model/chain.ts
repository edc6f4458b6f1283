/** Sums of a chain of cylinders under one gasket, for each cell of the grid. */
export interface ChainSums {
  /** The sum over all states of all cylinders and bridges of this gasket. */
  readonly total: Float64Array
  /** For each cylinder in order: everything but its own readings, [bridge level at the cylinder * cells + cell]. */
  readonly around: readonly Float64Array[]
  /** For each neighbouring pair in order: the part of `total` with a bridge between them. */
  readonly bridged: readonly Float64Array[]
}

/**
 * Forward-backward over the bridges of one gasket. `emissions[j]` holds the likelihood of cylinder j for each bridge level it
 * may feel ([level * cells + cell]); between neighbours stands a bridge of level b with chance `bridgePrior[b]`, b = 0 none; a
 * cylinder with bridges on both sides feels the greater.
 */
export function sumChain(emissions: readonly Float64Array[], bridgePrior: Float64Array, cells: number): ChainSums {
  const n = emissions.length
  const levels = bridgePrior.length
  // forward[j][b]: cylinders before j summed out, bridge of level b between j-1 and j (its chance included)
  const forward = emissions.map(() => new Float64Array(levels * cells))
  // backward[j][b]: cylinders from j+1 on, given a bridge of level b between j and j+1 (its chance not included)
  const backward = emissions.map(() => new Float64Array(levels * cells))
  forward[0]!.fill(1, 0, cells)
  for (let j = 1; j < n; j++) {
    const before = forward[j - 1]!, into = forward[j]!, own = emissions[j - 1]!
    for (let right = 0; right < levels; right++) {
      const chance = bridgePrior[right]!
      for (let left = 0; left < (j === 1 ? 1 : levels); left++) {
        const feltAt = Math.max(left, right) * cells, leftAt = left * cells, rightAt = right * cells
        for (let k = 0; k < cells; k++) into[rightAt + k]! += chance * before[leftAt + k]! * own[feltAt + k]!
      }
    }
  }
  backward[n - 1]!.fill(1, 0, cells)
  for (let j = n - 2; j >= 0; j--) {
    const after = backward[j + 1]!, into = backward[j]!, own = emissions[j + 1]!
    for (let left = 0; left < levels; left++) {
      for (let right = 0; right < (j === n - 2 ? 1 : levels); right++) {
        const chance = j === n - 2 ? 1 : bridgePrior[right]!
        const feltAt = Math.max(left, right) * cells, leftAt = left * cells, rightAt = right * cells
        for (let k = 0; k < cells; k++) into[leftAt + k]! += chance * after[rightAt + k]! * own[feltAt + k]!
      }
    }
  }
  const around = emissions.map((_, j) => cavity(j, n, forward[j]!, backward[j]!, bridgePrior, cells))
  const total = new Float64Array(cells)
  const first = emissions[0]!
  for (let b = 0; b < levels; b++) for (let k = 0; k < cells; k++) total[k]! += around[0]![b * cells + k]! * first[b * cells + k]!
  const bridged = emissions.slice(1).map((_, j) => {
    const sum = new Float64Array(cells)
    for (let b = 1; b < levels; b++) for (let k = 0; k < cells; k++) sum[k]! += forward[j + 1]![b * cells + k]! * backward[j]![b * cells + k]!
    return sum
  })
  return { total, around, bridged }
}

function cavity(j: number, n: number, forward: Float64Array, backward: Float64Array, bridgePrior: Float64Array, cells: number): Float64Array {
  const levels = bridgePrior.length
  const out = new Float64Array(levels * cells)
  for (let left = 0; left < (j === 0 ? 1 : levels); left++) {
    for (let right = 0; right < (j === n - 1 ? 1 : levels); right++) {
      const chance = j === n - 1 ? 1 : bridgePrior[right]!
      const feltAt = Math.max(left, right) * cells, leftAt = left * cells, rightAt = right * cells
      for (let k = 0; k < cells; k++) out[feltAt + k]! += chance * forward[leftAt + k]! * backward[rightAt + k]!
    }
  }
  return out
}
