/** A curve y = level (1 - exp(-rate x)) fitted by least squares. */
export interface BuildUp {
  readonly level: number
  readonly rate: number
  /** standard deviations of level and rate, from the residuals and the Jacobian at the answer */
  readonly levelSd: number
  readonly rateSd: number
  readonly residualSumOfSquares: number
  /** residual standard deviation, with two parameters taken off the degrees of freedom */
  readonly residualSd: number
}

/** Starting rates tried, as multiples of one over the largest x. */
const STARTS = 60

/**
 * Fits y = level (1 - exp(-rate x)), the form in which pressure builds up stroke by stroke.
 *
 * The level enters linearly, so it is eliminated (variable projection) and one equation in the rate is left, solved by Newton's
 * method with analytic derivatives inside the best bracket of a logarithmic scan: no start value can lead it astray.
 * Checked on Misra1a and BoxBOD (NIST Statistical Reference Datasets, certified values).
 *
 * @param x above zero (strokes: 1, 2, 3 ...) @param y as many values, in any unit
 * @returns null with fewer than three points, or where no rise flattens out (a straight line, all zero)
 */
export function fitBuildUp(x: readonly number[], y: readonly number[]): BuildUp | null {
  if (x.length < 3 || x.length !== y.length) return null
  const longest = Math.max(...x)
  const shortest = Math.min(...x)
  const scan = (index: number): number => (1e-3 / longest) * (30_000 * (longest / shortest)) ** (index / STARTS)
  let best = 0
  for (let index = 1; index <= STARTS; index++) {
    if (residuals(x, y, scan(index)).sum < residuals(x, y, scan(best)).sum) best = index
  }
  if (best === 0 || best === STARTS) return null
  let low = scan(best - 1)
  let high = scan(best + 1)
  let rate = scan(best)
  // Newton on the gradient of the projected sum of squares, kept inside the bracket by bisection
  for (let step = 0; step < 100; step++) {
    const gradient = projectedGradient(x, y, rate)
    if (gradient > 0) high = rate
    else low = rate
    const nudge = rate * 1e-6
    const curvature = (projectedGradient(x, y, rate + nudge) - projectedGradient(x, y, rate - nudge)) / (2 * nudge)
    let next = curvature > 0 ? rate - gradient / curvature : (low + high) / 2
    if (!(next > low && next < high)) next = (low + high) / 2
    if (Math.abs(next - rate) <= 1e-14 * rate) break
    rate = next
  }
  const { level, sum } = residuals(x, y, rate)
  if (!(level > 0)) return null
  return { level, rate, residualSumOfSquares: sum, ...spread(x, level, rate, sum) }
}

/**
 * The part of the final pressure that each stroke leaves unbuilt, from the first stroke and the last of `strokes`: each leaves the same part of
 * what the one before left, so that first / last = (1 - u) / (1 - u^strokes). One where the pressure rose in a straight line or steeper.
 */
export function unbuiltPart(first: number, last: number, strokes: number): number {
  const wanted = first / last
  if (!(wanted > 1 / strokes)) return 1
  // falls from 1 at u = 0 to 1 / strokes at u = 1
  let low = 0, high = 1
  while (high - low > 1e-9) {
    const u = (low + high) / 2
    if ((1 - u) / (1 - u ** strokes) > wanted) low = u
    else high = u
  }
  return (low + high) / 2
}

function residuals(x: readonly number[], y: readonly number[], rate: number): { level: number; sum: number } {
  let top = 0
  let bottom = 0
  for (let i = 0; i < x.length; i++) {
    const shape = -Math.expm1(-rate * x[i]!)
    top += shape * y[i]!
    bottom += shape * shape
  }
  const level = bottom > 0 ? top / bottom : 0
  let sum = 0
  for (let i = 0; i < x.length; i++) sum += (y[i]! + level * Math.expm1(-rate * x[i]!)) ** 2
  return { level, sum }
}

/** d/d(rate) of the projected sum of squares: by the envelope theorem only the direct derivative counts. */
function projectedGradient(x: readonly number[], y: readonly number[], rate: number): number {
  const { level } = residuals(x, y, rate)
  let gradient = 0
  for (let i = 0; i < x.length; i++) {
    const residual = y[i]! + level * Math.expm1(-rate * x[i]!)
    gradient -= 2 * residual * level * x[i]! * Math.exp(-rate * x[i]!)
  }
  return gradient
}

function spread(x: readonly number[], level: number, rate: number, sum: number): Pick<BuildUp, 'levelSd' | 'rateSd' | 'residualSd'> {
  let aa = 0
  let ab = 0
  let bb = 0
  for (const at of x) {
    const byLevel = -Math.expm1(-rate * at)
    const byRate = level * at * Math.exp(-rate * at)
    aa += byLevel * byLevel
    ab += byLevel * byRate
    bb += byRate * byRate
  }
  const residualSd = Math.sqrt(sum / Math.max(1, x.length - 2))
  const determinant = aa * bb - ab * ab
  return { residualSd, levelSd: residualSd * Math.sqrt(bb / determinant), rateSd: residualSd * Math.sqrt(aa / determinant) }
}
