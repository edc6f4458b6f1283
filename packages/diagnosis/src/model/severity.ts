/** Lower end of the grid of severities: a loss of 2 percent, which no gauge can tell from a sound cylinder. */
const LEAST_LOSS = 0.02
/** Upper end: about a fortieth of the pressure left. */
const MOST_LOSS = 3.7
/** Step of the grid in the logarithm of the loss; the same hole scatters by about as much, so the sum is smooth. */
const STEP = 0.26

/** Grid of losses (natural logarithm of pressure); `refine` divides the step. */
export function severityGrid(refine: number): Float64Array {
  const step = STEP / refine
  const count = Math.floor(Math.log(MOST_LOSS / LEAST_LOSS) / step) + 1
  return Float64Array.from({ length: count }, (_, k) => LEAST_LOSS * Math.exp(k * step))
}

/** Weights of a lognormal on the points of a geometric grid; they sum to one. */
export function lognormalWeights(grid: ArrayLike<number>, median: number, spread: number): Float64Array {
  const weights = new Float64Array(grid.length)
  let sum = 0
  for (let k = 0; k < grid.length; k++) {
    const z = Math.log(grid[k]! / median) / spread
    const w = Math.exp(-0.5 * z * z)
    weights[k] = w
    sum += w
  }
  for (let k = 0; k < grid.length; k++) weights[k]! /= sum
  return weights
}
