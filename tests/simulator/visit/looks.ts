import type { Reading } from '@evenbore/contract'
import type { Cylinder } from '../population/engine.ts'
import { cylinderOf, sessionField, type Visit } from './visit.ts'

type Plug = Extract<Reading, { test: 'plug' }>
type Borescope = Extract<Reading, { test: 'borescope' }>
type Clearance = Extract<Reading, { test: 'clearance' }>
type ValveLift = Extract<Reading, { test: 'valve-lift' }>
type Sight = Borescope['seen'][number]
type Appearance = Plug['appearance']

const SOUND_PLUG: Record<Appearance, number> = { tan: 80, 'dry-black': 7, 'wet-oil': 2, 'wet-fuel': 2, white: 8, damaged: 1 }

/** Weights of a plug's look for what is wrong in its cylinder; anything not named looks as if sound (from memory). */
const PLUGS: Readonly<Record<string, Partial<Record<Appearance, number>>>> = {
  'ring-wear': { tan: 40, 'dry-black': 10, 'wet-oil': 47, white: 3 },
  'ring-broken-or-stuck': { tan: 25, 'dry-black': 10, 'wet-oil': 62, white: 3 },
  'piston-damage': { tan: 20, 'dry-black': 8, 'wet-oil': 42, white: 10, damaged: 20 },
  'fuel-wash': { tan: 8, 'dry-black': 22, 'wet-fuel': 68, 'wet-oil': 2 },
  'gasket-to-coolant': { tan: 40, white: 55, 'dry-black': 5 },
  'cracked-head': { tan: 48, white: 47, 'dry-black': 5 },
  'valve-not-opening': { tan: 30, 'dry-black': 20, 'wet-fuel': 45, 'wet-oil': 5 },
  'carbon-build-up': { tan: 40, 'dry-black': 45, 'wet-oil': 12, white: 3 },
  'exhaust-valve-leak': { tan: 62, 'dry-black': 15, 'wet-fuel': 10, white: 13 },
  'valve-sticking': { tan: 55, 'dry-black': 20, 'wet-fuel': 20, 'wet-oil': 5 },
}
/** Plug of a sound cylinder in an evenly worn engine, which burns oil (from memory). */
const WORN_PLUG: Partial<Record<Appearance, number>> = { tan: 55, 'dry-black': 10, 'wet-oil': 31, white: 4 }
const DEAD_SPARK: Partial<Record<Appearance, number>> = { 'wet-fuel': 70, 'dry-black': 20, tan: 10 }

export function lookAtPlug(visit: Visit, number: number): Plug {
  const { random, engine } = visit
  const cylinder = cylinderOf(visit, number)
  const clear = random.chance(engine.world.looksClarity)
  const usual = engine.cause.cause === 'worn-evenly' ? WORN_PLUG : SOUND_PLUG
  const weights = !clear ? SOUND_PLUG : cylinder.ignitionFault ? DEAD_SPARK : (PLUGS[mainFault(cylinder) ?? ''] ?? usual)
  return { test: 'plug', cylinder: number, ...sessionField(visit), appearance: random.weighted<Appearance>(weights) }
}

/** Chance of each sight for each fault; a sound cylinder shows the background (from memory). */
const SIGHTS: Readonly<Record<string, Partial<Record<Sight, number>>>> = {
  'exhaust-valve-leak': { 'burnt-exhaust-valve': 0.65, carbon: 0.2 },
  'ring-wear': { 'scored-bore': 0.35, carbon: 0.15 },
  'ring-broken-or-stuck': { 'scored-bore': 0.5, carbon: 0.25 },
  'piston-damage': { 'cracked-piston': 0.72, 'scored-bore': 0.3 },
  'carbon-build-up': { carbon: 0.9 },
  'gasket-to-coolant': { coolant: 0.45 },
  'cracked-head': { coolant: 0.4 },
  'fuel-wash': { 'scored-bore': 0.1 },
  'valve-sticking': { carbon: 0.35, 'burnt-exhaust-valve': 0.06 },
  'clearance-tight': { 'burnt-exhaust-valve': 0.12, carbon: 0.1 },
}
const BACKGROUND: Record<Exclude<Sight, 'nothing'>, number> = {
  'burnt-exhaust-valve': 0.015,
  'scored-bore': 0.04,
  'cracked-piston': 0.003,
  carbon: 0.12,
  coolant: 0.01,
}

export function lookThroughBorescope(visit: Visit, number: number): Borescope {
  const { random, engine } = visit
  const cylinder = cylinderOf(visit, number)
  const clear = random.chance(engine.world.looksClarity)
  const seen: Sight[] = []
  for (const sight of Object.keys(BACKGROUND) as (keyof typeof BACKGROUND)[]) {
    const chances = cylinder.faults.map((effect) => (clear ? (SIGHTS[effect.fault]?.[sight] ?? 0) : 0))
    if (random.chance(Math.max(BACKGROUND[sight], ...chances))) seen.push(sight)
  }
  return { test: 'borescope', cylinder: number, ...sessionField(visit), seen: seen.length > 0 ? seen : ['nothing'] }
}

export function checkClearance(visit: Visit, number: number, valve: 'intake' | 'exhaust'): Clearance {
  const { random } = visit
  const cylinder = cylinderOf(visit, number)
  const here = (fault: string): boolean => cylinder.faults.some((effect) => effect.fault === fault && effect.valve === valve)
  const state =
    here('clearance-tight') && !visit.adjusted.has(number)
      ? random.weighted({ tight: 92, right: 8 })
      : here('valve-not-opening')
        ? random.weighted({ loose: 55, right: 45 })
        : here('exhaust-valve-leak')
          ? random.weighted({ tight: 12, right: 83, loose: 5 })
          : random.weighted({ right: 91, loose: 6, tight: 3 })
  return { test: 'clearance', cylinder: number, ...sessionField(visit), valve, state }
}

export function measureValveLift(visit: Visit, number: number, valve: 'intake' | 'exhaust'): ValveLift {
  const { random, engine } = visit
  const dead = cylinderOf(visit, number).faults.find((effect) => effect.fault === 'valve-not-opening' && effect.valve === valve)
  const mm = engine.design.valveLiftMm[valve] * (dead?.lift ?? 1) * random.normal(1, 0.012) + random.normal(0, 0.05)
  return { test: 'valve-lift', cylinder: number, ...sessionField(visit), valve, mm: Math.max(0, Math.round(mm * 100) / 100) }
}

/** The fault that would show first on a plug or at idle: the first drawn. */
export function mainFault(cylinder: Cylinder): string | undefined {
  return cylinder.faults[0]?.fault
}
