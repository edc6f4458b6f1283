import type { Reading } from '@evenbore/contract'
import { chargeTempK, runCylinder } from './cylinder-run.ts'
import { leaksOf } from './leaks.ts'
import type { Cylinder } from '../population/engine.ts'
import { cylinderOf, sessionField, type Visit } from './visit.ts'

type PowerBalance = Extract<Reading, { test: 'power-balance' }>
type Vacuum = Extract<Reading, { test: 'vacuum' }>

const IDLE = { rpm: 800, fill: 0.42 } as const

/** Share of a sound cylinder's work that this one gives at idle: from its compression while running, nothing below about a half. */
export function workShare(visit: Visit, cylinder: Cylinder): number {
  const { engine, session } = visit
  if (cylinder.ignitionFault && !visit.replugged.has(cylinder.number)) return 0.05
  if (cylinder.faults.some((effect) => effect.fault === 'valve-not-opening' && effect.lift < 0.25)) return 0.05
  const setting = {
    speedRpm: IDLE.rpm,
    strokes: 8,
    fill: IDLE.fill,
    chargeTempK: chargeTempK({ ...session, temperature: 'hot' }),
    oilM3: 0,
    leftInGaugePa: 0,
  }
  const shows = (effect: { fault: string }): boolean =>
    !(effect.fault === 'valve-sticking' && visit.freed.has(cylinder.number)) &&
    !(effect.fault === 'clearance-tight' && visit.adjusted.has(cylinder.number))
  const peak = (which: Cylinder, filter: (effect: { fault: string }) => boolean): number => {
    const leaks = leaksOf(engine, which, { wet: false, temperature: 'hot', held: false, shows: filter })
    const run = runCylinder(engine, which, { ...session, temperature: 'hot' }, leaks, { ...setting, shows: filter })
    return run[run.length - 1] as number
  }
  const ratio = peak(cylinder, shows) / peak({ ...cylinder, faults: [] }, shows)
  const fouled = cylinder.faults.some((effect) => effect.fault === 'fuel-wash') ? 0.6 : 1
  return Math.min(1.05, Math.max(0.03, (ratio - 0.4) / 0.6)) * fouled
}

export function measurePowerBalance(visit: Visit, number: number): PowerBalance {
  const { random } = visit
  const share = workShare(visit, cylinderOf(visit, number))
  const drop = visit.idleDropRpm * share * random.normal(1, 0.1) + random.normal(0, 4)
  return { test: 'power-balance', cylinder: number, ...sessionField(visit), rpmDrop: Math.round(drop / 5) * 5 }
}

/** Pattern of the vacuum gauge at idle (rules read in TM 10-3930-618-20; their strengths from memory). */
export function readVacuum(visit: Visit): Vacuum {
  const { engine, random, session } = visit
  const effects = engine.cylinders.flatMap((cylinder) => cylinder.faults)
  const has = (...faults: string[]): boolean => effects.some((effect) => faults.includes(effect.fault))
  const valve = effects.some(
    (effect) => (effect.leaksMm2.exhaust ?? 0) + (effect.leaksMm2.intake ?? 0) > 0.8 && effect.fault !== 'valve-sticking',
  )
  const clear = random.chance(engine.world.looksClarity)
  let weights: Partial<Record<Vacuum['pattern'], number>> = {
    steady: 80,
    'low-steady': 6,
    'regular-drop': 4,
    'irregular-drop': 8,
    'slow-fall': 2,
  }
  if (clear) {
    if (engine.cause.cause === 'worn-evenly' || engine.cause.cause === 'valve-timing')
      weights = { steady: 30, 'low-steady': 60, 'irregular-drop': 8, 'slow-fall': 2 }
    if (has('valve-sticking') || engine.cylinders.some((cylinder) => cylinder.ignitionFault))
      weights = { steady: 30, 'irregular-drop': 60, 'regular-drop': 10 }
    if (engine.bridges.length > 0 || valve) weights = { steady: 25, 'regular-drop': 60, 'irregular-drop': 12, 'low-steady': 3 }
    if (has('valve-not-opening')) weights = { steady: 20, 'regular-drop': 55, 'irregular-drop': 20, 'slow-fall': 5 }
  }
  const pattern = random.weighted<Vacuum['pattern']>(weights)
  const depth = (pattern === 'low-steady' ? 0.47 : 0.6) * session.airPressurePa * random.normal(1, 0.04)
  return {
    test: 'vacuum',
    ...sessionField(visit),
    pattern,
    ...(random.chance(0.5) ? { reading: { value: Math.round(depth / 100) / 10, unit: 'kPa' as const } } : {}),
  }
}
