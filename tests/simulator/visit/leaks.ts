import type { Cylinder, Engine } from '../population/engine.ts'
import type { FaultEffect } from '../population/faults.ts'
import type { Path } from '../worlds/world.ts'
import type { Visit } from './visit.ts'

/** Leak areas of one cylinder in one test, in mm2, by where the air goes. */
export type Leaks = Record<Path, number> & {
  /** To each neighbour across the gasket. */
  readonly neighbours: ReadonlyMap<number, number>
}

/** What shows of a cylinder in one test: with oil or not, at a temperature, with the sticky valve in or out. */
export type Showing = {
  readonly wet: boolean
  readonly temperature: 'hot' | 'warm' | 'cold'
  readonly held: boolean
  /** Decides for each fault whether it shows now. */
  readonly shows: (effect: FaultEffect) => boolean
}

const COLD_SHARE = { hot: 0, warm: 0.4, cold: 1 } as const

/** Leak areas under these circumstances. Pure: chance enters only through `shows`. */
export function leaksOf(engine: Engine, cylinder: Cylinder, showing: Showing): Leaks {
  const { world } = engine
  const wetRings = showing.wet ? cylinder.soundRingsOilLeaves : 1
  const leaks: Record<Path, number> = {
    exhaust: cylinder.soundExhaustMm2,
    intake: cylinder.soundIntakeMm2,
    rings: cylinder.soundRingsMm2 * wetRings * world.coldRingFactor[showing.temperature],
    coolant: 0,
    outside: 0,
  }
  for (const effect of cylinder.faults) {
    if (!showing.shows(effect)) continue
    const cold = 1 + (effect.coldShare - 1) * COLD_SHARE[showing.temperature]
    const oil = showing.wet ? effect.oilLeaves : 1
    for (const [path, area] of Object.entries(effect.leaksMm2) as [Path, number][]) leaks[path] += area * oil * cold
  }
  if (showing.held) {
    leaks.rings *= cylinder.heldRings
    for (const path of ['exhaust', 'intake', 'coolant', 'outside'] as const) leaks[path] *= cylinder.heldOthers
  }
  const neighbours = new Map<number, number>()
  for (const bridge of engine.bridges) {
    const [a, b] = bridge.cylinders
    if (a === cylinder.number) neighbours.set(b, bridge.areaMm2)
    if (b === cylinder.number) neighbours.set(a, bridge.areaMm2)
  }
  return { ...leaks, neighbours }
}

/** Whether a fault shows in the test being done now: freed valves and set clearances no longer do, sticky valves by chance. */
export function showsNow(visit: Visit, cylinder: Cylinder): (effect: FaultEffect) => boolean {
  return (effect) => {
    if (effect.fault === 'valve-sticking' && visit.freed.has(cylinder.number)) return false
    if (effect.fault === 'clearance-tight' && visit.adjusted.has(cylinder.number)) return false
    return effect.shows >= 1 || visit.random.chance(effect.shows)
  }
}

export function bridgedMm2(leaks: Leaks): number {
  let sum = 0
  for (const area of leaks.neighbours.values()) sum += area
  return sum
}
