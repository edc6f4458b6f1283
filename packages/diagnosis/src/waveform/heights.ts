import { foldCycles } from './fold.ts'
import { humpFits } from './hump-fit.ts'
import { type EvenTrace, medianOf, swing, withoutTrend } from './resample.ts'
import type { Rhythm } from './rhythm.ts'
import { torqueFits } from './torque-fit.ts'

/** Compression of the cylinders of one engine cycle, by place (hump number modulo the number of cylinders), each against the others. */
export interface Heights {
  readonly heights: readonly number[]
  /** standard deviation of each height */
  readonly scatters: readonly number[]
  /** where the crests stand against whole hump numbers: 0, or a half where the clamp was the wrong way round */
  readonly shift: number
  /** whole engine cycles in the trace */
  readonly cycles: number
  /** part of the folded cycle's variance that the heights leave unexplained */
  readonly misfit: number
}

/** One way to explain a folded cycle. */
export interface Fit {
  readonly heights: readonly number[]
  readonly scatters: readonly number[]
  /** sum of squares left */
  readonly residual: number
}

/** How much the starter slows under its usual load, as part of its speed: what is tried. */
const LEADS = [0, 0.04, 0.08, 0.12, 0.16]
/** No way to explain it is the true one, so residuals count for less than noise alone would make them: part of the log-likelihood. */
const TEMPER = 0.5
/** Part of a cycle that may be missing from the last one. */
const CYCLE_SLACK = 0.3
/** Part of the swings that may be left where nothing else need be tried. */
export const WELL_EXPLAINED = 0.03
/** A clamp the wrong way round turns humps into dips: the other way than the level suggests is believed only when it fits so much better. */
const TURNED_FITS = 0.7
/** A level below zero by so many swings suggests a turned clamp. */
const TURNED_SWINGS = 3

/**
 * How much each cylinder compresses, from its engine cycles laid over each other: explained by the torque of the air in the cylinders, which the
 * current follows through the flywheel, and by plain humps as high as the cylinders compress. What fits best counts, averaged with others about as good.
 */
export function humpHeights(trace: EvenTrace, rhythm: Rhythm, cylinders: number): Heights {
  const { values, step } = trace
  const { humpsPerSecond, drift } = rhythm
  const last = (values.length - 1) * step, humps = (humpsPerSecond + (drift / 2) * last) * last
  const plain = foldCycles(trace, rhythm, cylinders)
  const swings = plain.sums.reduce((sum, value, bin) => sum + (plain.counts[bin]! > 0 ? value * value / plain.counts[bin]! : 0), 0)
  const level = medianOf(values), turned = level < -TURNED_SWINGS * swing(withoutTrend(values))
  let best: (Fit & { readonly sign: 1 | -1 }) | null = null
  for (const sign of turned ? ([-1, 1] as const) : ([1, -1] as const)) {
    // what is explained as well as that and lies above zero is not turned
    if (best && level > 0 && best.residual < WELL_EXPLAINED * swings) break
    const fits = [...humpFits(plain, cylinders, sign), ...LEADS.flatMap((lead) => torqueFits(lead === 0 ? plain : foldCycles(trace, rhythm, cylinders, sign * lead), cylinders, sign))]
    const fit = together(fits, plain.noise, plain.sums.length - cylinders - 1)
    if (fit && (!best || fit.residual < TURNED_FITS * best.residual)) best = { ...fit, sign }
  }
  return {
    heights: best?.heights ?? [], scatters: best?.scatters ?? [],
    shift: best?.sign === -1 ? 0.5 : 0, cycles: Math.floor(humps / cylinders + CYCLE_SLACK),
    misfit: best === null ? 1 : best.residual / swings,
  }
}

/** The mean of all fits by how well they fit, heights on one scale; how the good ones differ widens the scatter. */
function together(fits: readonly Fit[], noise: number, freedom: number): Fit | null {
  const best = fits.reduce<Fit | null>((found, each) => (!found || each.residual < found.residual ? each : found), null)
  if (!best) return null
  const variance = Math.max(noise * noise, best.residual / freedom, 1e-12)
  const weights = fits.map(({ residual }) => Math.exp((-TEMPER * (residual - best.residual)) / (2 * variance)))
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  const scale = ({ heights }: Fit): number => heights.reduce((sum, height) => sum + height, 0) / heights.length
  const mean = (of: (fit: Fit) => number): number => fits.reduce((sum, fit, index) => sum + weights[index]! * of(fit), 0) / total
  const heights = best.heights.map((_, place) => mean((fit) => fit.heights[place]! / scale(fit)))
  return {
    ...best,
    heights,
    scatters: best.scatters.map((scatter, place) => Math.hypot(scatter / scale(best), Math.sqrt(mean((fit) => (fit.heights[place]! / scale(fit) - heights[place]!) ** 2)))),
  }
}
