/** The closed lists of words that an evaluation may use. A new word comes only with a new model version. */

/** Faults of a cylinder's own. */
export const FAULTS = [
  'exhaust-valve-leak', 'intake-valve-leak', 'ring-wear', 'ring-broken-or-stuck', 'piston-damage', 'valve-not-opening',
  'clearance-tight', 'carbon-build-up', 'fuel-wash', 'gasket-to-coolant', 'gasket-to-outside', 'cracked-head', 'valve-sticking',
  'rod-bent', 'plug-thread-leak',
] as const
/** The fault between two neighbours. */
export const BRIDGE = 'gasket-between'
/** What may hold for the engine as a whole. */
export const CAUSES = ['throttle-closed', 'slow-cranking', 'valve-timing', 'worn-evenly', 'gauge-error', 'none'] as const
/** Repair operations. */
export const OPERATIONS = [
  'look-borescope', 'look-head-off', 'clearances-run-test', 'head-valves', 'guides', 'rings', 'rebore', 'soak-run-test', 'piston',
  'rocker-pushrod', 'cam-tappets', 'hard-run', 'decoke', 'fuel-wash', 'gasket-retorque', 'gasket-replace', 'head-crack', 'block',
  'timing', 'starter-battery', 'sticking-valve', 'plug-thread', 'rod', 'run-on', 'overhaul',
] as const
/** Rules of consistency and pressure. */
export const RULES = [
  'own-spread-percent', 'own-spread-pressure', 'one-tenth', 'three-quarters', 'fifth-below-mean', 'ten-psi', 'own-minimum', 'own-maximum',
] as const
/** Reasons why numbers must not be compared or believed. */
export const OBJECTIONS = [
  'mixed-strokes', 'mixed-conditions', 'oil-in-diesel', 'no-sister', 'incomplete', 'over-span', 'no-tester', 'not-weighed',
  'two-stroke', 'throttle-shut', 'too-few-strokes', 'speed-sag', 'gauge-not-released', 'adaptor-leaking', 'wrong-cylinder',
  'wrong-unit', 'rounded', 'piston-off-top', 'check-valve-left-in', 'regulator-droop', 'control-rises', 'wet-below-dry',
  'wet-too-high', 'sea-level-pressure', 'leakage-against-compression', 'repeat-disagrees',
] as const
/** Cautions, shown at the step where they matter. */
export const CAUTIONS = [
  'oil-in-diesel', 'cranking', 'petrol-mist', 'liquid-in-cylinder', 'wet-test-oil', 'diesel-spray', 'diesel-gauge', 'compressed-air',
  'running-engine', 'high-tension', 'current-clamp', 'coolant-cap', 'borescope', 'strip-down',
] as const
/** What to do before a suggested test. */
export const FIRST_STEPS = ['warm-up', 'run-engine', 'swap-gauge', 'set-clearances', 'swap-plug-and-lead'] as const
/** Verdicts on a rule, the gauge's uncertainty counted. */
export const VERDICTS = ['inside', 'outside', 'undecided'] as const
/** The trade's plain arithmetic on a rule. */
export const AS_READ = ['inside', 'outside'] as const

export type Fault = (typeof FAULTS)[number]
export type Cause = (typeof CAUSES)[number]
export type Operation = (typeof OPERATIONS)[number]
export type Rule = (typeof RULES)[number]
export type ObjectionCode = (typeof OBJECTIONS)[number]
export type CautionCode = (typeof CAUTIONS)[number]
export type FirstStep = (typeof FIRST_STEPS)[number]
export type Verdict = (typeof VERDICTS)[number]
export type AsRead = (typeof AS_READ)[number]
