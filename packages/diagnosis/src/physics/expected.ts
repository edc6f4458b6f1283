import type { Conditions, EngineDescription } from '@evenbore/contract'
import { displacementCm3, dynamicRatio } from './geometry.ts'

/** A number with its standard deviation. */
interface Spread {
  readonly mean: number
  readonly sd: number
}

/** What geometry leaves open, each with its basis. */
const ASSUMED = {
  /** usually 1.2 to 1.3 while cranking (encyclopedia worked calculation, computed row W3); heat loss at starter speed keeps it there */
  exponent: { mean: 1.25, sd: 0.03 },
  /** diesel: more heat is lost where more is made; ratios of 17 to 22 then read 360 to 500 psi, as diesels do; from memory */
  exponentDiesel: { mean: 1.2, sd: 0.035 },
  /** crank degrees after bottom dead centre where the maker's figure is unknown; from memory */
  intakeCloses: { mean: 50, sd: 10 },
  intakeClosesDiesel: { mean: 38, sd: 8 },
  /** in its last degrees the valve lets hardly anything back: 15 degrees later cost 8 percent, 30 cost 19, 15 earlier gain 6 (rough calculation, from memory) */
  lastDegrees: 16,
  /** rod length over crank radius where the rod is unknown; from memory */
  rodRatio: { mean: 3.5, sd: 0.35 },
  /** part of the air that gets past an open throttle at starter speed; from memory */
  filling: { mean: 0.97, sd: 0.03 },
  /** a closed throttle starves the engine, how much depends on its leaks; from memory */
  fillingClosed: { mean: 0.7, sd: 0.15 },
  /** starter speed and what each percent of it does: 160 rpm reads 6 to 8 percent below 200, 250 as much above (rough calculation, from memory) */
  rpm: { mean: 200, sd: 30 },
  /** part of that with the other plugs left in; from memory */
  plugsIn: 0.87,
  speedPower: 0.3,
  /** a measured speed is not worse than not knowing it, relative */
  mostSpeedSpread: 0.15,
  /** a cold engine: thick oil seals, metal takes more heat; from memory */
  cold: { mean: 0.96, sd: 0.04 },
  warm: { mean: 0.98, sd: 0.03 },
  /** 4 ml before the check valve on 400 cm3 cost 8 percent (rough calculation, from memory) */
  volumeLoss: 8,
  /** ml before the check valve where nobody measured them; from memory */
  volumeMl: { mean: 2, sd: 1.2 },
  /** what a sound leak of .25 mm2 costs, by cm3: .86 mm2 cost 18 percent on 400, 40 on 150, 9 on 785 (rough calculation, from memory) */
  soundLeakLoss: 23,
  /** cm3 of one cylinder where bore or stroke is unknown, and its relative spread; from memory */
  sweptCm3: { mean: 420, relative: 0.35 },
  /** ml of hose and gauge behind the check valve: the first stroke then brings about two thirds on 400 cm3 at ratio 9; from memory */
  hoseMl: 27,
  /** how far the part that each stroke leaves unbuilt may be from what hose and clearance volume give; from memory */
  unbuiltSd: 0.1,
  /** a camshaft that is not the standard one, relative; from memory */
  otherCam: 0.1,
  /** side valves: 60 to 100 psi may be sound; from memory */
  sideValveDegrees: { mean: 60, sd: 15 },
} as const

/** An engine of absurd measures gets a wide window, not an endless one; and no gauge reads past 10 MPa. */
const WIDEST_LOG_SD = 0.6
const HIGHEST_PA = 10e6

/** Logarithm of the part of the final pressure that so many strokes have built up, and its standard deviation. */
export interface BuiltUp {
  readonly log: number
  readonly sd: number
}

/** The healthy compression level that geometry and conditions lead one to expect. Gauge pressure, pascal. */
export interface ExpectedLevel {
  readonly medianPa: number
  /** standard deviation of the natural logarithm */
  readonly logSd: number
  /** 5th and 95th percentile */
  readonly lowPa: number
  readonly highPa: number
  readonly basis: string
}

/**
 * What sound cylinders should show on a gauge while cranking: pa ((r_dynamic)^n filling) - pa, less what a sound leak and the gauge's own
 * volume cost a cylinder of this size and what so many strokes leave unbuilt; exponent, valve timing, rod, filling, size, volume and
 * cranking speed are distributions that are propagated to first order in the logarithm.
 * An honest window, never a pass or fail: evenness outranks it.
 *
 * @param airPa absolute air pressure at the station
 * @param volumeBeforeValveMl volume between cylinder and the gauge's check valve, null if unknown (then assumed)
 * @param measured how far the strokes built the pressure up, where it was noted; null: by the number of strokes, and what hose and clearance volume let each bring
 * @returns null without a compression ratio
 */
