import type { Cause } from '../knowledge/causes.ts'
import type { Fault, Place } from '../knowledge/faults.ts'
import type { OilWay } from './states.ts'
import type { LiftFound } from './valve-train.ts'

/** A compression reading that may be compared, in SI units. `reading` is its number in the case. */
export interface CompressionEvidence {
  readonly reading: number
  readonly pressurePa: number
  /** Standard deviation of one reading in pascal: repeatability and resolution, without the class of the gauge. */
  readonly sdPa: number
  /** Read with a gauge held into the plug hole by hand. */
  readonly held?: boolean
  /** It did not hold for ten seconds: the pressure was at least this. */
  readonly dropped?: boolean
  /** Chance that the gauge still showed the cylinder before, being released by nobody: the pressure was at most this. */
  readonly unreleased?: number
  /** What it lost to a starter that had slowed down by then (logarithm), and the variance of that. */
  readonly sag?: { readonly shift: number; readonly variance: number }
  /** Oil put in before a wet reading. */
  readonly oilMl?: number
}

/** A leakage reading as the reference tester would have shown it. */
export interface LeakageEvidence {
  readonly reading: number
  /** Null when only the ears were used. */
  readonly percentAtReference: number | null
  readonly heard: Readonly<Partial<Record<Place, number>>>
  /** 0-based cylinder that was listened at for `heard.neighbour`; null when not noted. */
  readonly neighbour: number | null
  readonly wet: boolean
  /** True when the rockers of this very cylinder were slack, so that no valve could be held open by them. */
  readonly rockersSlack: boolean
  /** True when those of the neighbour that was listened at were slack: its valves were all shut. */
  readonly neighbourSlack: boolean
}

/** A thing seen or measured on one cylinder that has no number of its own kind. */
export type SightEvidence =
  | { readonly kind: 'plug'; readonly reading: number; readonly appearance: string; readonly afterRunAtSpeed: boolean }
  | { readonly kind: 'borescope'; readonly reading: number; readonly seen: readonly string[] }
  | { readonly kind: 'clearance'; readonly reading: number; readonly valve: 'intake' | 'exhaust'; readonly state: 'right' | 'tight' | 'loose' }
  /** What the lift may be found to be: one, or right and short where only the other valve of the cylinder says what is usual. */
  | { readonly kind: 'valve-lift'; readonly reading: number; readonly valve: 'intake' | 'exhaust'; readonly found: readonly LiftFound[] }
  | { readonly kind: 'sign'; readonly reading: number; readonly code: string; readonly present: boolean }
  /** Drop of speed as part of the median of the sisters. */
  | { readonly kind: 'power-balance'; readonly reading: number; readonly dropShare: number }
  /** Pressure against the median of the sisters (running, snap, another session), or of few running ones against what is usual for what the sisters cranked; natural logarithm. */
  | { readonly kind: 'relative'; readonly reading: number; readonly logRatio: number; readonly sd: number; readonly of: 'running' | 'snap' | 'session' }
  /** Compression in a trace of starter current, as part of the better half's, and its standard deviation. */
  | { readonly kind: 'trace'; readonly reading: number; readonly relative: number; readonly sd: number }
  /** First stroke over final pressure, against the median of the sisters, natural logarithm. */
  | { readonly kind: 'first-stroke'; readonly reading: number; readonly logRatio: number; readonly sd: number }

/** Another gauge on a cylinder that was read before: what is stated of it, and the natural logarithm of its reading over the first, with the standard deviation that the classes of both allow. */
export interface OtherGauge {
  readonly kind: 'other-gauge'
  readonly reading: number
  readonly gauge: string
  readonly logRatio: number
  readonly ofClass: number
}

/** A cylinder read while cranking and while the engine ran, at idle or in a snap of the throttle: natural logarithms of Pa. */
export interface RunningShare {
  readonly kind: 'running-share'
  readonly reading: number
  readonly of: 'running' | 'snap'
  readonly otherGauge: boolean
  readonly running: number
  readonly cranking: number
  readonly sd: number
}

/** Cranking speed from a current trace where none was measured, as with the plugs out that were out for the gauge, rpm. */
export interface CrankingSpeed {
  readonly kind: 'cranking-speed'
  readonly reading: number
  readonly rpm: number
}

/** A vacuum gauge at idle: how the needle moved and, where it was noted, how deep it stood as a part of the air pressure. */
export interface VacuumEvidence {
  readonly kind: 'vacuum'
  readonly reading: number
  readonly pattern: string
  readonly depth: number | null
}

/** What speaks of the whole engine: a sign that any cylinder may be behind, a check of the gauge, or running against cranking. */
export type EngineEvidence =
  | { readonly kind: 'engine-sign'; readonly reading: number; readonly code: string; readonly present: boolean }
  | VacuumEvidence
  | OtherGauge
  | RunningShare
  | CrankingSpeed

/** All that is known of one cylinder. */
export interface CylinderEvidence {
  readonly dry: readonly CompressionEvidence[]
  readonly wet: readonly CompressionEvidence[]
  readonly leakage: readonly LeakageEvidence[]
  readonly sights: readonly SightEvidence[]
  /** Factors on the share of faults in this cylinder (its place in the engine, its past). */
  readonly faultFactors: Readonly<Partial<Record<Fault, number>>>
}

/** Rise by the room oil takes: mean, spread common to the engine, scatter from cylinder to cylinder. */
export interface OilRise {
  readonly mean: number
  readonly spread: number
  readonly scatter: number
}

/** All that the model reasons from: SI units, cylinders and gaskets 0-based. */
export interface Evidence {
  readonly cylinders: readonly CylinderEvidence[]
  /** Each cylinder in one list, neighbours next to each other. */
  readonly gaskets: readonly (readonly number[])[]
  /** Cylinders of each bank that has valve timing of its own; none where one camshaft in the block works the side valves of all. */
  readonly timedBanks: readonly (readonly number[])[]
  /** Which cylinders have an intake (exhaust) valve open while cylinder i stands at firing top: [i][j]. */
  readonly openValves: { readonly intake: readonly (readonly boolean[])[]; readonly exhaust: readonly (readonly boolean[])[] } | null
  readonly engine: readonly EngineEvidence[]
  readonly causeFactors: Readonly<Partial<Record<Cause, number>>>
  /** Logarithm of the reading (Pa, gauge) that a sound engine of this kind should show under these conditions. */
  readonly expected: { readonly logPa: number; readonly spread: number }
  /** True when the cranking speed was measured and is already in `expected`. */
  readonly speedKnown: boolean
  /** Cranking speed over the normal one. */
  readonly speedRatio: number
  /** Displacement of one cylinder. */
  readonly displacementCm3: number | null
  /** Rise (natural logarithm) by the room that oil takes in a sound cylinder, for a given amount of oil. */
  readonly oilRise: (oilMl: number | undefined) => OilRise
  readonly oilWay: OilWay
  /** Percentage lost at the reference tester for a leak area in mm2. */
  readonly percentAtReference: (areaMm2: number) => number
}
