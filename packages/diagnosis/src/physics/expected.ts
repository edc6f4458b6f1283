import type { Conditions, EngineDescription } from '@evenbore/contract'
import { dynamicRatio } from './geometry.ts'

/** A number with its standard deviation. */
interface Spread {
  readonly mean: number
  readonly sd: number
}

/** What geometry leaves open, each with its basis. */
const ASSUMED = {
  /** usually 1.2 to 1.3 while cranking (encyclopedia worked calculation, computed row W3); heat loss at starter speed keeps it there */
  exponent: { mean: 1.25, sd: 0.03 },
  /** diesel: hotter wall, tighter clearance; from memory */
  exponentDiesel: { mean: 1.26, sd: 0.03 },
  /** crank degrees after bottom dead centre where the maker's figure is unknown; from memory */
  intakeCloses: { mean: 50, sd: 10 },
  intakeClosesDiesel: { mean: 38, sd: 8 },
  /** rod length over crank radius where the rod is unknown; from memory */
  rodRatio: { mean: 3.5, sd: 0.35 },
  /** part of the air that gets past an open throttle at starter speed; from memory */
  filling: { mean: 0.97, sd: 0.03 },
  /** a closed throttle starves the engine, how much depends on its leaks; from memory */
  fillingClosed: { mean: 0.7, sd: 0.15 },
  /** starter speed and what each percent of it does: 160 rpm reads 6 to 8 percent below 200, 250 as much above (rough calculation, from memory) */
  rpm: { mean: 200, sd: 30 },
  speedPower: 0.3,
  /** a measured speed is not worse than not knowing it, relative */
  mostSpeedSpread: 0.15,
  /** a cold engine: thick oil seals, metal takes more heat; from memory */
  cold: { mean: 0.96, sd: 0.04 },
  warm: { mean: 0.98, sd: 0.03 },
  /** 4 ml before the check valve on 400 cm3 cost 8 percent (rough calculation, from memory) */
  volumeLoss: 8,
  /** a camshaft that is not the standard one, relative; from memory */
  otherCam: 0.1,
  /** side valves: 60 to 100 psi may be sound; from memory */
  sideValveDegrees: { mean: 60, sd: 15 },
} as const

/** An engine of absurd measures gets a wide window, not an endless one; and no gauge reads past 10 MPa. */
const WIDEST_LOG_SD = 0.6
const HIGHEST_PA = 10e6

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
 * What sound cylinders should show on a gauge while cranking: pa ((r_dynamic)^n filling) - pa, with the exponent, valve timing,
 * rod, filling and cranking speed as distributions that are propagated to first order in the logarithm.
 * An honest window, never a pass or fail: evenness outranks it.
 *
 * @param airPa absolute air pressure at the station
 * @param volumeBeforeValveMl volume between cylinder and the gauge's check valve, null if unknown
 * @returns null without a compression ratio
 */
export function expectedLevel(engine: EngineDescription, conditions: Conditions, airPa: number, volumeBeforeValveMl: number | null): ExpectedLevel | null {
  const rc = engine.compressionRatio
  if (rc === undefined) return null
  const diesel = engine.fuel === 'diesel'
  const exponent: Spread = diesel ? ASSUMED.exponentDiesel : ASSUMED.exponent
  const closesAssumed = engine.valveGear === 'side' ? ASSUMED.sideValveDegrees : diesel ? ASSUMED.intakeClosesDiesel : ASSUMED.intakeCloses
  const closes: Spread = engine.intakeClosesDegAbdc === undefined ? closesAssumed : { mean: engine.intakeClosesDegAbdc, sd: 2 }
  const rodKnown = engine.rodLengthMm !== undefined && engine.strokeMm !== undefined
  const rod: Spread = rodKnown ? { mean: (2 * engine.rodLengthMm!) / engine.strokeMm!, sd: 0 } : ASSUMED.rodRatio
  const filling: Spread = conditions.throttle === 'closed' && !diesel ? ASSUMED.fillingClosed : ASSUMED.filling
  const rpm: Spread = conditions.crankingRpm === undefined ? ASSUMED.rpm : { mean: conditions.crankingRpm, sd: 5 }
  const temper: Spread = conditions.engine === 'cold' ? ASSUMED.cold : conditions.engine === 'warm' ? ASSUMED.warm : { mean: 1, sd: 0 }

  const logAbsolute = (n: number, deg: number, R: number): number => n * Math.log(dynamicRatio(rc, R, deg))
  const middle = logAbsolute(exponent.mean, closes.mean, rod.mean)
  const slopes = [
    logAbsolute(exponent.mean + exponent.sd, closes.mean, rod.mean) - middle,
    logAbsolute(exponent.mean, closes.mean + closes.sd, rod.mean) - middle,
    logAbsolute(exponent.mean, closes.mean, rod.mean + rod.sd) - middle,
    filling.sd / filling.mean,
    temper.sd / temper.mean,
    ASSUMED.speedPower * Math.min(rpm.sd / rpm.mean, ASSUMED.mostSpeedSpread),
    engine.camshaft === 'other' ? ASSUMED.otherCam : 0,
  ]
  const speed = Math.min(1.2, Math.max(0.5, (rpm.mean / ASSUMED.rpm.mean) ** ASSUMED.speedPower))
  const sweptCm3 = engine.boreMm && engine.strokeMm ? ((Math.PI / 4) * engine.boreMm ** 2 * engine.strokeMm) / 1000 : null
  const volume = volumeBeforeValveMl !== null && sweptCm3 !== null ? Math.exp(-(ASSUMED.volumeLoss * volumeBeforeValveMl) / sweptCm3) : 1
  const absolute = airPa * Math.exp(middle) * filling.mean * temper.mean * speed * volume
  const absoluteLogSd = Math.hypot(...slopes)
  const medianPa = Math.max(absolute - airPa, 0.05 * airPa)
  const logSd = Math.min((absoluteLogSd * absolute) / medianPa, WIDEST_LOG_SD)
  const z95 = 1.644854
  const gaugeOf = (absolutePa: number): number => Math.min(HIGHEST_PA, Math.max(0, absolutePa - airPa))
  return {
    medianPa,
    logSd,
    lowPa: gaugeOf(absolute * Math.exp(-z95 * absoluteLogSd)),
    highPa: gaugeOf(absolute * Math.exp(z95 * absoluteLogSd)),
    basis: basisOf(engine, rodKnown, conditions),
  }
}

function basisOf(engine: EngineDescription, rodKnown: boolean, conditions: Conditions): string {
  const assumed = [
    engine.intakeClosesDegAbdc === undefined ? 'intake closing' : '',
    rodKnown ? '' : 'rod length',
    conditions.crankingRpm === undefined ? 'cranking speed' : '',
  ].filter(Boolean)
  const open = assumed.length > 0 ? `; assumed from memory: ${assumed.join(', ')}` : ''
  return `slider-crank volume at intake closing, polytropic exponent 1.2 to 1.3, station air pressure${open}. A window, not a limit: evenness counts more`
}
