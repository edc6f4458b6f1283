import { COMMON_PRACTICE, FROM_MEMORY, entry, type Entry } from './entry.ts'
import type { Fault } from './faults.ts'

type Chances = Readonly<Record<string, number>>
/** A table of chances for one thing looked at: for a sound cylinder, and where a fault changes it. */
export interface LookTable {
  readonly sound: Chances
  readonly faults: Readonly<Partial<Record<Fault, Chances>>>
}

/** The plug of a cylinder that compresses so little that it hardly fires: its looks, and how often it has them, rising with lost pressure (logarithm). */
export interface DeadPlug {
  readonly halfAt: number
  readonly most: number
  readonly looks: Chances
}

/** Plug appearance: chances of each look. */
export const plugs: Readonly<Record<'appearance' | 'ignition' | 'dead' | 'contrast', Entry<LookTable | Chances | DeadPlug | number>>> & {
  appearance: Entry<LookTable>
  ignition: Entry<Chances>
  dead: Entry<DeadPlug>
  contrast: Entry<number>
} = {
  appearance: entry<LookTable>({
    sound: { tan: 0.78, 'dry-black': 0.09, 'wet-oil': 0.03, 'wet-fuel': 0.02, white: 0.07, damaged: 0.01 },
    faults: {
      'exhaust-valve-leak': { tan: 0.55, 'dry-black': 0.17, 'wet-oil': 0.05, 'wet-fuel': 0.07, white: 0.14, damaged: 0.02 },
      'intake-valve-leak': { tan: 0.55, 'dry-black': 0.2, 'wet-oil': 0.06, 'wet-fuel': 0.09, white: 0.08, damaged: 0.02 },
      'ring-wear': { tan: 0.34, 'dry-black': 0.13, 'wet-oil': 0.45, 'wet-fuel': 0.03, white: 0.04, damaged: 0.01 },
      'ring-broken-or-stuck': { tan: 0.25, 'dry-black': 0.13, 'wet-oil': 0.54, 'wet-fuel': 0.04, white: 0.03, damaged: 0.01 },
      'piston-damage': { tan: 0.16, 'dry-black': 0.1, 'wet-oil': 0.33, 'wet-fuel': 0.06, white: 0.13, damaged: 0.22 },
      'valve-not-opening': { tan: 0.38, 'dry-black': 0.27, 'wet-oil': 0.08, 'wet-fuel': 0.18, white: 0.07, damaged: 0.02 },
      'clearance-tight': { tan: 0.56, 'dry-black': 0.17, 'wet-oil': 0.05, 'wet-fuel': 0.07, white: 0.13, damaged: 0.02 },
      'carbon-build-up': { tan: 0.36, 'dry-black': 0.45, 'wet-oil': 0.11, 'wet-fuel': 0.03, white: 0.04, damaged: 0.01 },
      'fuel-wash': { tan: 0.14, 'dry-black': 0.22, 'wet-oil': 0.05, 'wet-fuel': 0.55, white: 0.03, damaged: 0.01 },
      'gasket-to-coolant': { tan: 0.42, 'dry-black': 0.06, 'wet-oil': 0.03, 'wet-fuel': 0.05, white: 0.42, damaged: 0.02 },
      'cracked-head': { tan: 0.43, 'dry-black': 0.07, 'wet-oil': 0.03, 'wet-fuel': 0.05, white: 0.4, damaged: 0.02 },
      'valve-sticking': { tan: 0.48, 'dry-black': 0.23, 'wet-oil': 0.08, 'wet-fuel': 0.11, white: 0.08, damaged: 0.02 },
      'plug-thread-leak': { tan: 0.66, 'dry-black': 0.13, 'wet-oil': 0.03, 'wet-fuel': 0.03, white: 0.12, damaged: 0.03 },
    },
  }, 'looks: TM 10-3930-653-14&P par. 4-7 and TM 5-4210-230-14&P-1; chances from memory; steam-clean = coolant: common practice',
    'What the plug of a cylinder looks like, by fault.'),
  ignition: entry<Chances>({ tan: 0.12, 'dry-black': 0.33, 'wet-oil': 0.03, 'wet-fuel': 0.45, white: 0.05, damaged: 0.02 }, FROM_MEMORY,
    'Plug of a cylinder with an ignition or mixture fault, whatever its mechanics.'),
  dead: entry<DeadPlug>({ halfAt: 0.8, most: 0.5, looks: { tan: 0.2, 'dry-black': 0.35, 'wet-oil': 0.1, 'wet-fuel': 0.28, white: 0.05, damaged: 0.02 } }, 'common practice, no source; chances from memory',
    'Plug of a cylinder that lost most of its pressure, whatever took it: it hardly fires, and soot or petrol stays on the plug.'),
  contrast: entry(0.75, FROM_MEMORY, 'Weight of a plug that was not run at speed before it was pulled (exponent of the likelihood).'),
}

