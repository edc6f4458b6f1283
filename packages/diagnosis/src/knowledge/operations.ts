import { FROM_MEMORY, entry, type Entry } from './entry.ts'
import type { Cause } from './causes.ts'
import type { Fault } from './faults.ts'

/** A repair: hours on a simple four, how far it cures each fault or cause, and how its time grows with the engine. */
export interface Operation {
  readonly hours: readonly [number, number]
  readonly cures: Readonly<Partial<Record<Fault | Cause | 'gasket-between', number>>>
  /** `engine`: time grows with banks and cylinders; `cylinder`: for each cylinder worked on; `flat`: always the same. */
  readonly grows: 'engine' | 'cylinder' | 'flat'
  readonly look?: boolean
  /** For a look: chance that it shows the fault for what it is; a borescope shows what its own table says. */
  readonly shows?: Readonly<Partial<Record<Fault | 'gasket-between', number>>>
}

function operation(low: number, high: number, grows: Operation['grows'], cures: Operation['cures']): Entry<Operation> {
  return entry({ hours: [low, high], cures, grows }, FROM_MEMORY, '')
}

function look(low: number, high: number, grows: Operation['grows'], shows?: Operation['shows']): Entry<Operation> {
  return entry({ hours: [low, high], cures: {}, grows, look: true, ...(shows === undefined ? {} : { shows }) }, FROM_MEMORY, '')
}

/** Repairs with hours (simple iron overhead-valve four) and what they cure. */
export const operations: Readonly<Record<string, Entry<Operation>>> = {
  'look-borescope': look(0.1, 0.2, 'cylinder'),
  'look-head-off': look(5, 9, 'engine', { 'exhaust-valve-leak': 0.95, 'intake-valve-leak': 0.95, 'ring-wear': 0.6, 'ring-broken-or-stuck': 0.4, 'piston-damage': 0.95, 'carbon-build-up': 0.99, 'gasket-to-coolant': 0.9, 'gasket-to-outside': 0.9, 'gasket-between': 0.95, 'cracked-head': 0.7, 'valve-sticking': 0.6 }),
  'clearances-run-test': operation(0.5, 1.5, 'flat', { 'clearance-tight': 0.92, 'valve-not-opening': 0.05, 'valve-sticking': 0.1 }),
  'head-valves': operation(7, 14, 'engine', { 'exhaust-valve-leak': 0.96, 'intake-valve-leak': 0.96, 'clearance-tight': 0.6, 'valve-sticking': 0.8, 'gasket-to-coolant': 0.75, 'gasket-to-outside': 0.85, 'gasket-between': 0.85, 'carbon-build-up': 0.9 }),
  guides: operation(8, 17, 'engine', { 'valve-sticking': 0.9, 'exhaust-valve-leak': 0.6, 'intake-valve-leak': 0.6 }),
  rings: operation(14, 24, 'engine', { 'ring-wear': 0.85, 'ring-broken-or-stuck': 0.9, 'worn-evenly': 0.75 }),
  rebore: operation(25, 45, 'engine', { 'ring-wear': 0.97, 'ring-broken-or-stuck': 0.96, 'piston-damage': 0.95, 'worn-evenly': 0.95 }),
  'soak-run-test': operation(0.3, 0.3, 'flat', { 'ring-broken-or-stuck': 0.3, 'valve-sticking': 0.3 }),
  piston: operation(13, 27, 'engine', { 'piston-damage': 0.93, 'ring-broken-or-stuck': 0.85 }),
  'rocker-pushrod': operation(0.5, 3, 'flat', { 'valve-not-opening': 0.45 }),
  'cam-tappets': operation(8, 16, 'engine', { 'valve-not-opening': 0.9 }),
  'hard-run': operation(0.5, 1, 'flat', { 'carbon-build-up': 0.4, 'valve-sticking': 0.2 }),
  decoke: operation(5, 10, 'engine', { 'carbon-build-up': 0.97 }),
  'fuel-wash': operation(1, 2.5, 'flat', { 'fuel-wash': 0.9 }),
  'gasket-retorque': operation(0.5, 1, 'flat', { 'gasket-to-outside': 0.3, 'gasket-to-coolant': 0.12, 'gasket-between': 0.05 }),
  'gasket-replace': operation(5, 9, 'engine', { 'gasket-to-coolant': 0.93, 'gasket-to-outside': 0.95, 'gasket-between': 0.93 }),
  'head-crack': operation(6, 12, 'engine', { 'cracked-head': 0.9, 'gasket-to-coolant': 0.9, 'gasket-between': 0.85 }),
  block: operation(15, 35, 'engine', { 'cracked-head': 0.05, 'gasket-to-coolant': 0.9 }),
  timing: operation(2, 8, 'flat', { 'valve-timing': 0.95 }),
  'starter-battery': operation(0.3, 2, 'flat', { 'slow-cranking': 0.95 }),
  'sticking-valve': operation(0.5, 3, 'flat', { 'valve-sticking': 0.7 }),
  'plug-thread': operation(0.5, 1.5, 'cylinder', { 'plug-thread-leak': 0.95 }),
  rod: operation(10, 20, 'engine', { 'rod-bent': 0.95 }),
  'run-on': operation(0, 0, 'flat', {}),
  overhaul: operation(30, 60, 'engine', { 'worn-evenly': 0.98, 'ring-wear': 0.98, 'ring-broken-or-stuck': 0.98, 'piston-damage': 0.97, 'exhaust-valve-leak': 0.98, 'intake-valve-leak': 0.98, 'valve-not-opening': 0.9, 'rod-bent': 0.95 }),
}

/** How repair time grows with the engine. */
export const growth = {
  six: entry(1.3, FROM_MEMORY, 'Six cylinders in line.'),
  oneBank: entry(1.5, FROM_MEMORY, 'One bank of a V8.'),
  twoBanks: entry(2, FROM_MEMORY, 'Both banks of a V8.'),
  checkMinutes: entry(20, FROM_MEMORY, 'Minutes to run and measure again after a repair.'),
} as const
