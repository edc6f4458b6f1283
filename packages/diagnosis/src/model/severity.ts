/** Lower and upper end of the grid of losses: 2 percent, which no gauge tells from a sound cylinder; beyond what any prior expects. */
const LOSSES = [0.02, 15] as const
/** Lower and upper end of the grid of leaks in mm2: two percent lost on the reference tester; a hole. */
const LEAKS = [0.22, 200] as const
/** Step of the grids in their logarithm; the same hole scatters by about as much, so the sum is smooth. */
const STEP = 0.22
/** Points at which the share of a grid point is weighed. */
const PARTS = 1
/** How gradually a leak becomes one that a strip-down calls a fault (scale of a logistic in the logarithm). */
const LEAST_BLUR = 0.12

function geometric([low, high]: readonly [number, number], refine: number): Float64Array {
  const step = STEP / refine
  const count = Math.floor(Math.log(high / low) / step) + 1
  return Float64Array.from({ length: count }, (_, k) => low * Math.exp(k * step))
}

/** Grid of losses (natural logarithm of pressure); `refine` divides the step. */
export function lossGrid(refine: number): Float64Array {
  return geometric(LOSSES, refine)
}

/** Grid of leaks in mm2. */
export function leakGrid(refine: number): Float64Array {
  return geometric(LEAKS, refine)
}

/** Weights on the points of a geometric grid of a lognormal that fades out below `least`; they sum to one. */
export function sizeWeights(grid: ArrayLike<number>, { median, spread, least }: { readonly median: number; readonly spread: number; readonly least: number }): Float64Array {
  const weights = new Float64Array(grid.length)
  const step = Math.log(grid[1]! / grid[0]!)
  let sum = 0
  for (let k = 0; k < grid.length; k++) {
    // the mean over the point's share of the axis: where leaks begin to count is sharper than the step
    for (let part = 0; part < PARTS; part++) {
      const size = grid[k]! * Math.exp(((part + 0.5) / PARTS - 0.5) * step)
      const z = Math.log(size / median) / spread
      weights[k]! += Math.exp(-0.5 * z * z) / (1 + (least / size) ** (1 / LEAST_BLUR))
    }
    sum += weights[k]!
  }
  for (let k = 0; k < grid.length; k++) weights[k]! /= sum
  return weights
}
