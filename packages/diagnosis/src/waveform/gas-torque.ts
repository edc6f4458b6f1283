import { volumeRatio } from '../physics/geometry.ts'
import { flowFunction } from '../physics/nozzle.ts'

/** Degrees of one engine cycle of a four-stroke. */
export const CYCLE_DEG = 720

/** What one cylinder asks of the starter over an engine cycle. */
export interface LoadCurve {
  /** peak pressure (gauge) over that of a sound cylinder */
  readonly relative: number
  /** torque by degree, 0 at firing top: above zero where the piston compresses, below it where the air pushes back */
  readonly load: Float64Array
}

/** A usual engine (from memory): only the shape of the curve counts, and that hardly changes with them. Air that has given heat to the walls falls off faster. */
const USUAL = { compressionRatio: 9, rodRatio: 3.5, intakeClosesDegAbdc: 45, exhaustOpensDegBbdc: 50, exponent: 1.3, exponentBack: 1.37 } as const
/** Leaks tried, as flow for each radian over the clearance volume; the first is that of a sound cylinder, which loses a tenth of its peak. */
const SOUND_LEAK = 0.01
const LEAKS = Array.from({ length: 28 }, (_, k) => SOUND_LEAK * 1.35 ** k)
const STEPS_PER_DEG = 2
/** Steps of `relative` from nothing to the most. */
const STEPS = 24
/** Most that a cylinder may compress, against a sound one. */
export const MOST_RELATIVE = 1.2

/**
 * Torque of the air in one cylinder while the starter turns it, for cylinders that lose more and more of it: a leak lowers the peak, and
 * what has escaped does not push the piston down again.
 *
 * @returns curves at equal steps of `relative` from 0 (no compression at all) to 1.2
 */
export function loadCurves(): readonly LoadCurve[] {
  const found = [0, ...LEAKS].map(strokeWith)
  const sound = found[1]!.peak
  // from the greatest leak to none; beyond the greatest there is nothing left
  const known = [{ relative: 0, load: new Float64Array(CYCLE_DEG) }, ...found.reverse().map(({ peak, load }) => ({ relative: peak / sound, load }))]
  return Array.from({ length: STEPS + 1 }, (_, k) => {
    const relative = (MOST_RELATIVE * k) / STEPS
    const above = Math.max(1, known.findIndex((each) => each.relative >= relative))
    const [low, high] = relative > known.at(-1)!.relative ? known.slice(-2) as [LoadCurve, LoadCurve] : [known[above - 1]!, known[above]!]
    const part = (relative - low.relative) / (high.relative - low.relative)
    return { relative, load: low.load.map((torque, i) => torque + part * (high.load[i]! - torque)) }
  })
}

/** Peak pressure (gauge, in airs) and torque by degree of a cylinder that leaks so much; intake and exhaust strokes ask for nothing. */
function strokeWith(leak: number): { peak: number; load: Float64Array } {
  const { compressionRatio, rodRatio, intakeClosesDegAbdc, exhaustOpensDegBbdc, exponent, exponentBack } = USUAL
  const from = -(180 - intakeClosesDegAbdc), to = 180 - exhaustOpensDegBbdc
  const startRatio = volumeRatio(from, compressionRatio, rodRatio)
  const load = new Float64Array(CYCLE_DEG)
  const radian = Math.PI / 180 / STEPS_PER_DEG
  let logMass = 0, peak = 0
  for (let step = 0; step < (to - from) * STEPS_PER_DEG; step++) {
    const deg = from + (step + 0.5) / STEPS_PER_DEG
    const ratio = volumeRatio(deg, compressionRatio, rodRatio)
    const squeeze = startRatio / ratio
    const pressure = squeeze ** exponent * (deg > 0 ? (squeeze / startRatio) ** (exponentBack - exponent) : 1) * Math.exp(logMass)
    const speed = (leak * squeeze ** ((exponent - 1) / 2)) / ratio
    logMass += radian * (pressure > 1 ? -speed * flowFunction(1 / pressure) : (speed * flowFunction(pressure)) / pressure)
    peak = Math.max(peak, pressure - 1)
    const perRadian = (volumeRatio(deg + 0.5, compressionRatio, rodRatio) - volumeRatio(deg - 0.5, compressionRatio, rodRatio)) * (180 / Math.PI)
    load[((Math.floor(deg) % CYCLE_DEG) + CYCLE_DEG) % CYCLE_DEG]! -= ((pressure - 1) * perRadian) / STEPS_PER_DEG
  }
  return { peak, load }
}
