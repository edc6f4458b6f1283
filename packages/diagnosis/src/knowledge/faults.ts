import { COMMON_PRACTICE, FROM_MEMORY, ROUGH_CALCULATION, entry, type Entry } from './entry.ts'

/** Faults of a single cylinder, in the fixed order of the answer. */
export const FAULTS = [
  'exhaust-valve-leak', 'intake-valve-leak', 'ring-wear', 'ring-broken-or-stuck', 'piston-damage', 'valve-not-opening',
  'clearance-tight', 'carbon-build-up', 'fuel-wash', 'gasket-to-coolant', 'gasket-to-outside', 'cracked-head',
  'valve-sticking', 'rod-bent', 'plug-thread-leak',
] as const
export type Fault = (typeof FAULTS)[number]

/** Where a leak can be heard. A bridge is heard at the neighbour. */
export const PLACES = ['intake', 'exhaust', 'crankcase', 'coolant', 'neighbour', 'outside'] as const
export type Place = (typeof PLACES)[number]

/**
 * What a fault does. `share`: of all single-cylinder faults. `size`, lognormal: of faults that leak the effective leak at 80 psi in
 * mm2 on a cylinder of 400 cm3, of others the natural logarithm of healthy over faulty cranking pressure (negative `sign` raises
 * pressure); at `least` it is as likely as not that a strip-down calls it sound. `leaks`: whether a leakage test sees it;
 * `escapes` says where, as weights. `sealedByOil`: part of the leak that oil closes, mean and spread.
 */
export interface FaultTraits {
  readonly share: number
  readonly size: { readonly median: number; readonly spread: number; readonly least: number; readonly sign: 1 | -1 }
  readonly leaks: boolean
  readonly escapes: Readonly<Partial<Record<Place, number>>>
  readonly sealedByOil: { readonly mean: number; readonly spread: number }
  /** Chance that the fault leaves no mark on gauge and leakage today: it shows only in looks and signs. */
  readonly silent: number
  /** Chance that it shows in any one test: below 1 for what comes and goes. */
  readonly shows: number
  /** Part of the leak that slackening the rockers stops (0: a seat; 1: a valve held open). */
  readonly stopsWithSlackRockers: number
}

const NO_SEAL = { mean: 0.05, spread: 0.08 }
/** About 9 percent lost on the reference tester: up to 10 is called good (common practice). */
const LEAST_LEAK = 0.48
/** A gasket, crack or thread that leaks at all is no longer sound; below this nobody notices (6 percent). */
const LEAST_OUTWARD = 0.38

function traits(
  share: number, median: number, spread: number, escapes: Partial<Record<Place, number>>,
  more: Partial<Pick<FaultTraits, 'leaks' | 'sealedByOil' | 'silent' | 'shows' | 'stopsWithSlackRockers'>> & { least?: number; sign?: 1 | -1 } = {},
): FaultTraits {
  return {
    share, escapes,
    size: { median, spread, least: more.least ?? (more.leaks === false ? 0.02 : LEAST_LEAK), sign: more.sign ?? 1 },
    leaks: more.leaks ?? true,
    sealedByOil: more.sealedByOil ?? NO_SEAL,
    silent: more.silent ?? 0.02,
    shows: more.shows ?? 1,
    stopsWithSlackRockers: more.stopsWithSlackRockers ?? 0,
  }
}

const UNDER_LOAD = 'leaks that open under combustion pressure alone: common practice, no source; how many: from memory'
const PLUS_LISTENING = 'share and severity from memory; listening point: AOPA article, Sweethaven course, TM 5-3805-260-24'

