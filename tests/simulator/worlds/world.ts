/** Every fault a cylinder can have of its own, in the words of the case contract. */
export const OWN_FAULTS = [
  'exhaust-valve-leak',
  'intake-valve-leak',
  'ring-wear',
  'ring-broken-or-stuck',
  'piston-damage',
  'valve-not-opening',
  'clearance-tight',
  'carbon-build-up',
  'fuel-wash',
  'gasket-to-coolant',
  'gasket-to-outside',
  'cracked-head',
  'valve-sticking',
  'rod-bent',
  'plug-thread-leak',
] as const
export type OwnFault = (typeof OWN_FAULTS)[number]

export const CAUSES = ['none', 'throttle-closed', 'slow-cranking', 'valve-timing', 'worn-evenly', 'gauge-error'] as const
export type Cause = (typeof CAUSES)[number]

/** A log-normal quantity cut at both ends. */
export type Spread = { readonly median: number; readonly logSd: number; readonly low: number; readonly high: number }
export type Range = readonly [low: number, high: number]

/** Where air can leave a cylinder. */
export type Path = 'exhaust' | 'intake' | 'rings' | 'coolant' | 'outside'

/** How often, how big and how loud things are: one set of beliefs about garages and engines. No source gives them; all are from memory. */
export type World = {
  readonly name: string
  /** Share of engines with nothing wrong that a test could find: no fault, no bridge, no engine-wide cause. */
  readonly healthyShare: number
  /** Weights of the engine-wide cause among the engines that are not healthy. */
  readonly causes: Readonly<Record<Cause, number>>
  /** Chance that an engine with an engine-wide cause also has a faulty cylinder. */
  readonly faultBesideCause: number
  readonly faultWeights: Readonly<Record<OwnFault | 'gasket-between', number>>
  /** Chance of one more faulty cylinder, asked again after each. */
  readonly anotherCylinder: number
  /** Chance that the further cylinder has the same fault as the first. */
  readonly sameFaultAgain: number
  readonly secondFaultSameCylinder: number
  readonly ignitionFault: number
  /** Leak areas in mm2 that a fault adds, effective. */
  readonly leaksMm2: Readonly<Record<Exclude<OwnFault, 'valve-not-opening' | 'carbon-build-up' | 'rod-bent'> | 'gasket-between', Spread>>
  /** Share of the leak that is left when oil is put in. */
  readonly oilLeaves: {
    readonly soundRings: Range
    readonly wornRings: Range
    readonly brokenRings: Range
    readonly piston: Range
    readonly washed: Range
    readonly valves: Range
    readonly head: Range
  }
  readonly oilMl: Range
  /** Share of the oil that still takes room while the reading is taken. */
  readonly oilStays: Range
  readonly soundRingsMm2: Spread
  readonly soundValveMm2: Spread
  /** Log standard deviation of ring leak between sound sisters. */
  readonly sisterRingLogSd: number
  /** Relative standard deviation of the clearance volume between sisters. */
  readonly sisterClearanceSd: number
  readonly wornEvenlyFactor: Range
  readonly ringLowPressureExcess: Range
  /** Log standard deviation between a leak while cranking and the same leak held at top dead centre. */
  readonly heldAgainstCrankingLogSd: { readonly rings: number; readonly others: number }
  readonly coldRingFactor: { readonly hot: number; readonly warm: number; readonly cold: number }
  readonly crankingRpm: { readonly petrol: Range; readonly diesel: Range }
  readonly slowRpm: Range
  readonly speedSagPerReading: Range
  readonly shutThrottleFill: Range
  readonly timingShiftDeg: Range
  readonly oneBankTiming: number
  readonly gaugeOff: { readonly low: Range; readonly high: Range; readonly lowShare: number }
  readonly gauge: {
    readonly classWeights: Readonly<Record<string, number>>
    readonly volumeBeforeValveMl: Range
    readonly volumeAfterValveMl: Range
    readonly repeatability: Range
    readonly resolutionPsiWeights: Readonly<Record<string, number>>
  }
  readonly tester: { readonly discharge: Range; readonly classWeights: Readonly<Record<string, number>>; readonly stated: number }
  readonly mistakes: {
    readonly wrongCylinder: number
    readonly adaptorLeaking: number
    readonly gaugeNotReleased: number
    readonly fewStrokes: number
    readonly pistonOffTop: number
    readonly misheardPath: number
  }
  readonly listening: {
    /** Area in mm2 heard as faint at each place, and the factor from one loudness to the next. */
    readonly faintMm2: Readonly<Record<Path | 'neighbour', number>>
    readonly factorPerStep: number
    readonly noise: number
    readonly falseFaint: number
    readonly notListened: number
    /** Share of a valve's leak that comes out at a plug hole whose valve stands open to the same manifold. */
    readonly throughManifold: number
    /** Share of ring leak heard at the intake where a breather hose joins them, and how often there is one. */
    readonly breatherShare: number
    readonly breatherChance: number
  }
  /** How clearly looks and running signs speak: 1 as in the tables of `visit/`, less = blurred towards chance. */
  readonly looksClarity: number
}
