import { COMMON_PRACTICE, FROM_MEMORY, entry, type Entry } from './entry.ts'
import type { Cause } from './causes.ts'
import type { Fault } from './faults.ts'

/** A sign that speaks of one cylinder: chance of seeing it when sound, and by fault. `loss`: rises with lost pressure instead. */
export interface CylinderSign {
  readonly sound: number
  readonly faults: Readonly<Partial<Record<Fault, number>>>
  readonly withLoss?: { readonly halfAt: number; readonly most: number }
  readonly ignition?: number
}

/** Groups of faults that a test of the whole engine answers to: present in any cylinder, or not. */
export const GROUPS = ['coolant', 'oil', 'fuel', 'valve', 'sticking'] as const
export type Group = (typeof GROUPS)[number]

/**
 * A sign that speaks of any cylinder: chance with nothing there, and how each group or cause adds to it (noisy-or). `otherOil`: the same where oil is
 * burnt for a reason that no test of a cylinder shows; it makes several signs at once.
 */
export interface EngineSign {
  readonly alone: number
  readonly otherOil?: number
  readonly groups: Readonly<Partial<Record<Group, number>>>
  readonly causes: Readonly<Partial<Record<Cause, number>>>
}

/** Which faults belong to which group. */
export const groups: Readonly<Record<Group, Entry<readonly Fault[]>>> = {
  coolant: entry(['gasket-to-coolant', 'cracked-head'], COMMON_PRACTICE, 'Gas meets coolant.'),
  oil: entry(['ring-wear', 'ring-broken-or-stuck', 'piston-damage'], COMMON_PRACTICE, 'Gas meets oil.'),
  fuel: entry(['fuel-wash'], COMMON_PRACTICE, 'Petrol that is not burnt runs down the bore.'),
  valve: entry(['exhaust-valve-leak', 'intake-valve-leak', 'clearance-tight', 'valve-not-opening', 'piston-damage'], COMMON_PRACTICE, 'One cylinder lets the manifold down at each turn.'),
  sticking: entry(['valve-sticking'], COMMON_PRACTICE, 'A valve that hangs now and then.'),
}

/** Observations noted for a cylinder. */
export const cylinderSigns: Readonly<Record<string, Entry<CylinderSign>>> = {
  'weak-by-hand': entry({ sound: 0.03, faults: {}, withLoss: { halfAt: 0.4, most: 0.95 } }, COMMON_PRACTICE, 'Turned by hand, the hump of this cylinder is missing.'),
  'locked-by-hand': entry({ sound: 0.001, faults: { 'gasket-to-coolant': 0.03, 'cracked-head': 0.03, 'rod-bent': 0.02 } }, COMMON_PRACTICE, 'Stops hard by hand: liquid in the cylinder, or seized.'),
  'spits-back': entry({ sound: 0.02, faults: { 'intake-valve-leak': 0.4, 'valve-not-opening': 0.45, 'valve-sticking': 0.25, 'clearance-tight': 0.2 } }, COMMON_PRACTICE, 'Spits back through the intake.'),
  'bubbles-at-plug-thread': entry({ sound: 0.015, faults: { 'plug-thread-leak': 0.92 } }, COMMON_PRACTICE, 'Soap bubbles at the plug thread.'),
  'bubbles-at-joint': entry({ sound: 0.015, faults: { 'gasket-to-outside': 0.9, 'cracked-head': 0.1 } }, COMMON_PRACTICE, 'Soap bubbles at the head joint.'),
  'better-with-other-plug-and-lead': entry({ sound: 0.04, faults: {}, ignition: 0.85 }, COMMON_PRACTICE, 'Runs better with another plug and lead: not mechanical.'),
  'piston-low-at-top': entry({ sound: 0.01, faults: { 'rod-bent': 0.93 } }, COMMON_PRACTICE, 'Piston stands lower at the top than its sisters: bent rod.'),
}

