/** Coefficients of the rational approximations of W. J. Cody (1969), good to about 1e-15 relative. */
const A = [2.2352520354606839287, 161.02823106855587881, 1067.6894854603709582, 18154.981253343561249, 0.065682337918207449113] as const
const B = [47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956] as const
const C = [
  0.39894151208813466764, 8.8831497943883759412, 93.506656132177855979, 597.27027639480026226, 2494.5375852903726711,
  6848.1904505362823326, 11602.651437647350124, 9842.7148383839780218, 1.0765576773720192317e-8,
] as const
const D = [
  22.266688044328115691, 235.38790178262499861, 1519.377599407554805, 6485.558298266760755, 18615.571640885098091,
  34900.952721145977266, 38912.003286093271411, 19685.429676859990727,
] as const
const INNER = 0.67448975
const OUTER = Math.sqrt(32)
const SQRT_2_PI = Math.sqrt(2 * Math.PI)

/** Density of the standard normal distribution. */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / SQRT_2_PI
}

/** Probability that a standard normal value is at most z. Exact to about 1e-15; 0 and 1 at the infinities. */
export function normalBelow(z: number): number {
  const y = Math.abs(z)
  if (y <= INNER) {
    const square = z * z
    let top = A[4] * square
    let bottom = square
    for (let i = 0; i < 3; i++) {
      top = (top + A[i]!) * square
      bottom = (bottom + B[i]!) * square
    }
    return 0.5 + (z * (top + A[3])) / (bottom + B[3])
  }
  const tail = y <= OUTER ? middleTail(y) : farTail(y)
  return z > 0 ? 1 - tail : tail
}

function middleTail(y: number): number {
  let top = C[8] * y
  let bottom = y
  for (let i = 0; i < 7; i++) {
    top = (top + C[i]!) * y
    bottom = (bottom + D[i]!) * y
  }
  return (Math.exp(-0.5 * y * y) * (top + C[7])) / (bottom + D[7])
}

/** Continued fraction of the tail, converging fast this far out. */
function farTail(y: number): number {
  let fraction = y
  for (let k = 20; k >= 1; k--) fraction = y + k / fraction
  return Number.isFinite(y) ? normalDensity(y) / fraction : 0
}
