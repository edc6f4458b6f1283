import { COMMON_PRACTICE, FROM_MEMORY, entry, type Entry } from './entry.ts'
import type { Cause } from './causes.ts'
import type { Fault } from './faults.ts'
import type { Operation } from './operations.ts'

/** Factors on the share of faults and causes for what is known of the engine's past, and what cures it. */
export interface PastFactors {
  readonly faults: Readonly<Partial<Record<Fault, number>>>
  readonly causes: Readonly<Partial<Record<Cause, number>>>
  /** Operations that cure more than usual in such an engine, by name. */
  readonly cures?: Readonly<Record<string, Operation['cures']>>
}

/** What the past makes likelier, as factors. */
export const past: Readonly<Record<string, Entry<PastFactors>>> = {
  stored: entry({ faults: { 'ring-broken-or-stuck': 3, 'valve-sticking': 4, 'exhaust-valve-leak': 1.2, 'intake-valve-leak': 1.2 }, causes: {}, cures: { 'soak-run-test': { 'ring-broken-or-stuck': 0.45, 'valve-sticking': 0.55, 'exhaust-valve-leak': 0.1, 'intake-valve-leak': 0.1 } } }, 'common practice; AC 43.13-1B par. 8-14b(5)(i): run and test again', 'Stood for six months or more: stuck rings, sticky valves, debris on a seat.'),
  overheated: entry({ faults: { 'gasket-to-coolant': 3.5, 'cracked-head': 4, 'gasket-to-outside': 2, 'piston-damage': 1.5, 'ring-broken-or-stuck': 1.4 }, causes: {} }, COMMON_PRACTICE, 'Known to have overheated.'),
  tiredRings: entry({ faults: { 'ring-wear': 1.6, 'ring-broken-or-stuck': 1.3 }, causes: { 'worn-evenly': 1.8 } }, FROM_MEMORY, 'More than 150,000 km since rings.'),
  freshRings: entry({ faults: { 'ring-wear': 0.5, 'ring-broken-or-stuck': 0.8 }, causes: { 'worn-evenly': 0.4 } }, FROM_MEMORY, 'Less than 60,000 km since rings.'),
  notBedded: entry({ faults: { 'ring-wear': 1.5 }, causes: { 'worn-evenly': 2 }, cures: { 'run-on': { 'worn-evenly': 0.8, 'ring-wear': 0.5 } } }, FROM_MEMORY, 'Rings not bedded in (first 1,000 km): leaks that pass.'),
  hotExhaust: entry({ faults: { 'exhaust-valve-leak': 1.7, 'valve-sticking': 1.2 }, causes: {} }, COMMON_PRACTICE, 'One of the cylinders with a hot exhaust position.'),
  clearancesSet: entry({ faults: { 'clearance-tight': 0.15 }, causes: {} }, COMMON_PRACTICE, 'Valve clearances were set before the test.'),
  headTorqued: entry({ faults: { 'gasket-to-outside': 0.6, 'gasket-to-coolant': 0.85 }, causes: {} }, COMMON_PRACTICE, 'Head was torqued before the test.'),
  throttleNoted: entry({ faults: {}, causes: { 'throttle-closed': 30 } }, COMMON_PRACTICE, 'The conditions say that the throttle was shut.'),
  otherCam: entry({ faults: {}, causes: { 'valve-timing': 1.5 } }, FROM_MEMORY, 'Another camshaft than the standard one.'),
  carburettor: entry({ faults: { 'fuel-wash': 1.3 }, causes: {} }, FROM_MEMORY, 'Carburettor: a choke or float that sticks washes bores.'),
  injected: entry({ faults: { 'fuel-wash': 0.7 }, causes: {} }, FROM_MEMORY, 'Petrol injection: an injector that leaks does, more seldom.'),
  direct: entry({ faults: { 'carbon-build-up': 1.5 }, causes: {} }, FROM_MEMORY, 'Petrol injected into the cylinder: nothing washes the intake valves.'),
  heldGauge: entry({ faults: {}, causes: { 'gauge-error': 1.5 } }, FROM_MEMORY, 'Gauge held by hand, not screwed in.'),
  diesel: entry({ faults: { 'fuel-wash': 0.5, 'clearance-tight': 0.7, 'carbon-build-up': 0.5 }, causes: { 'throttle-closed': 0.1 } }, FROM_MEMORY, 'Diesel engine.'),
  sideValves: entry({ faults: {}, causes: {}, cures: { 'rocker-pushrod': { 'valve-not-opening': 0 } } }, COMMON_PRACTICE, 'Side valves stand on their tappets: there are no rockers and no pushrods.'),
}

/** What a run of some minutes between two tests does. */
export const afterRun = {
  passes: entry<Readonly<Partial<Record<Fault, number>>>>({ 'valve-sticking': 0.6, 'ring-broken-or-stuck': 0.2, 'fuel-wash': 0.5, 'carbon-build-up': 0.15 }, 'AC 43.13-1B par. 8-14b(5)(i): run and test again; chances from memory', 'Chance that a fault is gone after it.'),
  seems: entry({ sound: 0.02, faulty: 0.03 }, FROM_MEMORY, 'Chance that another test reads otherwise all the same.'),
} as const

/** Where the past begins to count. */
export const pastLimits = {
  storedMonths: entry(6, COMMON_PRACTICE, 'Months of storage from which rings and valves stick.'),
  runFreesMinutes: entry(3, 'AC 43.13-1B par. 8-14b(5)(i): at least 3 minutes', 'Minutes of running that free some of what storage did.'),
  runFreesPart: entry(0.5, FROM_MEMORY, 'Part of the extra that remains after such a run.'),
  tiredKm: entry(150_000, FROM_MEMORY, 'Kilometres since rings from which wear is likelier.'),
  freshKm: entry(60_000, FROM_MEMORY, 'Kilometres since rings below which wear is unlikelier.'),
  beddedKm: entry(1000, FROM_MEMORY, 'Kilometres in which rings bed in.'),
  slowRpm: entry(140, 'from memory: 150 to 250 rpm is usual', 'Cranking speed at which slow cranking is as likely as not.'),
  slowBlur: entry(8, FROM_MEMORY, 'Rpm about that limit in which the odds change by a factor e.'),
  slowVolts: entry(9.4, 'common practice, no source: a 12 V battery below 9.6 V while cranking is suspect', 'Volts while cranking a 12 V system at which slow cranking is as likely as not, where nobody measured the speed.'),
  voltsBlur: entry(0.2, FROM_MEMORY, 'Volts about that limit in which the odds change by a factor e.'),
  mostVolts: entry(3, FROM_MEMORY, 'However low they are: not more than so many such factors, a good starter may turn on a tired battery.'),
  goodVolts: entry(0.4, FROM_MEMORY, 'Slow cranking is so much rarer where the volts are good: starter or a tight engine remain.'),
  twelveVolts: entry({ least: 6.5, most: 13 }, COMMON_PRACTICE, 'Volts while cranking that can only be a 12 V system: outside of them nothing is said.'),
} as const