/** Observations and tests that speak of the engine. */
export const engineSigns: Readonly<Record<string, Entry<EngineSign>>> = {
  'coolant-gas': entry({ alone: 0.03, groups: { coolant: 0.85 }, causes: {} }, COMMON_PRACTICE, 'Combustion gas in the coolant, hot and after load.'),
  'cooling-pressure': entry({ alone: 0.07, groups: { coolant: 0.75 }, causes: {} }, 'over 2 psi lost in 2 minutes: a maker\'s text, not named; chances from memory', 'Cooling system loses pressure.'),
  'smoke-white': entry({ alone: 0.04, groups: { coolant: 0.55 }, causes: {} }, 'TM 5-4210-230-14&P-1 chart 21; chances from memory', 'White smoke: coolant.'),
  'water-in-oil': entry({ alone: 0.015, groups: { coolant: 0.3 }, causes: {} }, COMMON_PRACTICE, 'Water in the oil.'),
  'oil-in-water': entry({ alone: 0.015, groups: { coolant: 0.25 }, causes: {} }, COMMON_PRACTICE, 'Oil in the water.'),
  'smoke-blue-throttle': entry({ alone: 0.04, otherOil: 0.4, groups: { oil: 0.45 }, causes: { 'worn-evenly': 0.6 } }, 'TM 5-4210-230-14&P-1 chart 21; chances from memory', 'Blue smoke under throttle: rings.'),
  'smoke-blue-overrun': entry({ alone: 0.06, otherOil: 0.6, groups: {}, causes: { 'worn-evenly': 0.25 } }, 'TM 5-4210-230-14&P-1 chart 21; chances from memory', 'Blue smoke on the overrun: guides.'),
  'smoke-black': entry({ alone: 0.1, groups: { fuel: 0.5 }, causes: {} }, 'TM 5-4210-230-14&P-1 chart 21; chances from memory', 'Black smoke: rich.'),
  'breather-smoke': entry({ alone: 0.05, otherOil: 0.35, groups: { oil: 0.55 }, causes: { 'worn-evenly': 0.65 } }, COMMON_PRACTICE, 'Breather smokes: gas past the rings.'),
  'petrol-in-oil': entry({ alone: 0.03, groups: { fuel: 0.6 }, causes: {} }, COMMON_PRACTICE, 'Petrol in the oil: it runs down the bore.'),
  'oil-use-high': entry({ alone: 0.06, otherOil: 0.8, groups: { oil: 0.5 }, causes: { 'worn-evenly': 0.65 } }, COMMON_PRACTICE, 'Uses much oil.'),
}

/** Faults that show little outside: then none of their signs in the whole engine can be relied on. */
export const quiet = {
  chance: entry(0.2, FROM_MEMORY, 'A leak so slight, or wear so even, that no test of the whole engine is likely to show it.'),
  part: entry(0.35, FROM_MEMORY, 'Part of their usual chances that its signs then have; in the others they have the more, so that all together have what the signs say.'),
} as const

/** Oil that is burnt for another reason. */
export const otherOil = {
  chance: entry(0.06, FROM_MEMORY, 'Worn guides or their seals, oil rings stuck, a breather blocked: the engine burns oil, and its compression does not show it.'),
  plug: entry(0.4, FROM_MEMORY, 'Chance that any plug of such an engine is oily.'),
} as const

type Pattern = 'steady' | 'low-steady' | 'regular-drop' | 'irregular-drop' | 'slow-fall'
/** Vacuum gauge at idle: chances of each pattern by what is there. */
export const vacuum: Readonly<Record<'nothing' | 'valve' | 'sticking' | 'low', Entry<Readonly<Record<Pattern, number>>>>> = {
  nothing: entry({ steady: 0.75, 'low-steady': 0.08, 'regular-drop': 0.06, 'irregular-drop': 0.07, 'slow-fall': 0.04 }, FROM_MEMORY, 'Nothing mechanical that the vacuum gauge answers to; a plug that does not fire makes it drop as a valve does.'),
  valve: entry({ steady: 0.16, 'low-steady': 0.08, 'regular-drop': 0.65, 'irregular-drop': 0.08, 'slow-fall': 0.03 }, 'TM 10-3930-618-20 steps 5-7; chances from memory', 'A leaking valve or the head gasket: regular drops.'),
  sticking: entry({ steady: 0.2, 'low-steady': 0.07, 'regular-drop': 0.15, 'irregular-drop': 0.55, 'slow-fall': 0.03 }, 'TM 10-3930-618-20 steps 5-7; chances from memory', 'A sticking valve: irregular drops.'),
  low: entry({ steady: 0.25, 'low-steady': 0.6, 'regular-drop': 0.06, 'irregular-drop': 0.06, 'slow-fall': 0.03 }, FROM_MEMORY, 'Late timing or even wear: low and steady.'),
}

/** Where a steady needle of the vacuum gauge stands, as part of the air pressure. */
export const vacuumDepth = {
  steady: entry({ mean: 0.62, spread: 0.06 }, 'common practice, no source: 17 to 21 inHg at sea level, about 1 inHg less for each 1,000 ft; spread from memory', 'Steady, as it should be.'),
  low: entry({ mean: 0.44, spread: 0.08 }, FROM_MEMORY, 'Low and steady.'),
  wordRight: entry(0.85, FROM_MEMORY, 'How often the word that was noted is the right one of the two.'),
  anything: entry(0.3, FROM_MEMORY, 'A density that every depth has: another idle, another cam, the throttle not quite shut.'),
} as const