export function expectedLevel(engine: EngineDescription, conditions: Conditions, airPa: number, volumeBeforeValveMl: number | null, measured: BuiltUp | null = null): ExpectedLevel | null {
  const rc = engine.compressionRatio
  if (rc === undefined) return null
  const diesel = engine.fuel === 'diesel'
  const exponent: Spread = diesel ? ASSUMED.exponentDiesel : ASSUMED.exponent
  const closesAssumed = engine.valveGear === 'side' ? ASSUMED.sideValveDegrees : diesel ? ASSUMED.intakeClosesDiesel : ASSUMED.intakeCloses
  const closes: Spread = engine.intakeClosesDegAbdc === undefined ? closesAssumed : { mean: engine.intakeClosesDegAbdc, sd: 2 }
  const rodKnown = engine.rodLengthMm !== undefined && engine.strokeMm !== undefined
  const rod: Spread = rodKnown ? { mean: (2 * engine.rodLengthMm!) / engine.strokeMm!, sd: 0 } : ASSUMED.rodRatio
  const filling: Spread = conditions.throttle === 'closed' && !diesel ? ASSUMED.fillingClosed : ASSUMED.filling
  const unknownRpm: Spread = conditions.plugsOut === 'one' ? { mean: ASSUMED.plugsIn * ASSUMED.rpm.mean, sd: ASSUMED.rpm.sd } : ASSUMED.rpm
  const rpm: Spread = conditions.crankingRpm === undefined ? unknownRpm : { mean: conditions.crankingRpm, sd: 5 }
  const temper: Spread = conditions.engine === 'cold' ? ASSUMED.cold : conditions.engine === 'warm' ? ASSUMED.warm : { mean: 1, sd: 0 }

  const swept: Spread = engine.boreMm && engine.strokeMm ? { mean: displacementCm3(engine.boreMm, engine.strokeMm), sd: 0 } : { mean: ASSUMED.sweptCm3.mean, sd: ASSUMED.sweptCm3.relative * ASSUMED.sweptCm3.mean }
  const volumeMl: Spread = volumeBeforeValveMl === null ? ASSUMED.volumeMl : { mean: volumeBeforeValveMl, sd: 0 }
  const smallness = (ASSUMED.soundLeakLoss + ASSUMED.volumeLoss * volumeMl.mean) / swept.mean
  const built = measured ?? builtBy(conditions.strokes, swept.mean / Math.max(1, rc - 1))

  const logAbsolute = (n: number, deg: number, R: number): number => n * Math.log(dynamicRatio(rc, R, Math.max(0, deg - ASSUMED.lastDegrees)))
  const middle = logAbsolute(exponent.mean, closes.mean, rod.mean)
  const slopes = [
    logAbsolute(exponent.mean + exponent.sd, closes.mean, rod.mean) - middle,
    logAbsolute(exponent.mean, closes.mean + closes.sd, rod.mean) - middle,
    logAbsolute(exponent.mean, closes.mean, rod.mean + rod.sd) - middle,
    filling.sd / filling.mean,
    temper.sd / temper.mean,
    ASSUMED.speedPower * Math.min(rpm.sd / rpm.mean, ASSUMED.mostSpeedSpread),
    engine.camshaft === 'other' ? ASSUMED.otherCam : 0,
    smallness * swept.sd / swept.mean,
    ASSUMED.volumeLoss * volumeMl.sd / swept.mean,
  ]
  const speed = Math.min(1.2, Math.max(0.5, (rpm.mean / ASSUMED.rpm.mean) ** ASSUMED.speedPower))
  const absolute = airPa * Math.exp(middle - smallness) * filling.mean * temper.mean * speed
  const full = Math.max(absolute - airPa, 0.05 * airPa)
  const absoluteLogSd = Math.hypot(...slopes, (built.sd * full) / absolute)
  const medianPa = full * Math.exp(built.log)
  const logSd = Math.min((absoluteLogSd * absolute) / full, WIDEST_LOG_SD)
  const z95 = 1.644854
  // the needle starts at air pressure: what is not built up is missing from what stands above it
  const gaugeOf = (absolutePa: number): number => Math.min(HIGHEST_PA, Math.max(0, absolutePa - airPa) * Math.exp(built.log))
  return {
    medianPa,
    logSd,
    lowPa: gaugeOf(absolute * Math.exp(-z95 * absoluteLogSd)),
    highPa: gaugeOf(absolute * Math.exp(z95 * absoluteLogSd)),
    basis: basisOf(engine, rodKnown, conditions, volumeBeforeValveMl !== null, measured !== null),
  }
}

/** What so many strokes build up where nobody noted it: each fills hose and gauge by the part that the clearance volume (ml) is of both. */
export function builtBy(strokes: number | undefined, clearanceMl: number): BuiltUp {
  if (strokes === undefined) return { log: 0, sd: 0 }
  const unbuilt = ASSUMED.hoseMl / (ASSUMED.hoseMl + clearanceMl)
  const log = (left: number): number => Math.log1p(-(Math.min(left, MOST_UNBUILT) ** Math.max(1, strokes)))
  return { log: log(unbuilt), sd: log(unbuilt) - log(unbuilt + ASSUMED.unbuiltSd) }
}

/** A stroke that brings next to nothing is no stroke. */
const MOST_UNBUILT = 0.9

function basisOf(engine: EngineDescription, rodKnown: boolean, conditions: Conditions, volumeKnown: boolean, strokesNoted: boolean): string {
  const assumed = [
    engine.intakeClosesDegAbdc === undefined ? 'intake closing' : '',
    rodKnown ? '' : 'rod length',
    conditions.crankingRpm === undefined ? 'cranking speed' : '',
    engine.boreMm && engine.strokeMm ? '' : 'size of the cylinder',
    volumeKnown ? '' : 'volume before the check valve',
  ].filter(Boolean)
  const open = assumed.length > 0 ? `; assumed from memory: ${assumed.join(', ')}` : ''
  return `slider-crank volume at intake closing, polytropic exponent ${engine.fuel === 'diesel' ? 'about 1.2' : '1.2 to 1.3'}, station air pressure${strokesNoted ? ', built up as far as the strokes noted show' : ''}${open}. A window, not a limit: evenness counts more`
}
