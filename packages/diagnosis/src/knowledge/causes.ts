import { COMMON_PRACTICE, FROM_MEMORY, ROUGH_CALCULATION, entry, type Entry } from './entry.ts'

/** What can pull a whole engine down (or its readings off), in the fixed order of the answer. */
export const CAUSES = ['throttle-closed', 'slow-cranking', 'valve-timing', 'worn-evenly', 'gauge-error', 'none'] as const
export type Cause = (typeof CAUSES)[number]

/** `prior`: before any reading. `shift`, `spread`: of the logarithm of the common level against the expected one. `far`: in this part of the engines it goes much further. */
export interface CauseTraits {
  readonly prior: number
  readonly shift: number
  readonly spread: number
  readonly far?: { readonly part: number; readonly shift: number; readonly spread: number }
}

/** Causes common to all cylinders. The shifts of worn-evenly stand in `wornEvenly`. */
export const causes: Readonly<Record<Cause, Entry<CauseTraits>>> = {
  'throttle-closed': entry({ prior: 0.03, shift: -0.35, spread: 0.22 }, FROM_MEMORY, 'Throttle or choke shut while cranking, whatever was noted: all low, small spread; by how much goes with how tight it shuts.'),
  'slow-cranking': entry({ prior: 0.04, shift: -0.22, spread: 0.1 }, ROUGH_CALCULATION, 'Starter or battery too slow: 140 rpm, where slow begins, reads 11 percent below 200, 75 rpm 28 percent.'),
  'valve-timing': entry({ prior: 0.025, shift: -0.2, spread: 0.14, far: { part: 0.05, shift: -1.8, spread: 1 } }, ROUGH_CALCULATION, 'Intake closing late: 15 degrees cost 8 percent, 30 degrees 19. Far: the drive of the camshaft has jumped or is broken, and hardly any cylinder compresses (from memory).'),
  'worn-evenly': entry({ prior: 0.09, shift: -0.2, spread: 0.08 }, COMMON_PRACTICE, 'All bores and rings worn alike: all low, all leak at the filler, all rise with oil.'),
  'gauge-error': entry({ prior: 0.03, shift: -0.02, spread: 0.3, far: { part: 0.15, shift: -0.5, spread: 1.5 } }, FROM_MEMORY, 'Gauge, hose or adaptor reads wrong by a common factor. Far: it is broken or not connected, or another unit was noted.'),
  none: entry({ prior: 0.785, shift: 0, spread: 0.03 }, FROM_MEMORY, 'Nothing common to all cylinders.'),
}

/** Evenly worn engines: degrees of common leak past the rings, as loss of logarithmic pressure. */
export const wornEvenly = {
  leaks: entry([0.35, 0.6, 1, 1.7], 'common practice, no source: 20 to 30 percent lost is worn, over 30 repair', 'Degrees of even wear: leak past the rings beyond a sound one, mm2 on 400 cm3, at which the sum is taken (with the sound leak 15, 27, 46 and 70 percent lost).'),
  weights: entry([0.3, 0.35, 0.25, 0.1], FROM_MEMORY, 'How common each degree is among evenly worn engines.'),
  sealedByOil: entry({ mean: 0.55, spread: 0.2 }, 'US Army TM 5-4210-230-14&P-1 addendum 2 (clear rise = rings); amount from memory', 'Part of the common leak that oil closes.'),
  leakSpread: entry(0.25, FROM_MEMORY, 'Scatter of the common leak about each degree (sd of logarithm).'),
  leakSisters: entry(0.3, FROM_MEMORY, 'Leaks of evenly worn cylinders differ among themselves (sd of logarithm).'),
  plugOil: entry(0.3, FROM_MEMORY, 'Chance of an oily plug in any cylinder of an evenly worn engine.'),
} as const

/** Timing off on one bank of two: its cylinders alone are low, all by as much. */
export const oneBank = {
  part: entry(0.4, FROM_MEMORY, 'Of engines of two banks whose valve timing is off, those in which it is off on one bank alone: each has its own marks to miss.'),
  loss: entry({ median: 0.16, spread: 0.6, least: 0.045 }, ROUGH_CALCULATION, 'What that bank loses against the other (logarithm of pressure; intake closing 15 degrees late costs 8 percent, 30 degrees 19); banks closer than the least are taken as alike.'),
} as const

/** Another gauge on one cylinder: chance that it reads noticeably otherwise. */
export const otherGauge = {
  differs: entry(0.95, FROM_MEMORY, 'Where the first gauge, its hose or adaptor is wrong by enough to matter.'),
  agrees: entry(0.035, FROM_MEMORY, 'Two right gauges on one cylinder read alike to this (sd of logarithm), apart from what their classes allow: hose and adaptor of another volume, another crank, a battery a little more tired.'),
  differsAnyway: entry(0.03, FROM_MEMORY, 'Where it is right: another crank, the other gauge\'s own error.'),
} as const

/** Cranking speed from a current trace, where nobody noted it. */
export const crankingSpeed = {
  plugsIn: entry(0.87, FROM_MEMORY, 'With all plugs in, as for a current trace, the speed is this part of that with all plugs out.'),
  usual: entry(0.17, FROM_MEMORY, 'Spread of the speeds of starters that are as they should be (sd of logarithm).'),
  trace: entry(0.06, FROM_MEMORY, 'How far the speed of a trace may be from that of the compression test: plugs, another moment of the battery (sd of logarithm).'),
  saysNothing: entry(0.1, FROM_MEMORY, 'A density that any trace has (by logarithm of the pressure that its speed makes): the beat misread, a battery changed in between.'),
} as const

/** The level that a sound engine of this kind shows when nothing is known of its geometry. */
export const levels = {
  petrolPa: entry(1.03e6, COMMON_PRACTICE, 'Petrol engine of unknown geometry: about 150 psi.'),
  petrolSideValvePa: entry(5.4e5, FROM_MEMORY, 'Side-valve engine: 60 to 100 psi may be sound.'),
  dieselPa: entry(2.55e6, 'TM 5-2420-230-24-2 p. 14-22 (new 350 psi, used 300 at 250 rpm); spread of makes from memory', 'Diesel of unknown geometry.'),
  dieselRatio: entry(19, FROM_MEMORY, 'Compression ratio of a diesel whose own is not known, for how fast the strokes build up.'),
  unknownSpread: entry(0.25, FROM_MEMORY, 'Spread (sd of logarithm) of the level when the geometry is unknown.'),
  knownSpread: entry(0.1, FROM_MEMORY, 'Spread added to the computed window: cams, gauges, adaptors, heat.'),
  normalCrankingRpm: entry(200, 'from memory: 150 to 250 rpm', 'Cranking speed when none is noted.'),
  speedExponent: entry(0.33, ROUGH_CALCULATION, 'Level goes as speed to this power: 160 rpm reads 7 percent below 200, 250 as much above.'),
} as const