/** The faults of one cylinder: how common among faults, how much pressure they cost, where they are heard, what oil does. */
export const faults: Readonly<Record<Fault, Entry<FaultTraits>>> = {
  'exhaust-valve-leak': entry(traits(0.28, 1.9, 0.8, { exhaust: 1 }), PLUS_LISTENING,
    'Burnt or leaking exhaust valve: the hottest part and the commonest single fault; oil changes little.'),
  'intake-valve-leak': entry(traits(0.11, 1.6, 0.8, { intake: 1 }), PLUS_LISTENING,
    'Leaking intake valve: heard at the air cleaner; oil changes little.'),
  'ring-wear': entry(traits(0.18, 1.05, 0.6, { crankcase: 1 }, { sealedByOil: { mean: 0.57, spread: 0.2 } }),
    'share and severity from memory; oil and listening: US Army TM 5-4210-230-14&P-1 addendum 2; TM 5-3805-260-24',
    'Worn rings or bore of this cylinder: heard at the filler; a clear rise with oil.'),
  'ring-broken-or-stuck': entry(traits(0.07, 2.0, 0.65, { crankcase: 1 }, { sealedByOil: { mean: 0.38, spread: 0.2 } }),
    FROM_MEMORY, 'Broken or stuck ring: more loss than wear, oil helps only in part.'),
  'piston-damage': entry(traits(0.045, 5, 1.1, { crankcase: 1 }, { sealedByOil: { mean: 0.1, spread: 0.12 }, silent: 0.06 }),
    FROM_MEMORY, 'Holed, cracked or burnt piston: heavy loss, loud at the filler, oil runs through; a crack that is not through yet costs nothing.'),
  'valve-not-opening': entry(traits(0.045, 2.2, 0.8, {}, { leaks: false, silent: 0.45 }), ROUGH_CALCULATION,
    'Worn lobe, bent pushrod, collapsed tappet: an intake that hardly opens starves the cylinder and nothing leaks; a lobe worn to a tenth still fills, and an exhaust that never opens reads normal.'),
  'clearance-tight': entry(traits(0.075, 1.6, 0.8, { exhaust: 0.65, intake: 0.35 }, { stopsWithSlackRockers: 0.95 }),
    COMMON_PRACTICE, 'No clearance, a valve held off its seat: leaks like a burnt valve until the rocker is slackened.'),
  'carbon-build-up': entry(traits(0.04, 0.14, 0.6, {}, { leaks: false, sign: -1 }), COMMON_PRACTICE,
    'Carbon on crown and chamber: the reading is higher than its sisters.'),
  'fuel-wash': entry(traits(0.045, 1.2, 0.5, { crankcase: 1 }, { sealedByOil: { mean: 0.78, spread: 0.15 } }),
    FROM_MEMORY, 'Fuel has washed the oil film off the bore: leaks past sound rings, oil brings nearly all of it back.'),
  'gasket-to-coolant': entry(traits(0.05, 0.9, 0.75, { coolant: 1 }, { least: LEAST_OUTWARD, silent: 0.15 }), `${PLUS_LISTENING}; ${UNDER_LOAD}`,
    'Head gasket leaking into the cooling water: bubbles; at first now and then under combustion pressure alone, and neither the gauge nor the air shows it.'),
  'gasket-to-outside': entry(traits(0.025, 0.9, 0.75, { outside: 1 }, { least: LEAST_OUTWARD }), COMMON_PRACTICE,
    'Head gasket blowing to the open air: soap bubbles at the joint.'),
  'cracked-head': entry(traits(0.03, 0.9, 0.8, { coolant: 0.76, outside: 0.08, exhaust: 0.08, intake: 0.08 }, { least: LEAST_OUTWARD, silent: 0.15 }),
    `share and severity from memory; a gasket sign may be a cracked head: Sweethaven course; ${UNDER_LOAD}`,
    'Cracked head: mostly bubbles in the coolant, now and then into a port; some cracks open only hot and under load.'),
  'valve-sticking': entry(traits(0.065, 2.2, 0.95, { exhaust: 0.6, intake: 0.4 }, { stopsWithSlackRockers: 0.1, silent: 0.05, shows: 0.75 }),
    COMMON_PRACTICE, 'Sticky stem or debris on the seat: leaks like a burnt valve today and may pass after a run.'),
  'rod-bent': entry(traits(0.015, 0.2, 0.6, {}, { leaks: false }), FROM_MEMORY,
    'Bent rod: the piston stops short of the top, compression low, nothing leaks.'),
  'plug-thread-leak': entry(traits(0.025, 0.75, 0.75, { outside: 1 }, { least: LEAST_OUTWARD }), COMMON_PRACTICE,
    'Leak past the plug thread or its seat: soap bubbles at the plug.'),
}

