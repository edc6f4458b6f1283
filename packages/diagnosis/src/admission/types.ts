import type {
  Caution, Conditions, CrankingCurrentReading, EngineDescription, ListeningPoint, Objection, PressureUnit,
} from '@evenbore/contract'

/** The gauge of one session in SI. `boundPa` is the class bound on its error at zero and at full span (0 for a perfect one). */
export interface AdmittedGauge {
  readonly spanPa: number | null
  readonly boundPa: number
  readonly statedResolutionPa: number | null
  readonly volumeBeforeValveMl: number | null
  /** held into the plug hole by hand, not screwed in */
  readonly held: boolean
  /** false where the case describes no gauge and `boundPa` is an assumption */
  readonly stated: boolean
}

/** The leakage tester of one session in SI. */
export interface AdmittedTester {
  readonly supplyPa: number
  readonly restrictorMm: number
}

/** One set of conditions; `id` null is the top level of the case. */
export interface AdmittedSession {
  readonly id: string | null
  readonly conditions: Conditions
  /** absolute air pressure at the station, and its standard uncertainty */
  readonly airPa: number
  readonly airSdPa: number
  readonly airFrom: 'typed' | 'altitude' | 'assumed'
  readonly gauge: AdmittedGauge
  readonly tester: AdmittedTester | null
}

export type CompressionKind = 'dry' | 'wet' | 'running' | 'snap'

/** One compression reading in SI (gauge pressure, pascal). */
export interface CompressionEvidence {
  readonly reading: number
  readonly cylinder: number
  /** index into `Admission.sessions` */
  readonly session: number
  readonly kind: CompressionKind
  /** null where nobody counted */
  readonly strokes: number | null
  readonly pa: number
  /** where the true needle stood: half a mark either side; below the first mark from 0; at or past the span up to Infinity */
  readonly lowPa: number
  readonly highPa: number
  readonly resolutionPa: number
  /** repeatability (standard deviation) */
  readonly sdPa: number
  /**
   * false: kept, but not to be used as evidence (another stroke count than its sisters, oil in a diesel).
   * Readings of other sessions than the one judged stay usable within their own session.
   */
  readonly usable: boolean
  /** true for the readings that consistency was judged on */
  readonly judged: boolean
  readonly seq: number | null
  readonly firstStrokePa: number | null
  readonly strokesPa: readonly number[] | null
  readonly oilMl: number | null
  readonly heldTenSeconds: boolean | null
}

/** The repeats of one judged cylinder, combined. */
export interface CombinedCylinder {
  readonly cylinder: number
  /** indexes of the readings, ascending */
  readonly readings: readonly number[]
  readonly evidence: readonly CompressionEvidence[]
  /** arithmetic mean of the repeats */
  readonly pa: number
  /** 1 when the repeats agree; above 1 they contradict each other and their scatter is widened by this factor */
  readonly widening: number
}

/** What consistency is judged on: one session, one kind of reading. */
export interface Judged {
  readonly session: number
  readonly kind: 'dry' | 'running' | 'snap'
  /** by cylinder number */
  readonly cylinders: readonly CombinedCylinder[]
}

/** One leakage reading made comparable. Areas in mm2, pressures in pascal. Null where it cannot be computed. */
export interface LeakageEvidence {
  readonly reading: number
  readonly cylinder: number
  readonly session: number
  /** percent of the supplied pressure lost, 0 to 100, as read */
  readonly percent: number | null
  /** leak area over restrictor area */
  readonly areaRatio: number | null
  readonly leakAreaMm2: number | null
  /** standard deviation of the natural logarithm of the area: gauges, discharge, pressure dependence of the rings */
  readonly areaLogSd: number | null
  /** percent the reference tester would have shown (80 psi, prescribed restrictor, sea level) */
  readonly percentAtReference: number | null
  readonly percentAtReferenceLow: number | null
  readonly percentAtReferenceHigh: number | null
  /** over 25 percent lost, exactly 25 is not */
  readonly overLimit: boolean | null
  readonly againstSisters: number | null
  readonly heard: Readonly<Partial<Record<ListeningPoint, number>>> | null
  readonly neighbour: number | null
  readonly rockersSlack: readonly number[]
  readonly wet: boolean
  readonly offTopDeg: number | null
}

/** Where the cylinders sit and which of them are neighbours under a gasket. */
export interface EngineLayout {
  readonly banks: readonly (readonly number[])[]
  readonly gaskets: readonly (readonly number[])[]
  /** consecutive entries of each gasket, in order */
  readonly neighbours: readonly (readonly [number, number])[]
  readonly firingOrder: readonly number[] | null
  /** swept volume of one cylinder, null without bore and stroke */
  readonly displacementCm3: number | null
}

/** A cranking-current reading, left for the waveform room. */
export interface CurrentEvidence {
  readonly reading: number
  readonly session: number
  readonly trace: CrankingCurrentReading
}

/** A case made ready: sessions resolved, readings in SI, what may be compared, objections and cautions that need no belief. */
export interface Admission {
  readonly engine: EngineDescription
  readonly layout: EngineLayout
  readonly sessions: readonly AdmittedSession[]
  /** the unit answers are given in: the commonest among the readings */
  readonly unit: PressureUnit
  readonly compression: readonly CompressionEvidence[]
  readonly judged: Judged | null
  readonly leakage: readonly LeakageEvidence[]
  readonly currents: readonly CurrentEvidence[]
  readonly objections: readonly Objection[]
  readonly cautions: readonly Caution[]
}
