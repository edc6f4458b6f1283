/** Lower and upper end of the grid of losses: 2 percent, which no gauge tells from a sound cylinder; beyond what any prior expects. */
const LOSSES = [0.02, 15] as const
/** Lower and upper end of the grid of leaks in mm2: two percent lost on the reference tester; a hole. */
const LEAKS = [0.22, 200] as const
/** The same of leaks between two cylinders of a bridged pair: below, nobody calls it one; above, neither cylinder holds anything. */
const BRIDGES = [0.29, 35.3] as const
/** Step of the grids in their logarithm; the same hole scatters by about as much, so the sum is smooth. */
const STEP = 0.22
/** Of bridges, which every cell of the grid is summed over again. */
const BRIDGE_STEP = 0.24
/** How gradually a leak becomes one that a strip-down calls a fault (scale of a logistic in the logarithm): no sharper than the step can follow. */
const LEAST_BLUR = 0.12

function geometric([low, high]: readonly [number, number], step: number): Float64Array {
  const count = Math.floor(Math.log(high / low) / step) + 1
  return Float64Array.from({ length: count }, (_, k) => low * Math.exp(k * step))
}

/** Grid of losses (natural logarithm of pressure); `refine` divides the step. */
export function lossGrid(refine: number): Float64Array {
  return geometric(LOSSES, STEP / refine)
}

/** Grid of leaks in mm2. */
export function leakGrid(refine: number): Float64Array {
  return geometric(LEAKS, STEP / refine)
}

/** Grid of leaks between two cylinders in mm2. */
export function bridgeGrid(refine: number): Float64Array {
  return geometric(BRIDGES, BRIDGE_STEP / refine)
}

/**
 * Weights on the points of a geometric grid of a lognormal that fades out below `least`; they sum to one. The density at each point: of what is smooth a
 * plain sum over points is good to all but the last digits, means over a point's share of the axis are not.
 */
export function sizeWeights(grid: ArrayLike<number>, { median, spread, least }: { readonly median: number; readonly spread: number; readonly least: number }): Float64Array {
  const weights = Float64Array.from(grid, (size) => Math.exp(-0.5 * (Math.log(size / median) / spread) ** 2) / (1 + (least / size) ** (1 / LEAST_BLUR)))
  const sum = weights.reduce((total, w) => total + w, 0)
  return weights.map((w) => w / sum)
}