/** Bridge between two cylinders under one gasket. Both lose the same leak. */
export const bridge = {
  prior: entry(0.012, FROM_MEMORY, 'Chance that a given pair of neighbours is joined through the gasket, on an engine brought in for testing.'),
  leak: entry({ median: 2.3, spread: 0.9, least: LEAST_OUTWARD }, 'from memory; an extremely low pair of neighbours: TM 5-1185',
    'Leak between the two cylinders of a bridged pair, as for faults (mm2 on cylinders of 400 cm3).'),
} as const

/** Faults that are found together in one cylinder, with how often the second comes on top of the first. */
export const pairs = {
  chance: entry(0.1, FROM_MEMORY, 'Chance that a faulty cylinder has a second fault of the list below: burnt valve and tired rings are the ordinary old engine.'),
  secondPart: entry(0.45, FROM_MEMORY, 'The lesser fault leaks this part of what the greater one leaks.'),
  together: entry([
    ['exhaust-valve-leak', 'ring-wear'], ['ring-wear', 'exhaust-valve-leak'], ['intake-valve-leak', 'ring-wear'],
    ['ring-wear', 'intake-valve-leak'], ['exhaust-valve-leak', 'intake-valve-leak'], ['intake-valve-leak', 'exhaust-valve-leak'],
    ['exhaust-valve-leak', 'ring-broken-or-stuck'], ['ring-broken-or-stuck', 'exhaust-valve-leak'],
    ['exhaust-valve-leak', 'gasket-to-coolant'], ['gasket-to-coolant', 'exhaust-valve-leak'], ['fuel-wash', 'exhaust-valve-leak'],
    ['piston-damage', 'exhaust-valve-leak'], ['exhaust-valve-leak', 'carbon-build-up'], ['ring-wear', 'carbon-build-up'],
    ['gasket-to-coolant', 'ring-wear'], ['ring-wear', 'gasket-to-coolant'], ['valve-not-opening', 'ring-wear'],
  ] as ReadonlyArray<readonly [Fault, Fault]>, FROM_MEMORY, 'Pairs in the space of the model: the one that costs more pressure first.'),
} as const

/** Chance that a cylinder of an engine on the stand has a fault of its own. */
export const faultyCylinder = entry(0.12, FROM_MEMORY, 'Chance, before any reading, that a given cylinder of a four has a fault of its own.')

/** An engine is brought in for a complaint, mostly one cylinder's: how the chance for each falls with their number. */
export const withCylinders = entry(0.5, FROM_MEMORY, 'The chance for each cylinder goes as four over the number of cylinders to this power: an engine is brought in for one complaint, whatever its size.')

/**
 * Faults that come to several cylinders at once because one thing made them: stuck rings and sticky valves by standing, fuel
 * wash by choke or float, carbon by short runs. `chance`: that an engine has such a tendency; `each`: then, for each cylinder.
 */
export const tendencies: Readonly<Partial<Record<Fault, Entry<{ readonly chance: number; readonly each: number }>>>> = {
  'exhaust-valve-leak': entry({ chance: 0.02, each: 0.35 }, COMMON_PRACTICE, 'What burnt one exhaust valve (heat, weak mixture, age) has mostly reached others.'),
  'ring-wear': entry({ chance: 0.03, each: 0.4 }, COMMON_PRACTICE, 'Dirt, poor oil or many kilometres wear several bores, and not evenly.'),
  'ring-broken-or-stuck': entry({ chance: 0.01, each: 0.4 }, COMMON_PRACTICE, 'Rings stuck in several cylinders, mostly by standing.'),
  'fuel-wash': entry({ chance: 0.008, each: 0.4 }, COMMON_PRACTICE, 'A rich mixture washes several bores.'),
  'carbon-build-up': entry({ chance: 0.008, each: 0.4 }, COMMON_PRACTICE, 'Short runs or oil leave carbon in several cylinders.'),
  'clearance-tight': entry({ chance: 0.006, each: 0.4 }, COMMON_PRACTICE, 'Clearances close up on every valve that runs hot: not set for long, or set wrong, they are gone on several.'),
  'valve-sticking': entry({ chance: 0.008, each: 0.4 }, COMMON_PRACTICE, 'Old fuel or standing makes several valves stick.'),
}
