/** Nodes and weights (summing to one) of the Gauss-Legendre rule on [-1, 1]. */
export interface Nodes {
  readonly at: readonly number[]
  readonly weight: readonly number[]
}

/** Gauss-Legendre rule of so many points, by Newton's method on the Legendre polynomial; weights sum to one. */
export function gaussLegendre(points: number): Nodes {
  const at: number[] = []
  const weight: number[] = []
  for (let i = 0; i < points; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (points + 0.5))
    let slope = 1
    for (let step = 0; step < 50; step++) {
      let previous = 1
      let value = x
      for (let n = 2; n <= points; n++) [previous, value] = [value, ((2 * n - 1) * x * value - (n - 1) * previous) / n]
      slope = (points * (x * value - previous)) / (x * x - 1)
      const move = value / slope
      x -= move
      if (Math.abs(move) < 1e-15) break
    }
    at.push(x)
    weight.push(1 / ((1 - x * x) * slope * slope))
  }
  return { at, weight }
}
