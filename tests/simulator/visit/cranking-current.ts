import type { Reading } from '@evenbore/contract'
import { pistonAreaM2, pistonDepthM } from '../physics/slider-crank.ts'
import { crankingAmps } from '../physics/starter.ts'
import { chargeTempK, runCylinder } from './cylinder-run.ts'
import { leaksOf, showsNow } from './leaks.ts'
import { cylinderOf, sessionField, type Visit } from './visit.ts'

type CrankingCurrent = Extract<Reading, { test: 'cranking-current' }>

const SECONDS = 5
/** Part of the speed without plugs that is left with all of them in. */
const PLUGS_IN = 0.85
const RATE_HZ = 400
const BATTERY_VOLTS = 11.5
/** A diesel has so much stronger a starter (from memory). */
const DIESEL_STARTER = 2.2
/** Inertia of engine, flywheel and geared armature: so much, and so much for each litre (from memory). */
const INERTIA_KG_M2 = { any: 0.1, perLitre: 0.1 } as const

/** Starter current while cranking with all plugs in, from the torque of the air in the cylinders and the inertia of the engine. */
export function recordCrankingCurrent(visit: Visit): CrankingCurrent {
  const { engine, random, session } = visit
  const { design } = engine
  const order = design.layout.firingOrder
  const spacing = 720 / order.length
  const airTorqueNm = new Float64Array(720)
  order.forEach((number, place) => {
    torqueOf(visit, number).forEach((torque, deg) => { airTorqueNm[Math.floor(deg + place * spacing) % 720]! += torque })
  })
  const litres = (Math.PI / 4) * design.boreM ** 2 * design.strokeM * order.length * 1e3
  const meanAmps = random.between(90, 130) * (0.6 + 0.4 * litres) * (session.temperature === 'cold' ? 1.4 : 1) * (design.fuel === 'diesel' ? DIESEL_STARTER : 1)
  const startDeg = random.between(0, 720)
  const { amps, degrees } = crankingAmps(
    { airTorqueNm, speedRadS: (PLUGS_IN * session.speedRpm * Math.PI) / 30, meanAmps, batteryVolts: BATTERY_VOLTS, resistanceOhm: (0.25 * BATTERY_VOLTS) / meanAmps, inertiaKgM2: INERTIA_KG_M2.any + INERTIA_KG_M2.perLitre * litres },
    startDeg, RATE_HZ, SECONDS * RATE_HZ,
  )
  // cylinder one's second top: the first may lie in the surge
  const firstTop = degrees.findIndex((deg) => deg >= 1440)
  const known = random.chance(0.7)
  return {
    test: 'cranking-current',
    ...sessionField(visit),
    samples: { seconds: Array.from(amps, (_, i) => Number((i / RATE_HZ).toFixed(5))), amps: Array.from(amps, (value) => Number((value + random.normal(0, 2)).toFixed(2))) },
    ...(known && firstTop >= 0 ? { cylinderOneAt: Number((firstTop / RATE_HZ).toFixed(4)) } : {}),
  }
}

/** True peak pressure (gauge, Pa) of one cylinder with all plugs in. */
export function peakPa(visit: Visit, number: number): number {
  return Math.max(...strokeOf(visit, number).map(([, pressurePa]) => pressurePa)) - visit.session.airPressurePa
}

/** Pressure (absolute, Pa) of one cylinder by crank degrees after firing top, from where the intake closes to where the exhaust opens. */
function strokeOf(visit: Visit, number: number): [deg: number, pressurePa: number][] {
  const { engine, session } = visit
  const cylinder = cylinderOf(visit, number)
  const leaks = leaksOf(engine, cylinder, { wet: false, temperature: session.temperature, held: false, shows: showsNow(visit, cylinder) })
  const pressures: [deg: number, pressurePa: number][] = []
  runCylinder(engine, cylinder, session, leaks, {
    speedRpm: PLUGS_IN * session.speedRpm, strokes: 1, fill: 0.985 * engine.cause.chargeFill, chargeTempK: chargeTempK(session), oilM3: 0, leftInGaugePa: 0, shows: () => true,
    follow: (deg, pressurePa) => pressures.push([deg, pressurePa]),
  })
  return pressures
}

/** Torque in Nm that one cylinder's air asks of the crank, by degree after its firing top. */
function torqueOf(visit: Visit, number: number): Float64Array {
  const { engine: { design }, session } = visit
  const geometry = { boreM: design.boreM, strokeM: design.strokeM, rodM: design.rodM, clearanceM3: 0 }
  const pressures = strokeOf(visit, number)
  const torque = new Float64Array(720)
  let next = 0
  for (let deg = Math.ceil(pressures[0]![0]); deg < pressures.at(-1)![0]; deg++) {
    while (pressures[next + 1]![0] <= deg) next++
    const [from, low] = pressures[next]!, [to, high] = pressures[next + 1]!
    const pressurePa = low + ((deg - from) / (to - from)) * (high - low)
    const perRadian = (pistonDepthM(geometry, deg + 0.5) - pistonDepthM(geometry, deg - 0.5)) * (180 / Math.PI)
    torque[(deg + 720) % 720] = -(pressurePa - session.airPressurePa) * pistonAreaM2(geometry) * perRadian
  }
  return torque
}
