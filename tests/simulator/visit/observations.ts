import type { ObservationCode, Reading } from '@evenbore/contract'
import type { Engine } from '../population/engine.ts'
import { cylinderOf, sessionField, type Visit } from './visit.ts'

type Observation = Extract<Reading, { test: 'observation' }>

/** Chance that a sign is there without cause, and with each fault that makes it; signs of the whole engine (from memory). */
type Sign = { readonly background: number; readonly faults: Readonly<Record<string, number>> }

const ENGINE_SIGNS: Partial<Record<ObservationCode, Sign>> = {
  'smoke-blue-throttle': {
    background: 0.06,
    faults: { 'ring-wear': 0.5, 'ring-broken-or-stuck': 0.65, 'piston-damage': 0.6, 'worn-evenly': 0.65 },
  },
  'smoke-blue-overrun': { background: 0.12, faults: { 'worn-evenly': 0.35, 'valve-sticking': 0.15 } },
  'smoke-white': { background: 0.05, faults: { 'gasket-to-coolant': 0.6, 'cracked-head': 0.5 } },
  'smoke-black': { background: 0.06, faults: { 'fuel-wash': 0.6 } },
  'breather-smoke': {
    background: 0.08,
    faults: { 'ring-wear': 0.55, 'ring-broken-or-stuck': 0.7, 'piston-damage': 0.85, 'worn-evenly': 0.75, 'fuel-wash': 0.25 },
  },
  'water-in-oil': { background: 0.02, faults: { 'gasket-to-coolant': 0.3, 'cracked-head': 0.35 } },
  'petrol-in-oil': { background: 0.03, faults: { 'fuel-wash': 0.65 } },
  'oil-in-water': { background: 0.02, faults: { 'gasket-to-coolant': 0.2, 'cracked-head': 0.25 } },
  'oil-use-high': {
    background: 0.15,
    faults: { 'ring-wear': 0.6, 'ring-broken-or-stuck': 0.7, 'piston-damage': 0.5, 'worn-evenly': 0.75 },
  },
}
const CYLINDER_SIGNS: Partial<Record<ObservationCode, Sign>> = {
  'spits-back': {
    background: 0.03,
    faults: { 'intake-valve-leak': 0.45, 'valve-not-opening': 0.4, 'valve-sticking': 0.3, 'clearance-tight': 0.2 },
  },
  'bubbles-at-plug-thread': { background: 0.02, faults: { 'plug-thread-leak': 0.93 } },
  'bubbles-at-joint': { background: 0.02, faults: { 'gasket-to-outside': 0.85, 'cracked-head': 0.1 } },
  'better-with-other-plug-and-lead': { background: 0.03, faults: { ignition: 0.75 } },
  'piston-low-at-top': { background: 0.015, faults: { 'rod-bent': 0.92 } },
  'weak-by-hand': { background: 0.04, faults: {} },
  'locked-by-hand': { background: 0.003, faults: {} },
}
const WEAK_BY_HAND_MM2 = 2.5

/** Signs a technician can look for on any engine. */
export const ENGINE_SIGN_CODES = Object.keys(ENGINE_SIGNS) as ObservationCode[]

/** Looks for one sign; `present` tells whether it was there. */
export function observe(visit: Visit, code: ObservationCode, number?: number): Observation {
  const { engine, random } = visit
  const clear = random.chance(engine.world.looksClarity)
  const sign = ENGINE_SIGNS[code] ?? (CYLINDER_SIGNS[code] as Sign)
  const causes = ENGINE_SIGNS[code] !== undefined || number === undefined ? engineFaults(engine) : cylinderFaults(visit, number, code)
  const chance = Math.max(sign.background, ...causes.map((cause) => (cause === 'weak' ? 0.8 : clear ? (sign.faults[cause] ?? 0) : 0)))
  const present = random.chance(chance)
  return {
    test: 'observation',
    ...(number === undefined || ENGINE_SIGNS[code] !== undefined ? {} : { cylinder: number }),
    ...sessionField(visit),
    code,
    ...(present && random.chance(0.5) ? {} : { present }),
  }
}

function engineFaults(engine: Engine): string[] {
  return [engine.cause.cause, ...engine.cylinders.flatMap((cylinder) => cylinder.faults.map((effect) => effect.fault))]
}

function cylinderFaults(visit: Visit, number: number, code: ObservationCode): string[] {
  const cylinder = cylinderOf(visit, number)
  const list: string[] = cylinder.faults.map((effect) => effect.fault)
  if (cylinder.ignitionFault) list.push('ignition')
  if (code === 'weak-by-hand') {
    const bridged = visit.engine.bridges.some((bridge) => bridge.cylinders.includes(number) && bridge.areaMm2 > WEAK_BY_HAND_MM2)
    const leak = cylinder.faults.reduce((sum, effect) => sum + Object.values(effect.leaksMm2).reduce((a, b) => a + b, 0), 0)
    const dead = cylinder.faults.some((effect) => effect.fill < 0.3)
    if (bridged || dead || leak > WEAK_BY_HAND_MM2) list.push('weak')
  }
  return list
}
