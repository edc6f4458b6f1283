import { crank } from '../physics/cranking.ts'
import { sweptVolumeM3 } from '../physics/slider-crank.ts'
import type { Cylinder, Engine } from '../population/engine.ts'
import type { FaultEffect } from '../population/faults.ts'
import { bridgedMm2, type Leaks } from './leaks.ts'
import type { SimulatedSession } from './visit.ts'

export type RunSetting = {
  readonly speedRpm: number
  readonly strokes: number
  /** Pressure of the charge as a share of the air's. */
  readonly fill: number
  readonly chargeTempK: number
  /** Oil that takes room in the chamber. */
  readonly oilM3: number
  readonly leftInGaugePa: number
  readonly shows: (effect: FaultEffect) => boolean
  /** A plug in place of the gauge: the stroke is followed until the exhaust opens. */
  readonly follow?: (degAtdc: number, pressurePa: number) => void
}

const WALL_TEMP_K = { hot: 358, warm: 330 } as const
const MM2 = 1e-6
const NO_GAUGE = { volumeBeforeValveM3: 0, volumeAfterValveM3: 1e-6, valveAreaM2: 0, liftPressurePa: 0 } as const
/** From memory. */
const EXHAUST_OPENS_DEG_ATDC = 130

export function wallTempK(session: SimulatedSession): number {
  return session.temperature === 'cold' ? session.airTempK : WALL_TEMP_K[session.temperature]
}

/** Charge temperature at intake closing: air warmed on its way in (shares from memory). */
export function chargeTempK(session: SimulatedSession): number {
  return session.airTempK + 0.6 * Math.max(0, wallTempK(session) - session.airTempK) + 3
}

/** True gauge pressures after each stroke for one cylinder in this setting, in Pa. */
export function runCylinder(
  engine: Engine,
  cylinder: Cylinder,
  session: SimulatedSession,
  leaks: Leaks,
  setting: RunSetting,
): Float64Array {
  const { design, cause } = engine
  const base = { boreM: design.boreM, strokeM: design.strokeM, rodM: design.rodM, clearanceM3: 0 }
  const clearance = sweptVolumeM3(base) / (design.compressionRatio - 1)
  let scale = cylinder.clearanceScale
  let fill = setting.fill
  for (const effect of cylinder.faults) {
    if (!setting.shows(effect)) continue
    scale *= effect.clearanceScale
    fill = Math.min(fill, fill * effect.fill + residualFill(design.compressionRatio) * (1 - effect.fill))
  }
  const closes = design.intakeClosesDegAbdc + (cause.intakeShiftDeg.get(cylinder.number) ?? 0)
  return crank({
    geometry: { ...base, clearanceM3: Math.max(0.25 * clearance, clearance * scale - setting.oilM3) },
    intakeClosesDegAbdc: Math.min(120, Math.max(0, closes)),
    speedRpm: setting.speedRpm,
    airPressurePa: session.airPressurePa,
    chargePressurePa: session.airPressurePa * fill,
    chargeTempK: setting.chargeTempK,
    wallTempK: wallTempK(session),
    fixedLeakM2: (leaks.exhaust + leaks.intake + leaks.coolant + leaks.outside + bridgedMm2(leaks)) * MM2,
    ringLeakM2: leaks.rings * MM2,
    ringLowPressureExcess: engine.ringLowPressureExcess,
    gauge: setting.follow === undefined ? session.gauge.line : NO_GAUGE,
    ...(setting.follow === undefined ? {} : { follow: setting.follow, endDegAtdc: EXHAUST_OPENS_DEG_ATDC }),
    strokes: setting.strokes,
    leftInGaugePa: setting.leftInGaugePa,
  })
}

/** With a dead intake only what the clearance held at overlap, thinned by the stroke, is there to be compressed again. */
function residualFill(compressionRatio: number): number {
  return 1.1 / compressionRatio
}