/** Ignition or mixture faults, which imitate mechanical ones in running tests. */
export const ignition = {
  prior: entry(0.06, FROM_MEMORY, 'Chance that a given cylinder has an ignition or mixture fault of its own.'),
  deadDrop: entry(0.15, FROM_MEMORY, 'Power-balance drop of a dead cylinder against its good sisters.'),
  dropSaysNothing: entry(0.02, FROM_MEMORY, 'A density that any power-balance drop has: noted for another cylinder, the idle wandered.'),
  dropSpread: entry(0.2, FROM_MEMORY, 'Scatter of power-balance drops, as part of the sisters\' median.'),
  swapHelps: entry(0.85, COMMON_PRACTICE, 'Chance that another plug and lead cure an ignition fault.'),
  swapHelpsAnyway: entry(0.04, FROM_MEMORY, 'Chance that they seem to help a cylinder without one.'),
} as const

/** What a borescope shows: chance that each thing is seen, sound and by fault; sights are noted independently. */
export const borescope = {
  sound: entry<Chances>({ 'burnt-exhaust-valve': 0.015, 'scored-bore': 0.03, 'cracked-piston': 0.002, carbon: 0.08, coolant: 0.003 }, FROM_MEMORY, 'Chance of seeing it in a sound cylinder.'),
  faults: entry<Readonly<Partial<Record<Fault, Chances>>>>({
    'exhaust-valve-leak': { 'burnt-exhaust-valve': 0.62 },
    'valve-sticking': { 'burnt-exhaust-valve': 0.06 },
    'clearance-tight': { 'burnt-exhaust-valve': 0.12 },
    'ring-wear': { 'scored-bore': 0.35 },
    'ring-broken-or-stuck': { 'scored-bore': 0.5 },
    'piston-damage': { 'cracked-piston': 0.72, 'scored-bore': 0.3 },
    'carbon-build-up': { carbon: 0.9 },
    'fuel-wash': { 'scored-bore': 0.08 },
    'gasket-to-coolant': { coolant: 0.5 },
    'cracked-head': { coolant: 0.5 },
  }, FROM_MEMORY, 'Chance of seeing it where the fault is present.'),
} as const

/** Compression while the engine runs. */
export const running = {
  idle: entry({ share: 0.5, spread: 0.15 }, 'a trade article, not named (about half of cranking); spread from memory', 'At idle, as part of what the same cylinder shows while cranking; spread from engine to engine (sd of logarithm).'),
  snap: entry({ share: 0.8, spread: 0.18 }, 'a trade article, not named (about 80 percent of cranking); spread from memory', 'In a snap of the throttle, the same.'),
  leakPart: entry(0.4, FROM_MEMORY, 'Part of the loss that a leak costs while cranking (logarithm) that it costs while running.'),
  leakPartSpread: entry(0.2, FROM_MEMORY, 'How far that part may be off.'),
  sistersSayNothing: entry(0.02, FROM_MEMORY, 'A density that any running compression has against its sisters (logarithm): misread, another idle.'),
  sessionSaysNothing: entry(0.05, FROM_MEMORY, 'A density that any cranking compression of another session has against its sisters there.'),
  saysNothing: entry(0.08, FROM_MEMORY, 'A density that it has against cranking, whatever the engine suffers from: a valve that hardly opens, a throttle that does not open with the pedal.'),
} as const

/** Starter current while cranking: each cylinder's compression against the better half. */
export const trace = {
  misread: entry({ chance: 0.05, spread: 0.3 }, FROM_MEMORY, 'Chance that what a trace shows of a cylinder is off by more than it states, and by how much then.'),
  misnamed: entry(0.003, FROM_MEMORY, 'A density that any part of the usual compression has: the time of cylinder one or the firing order is another.'),
} as const

/** Clearances measured cold with a feeler, and valve lift by dial. */
export const valveTrain = {
  tightFound: entry({ fault: 0.85, sound: 0.04 }, COMMON_PRACTICE, 'Chance that a clearance is found tight: with the fault on that valve, and without.'),
  looseFound: entry({ fault: 0.45, sound: 0.06 }, FROM_MEMORY, 'Chance that a clearance is found loose: valve that hardly opens, and otherwise.'),
  deadWithoutLoss: entry({ intake: 0.25 }, FROM_MEMORY, 'A valve that hardly opens while the cylinder reads normal: part of those in which it is the intake (a lobe that still fills while cranking); else the exhaust.'),
  liftShort: entry({ allowedMm: 0.254, fault: 0.25, sound: 0.02 }, 'TM 5-3805-260-24 (.010 in allowed); chances from memory', 'Lift short of its sisters by more than allowed, less than what follows: chance at the valve that hardly opens, and at others.'),
  liftFar: entry({ part: 0.3, fault: 0.6, sound: 0.003 }, FROM_MEMORY, 'Lift short by this part of it, against sisters or against the other valve of the cylinder: at the valve that hardly opens, and at others.'),
  runningDead: entry({ intake: { loss: 0.7, spread: 0.6 }, exhaust: { gain: 0.3, spread: 0.2 } }, 'a trade article, not named (low = intake, high = exhaust); amounts from memory', 'Running compression of a cylinder with a valve that hardly opens, against its sisters (logarithm): starved, or with burnt gas shut in. A cylinder that loses more while cranking loses that.'),
  settingCures: entry(0.1, COMMON_PRACTICE, 'Tight clearances left after they have been set.'),
} as const
