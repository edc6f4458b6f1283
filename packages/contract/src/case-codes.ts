/** The closed lists of words that a case may use. A new word comes only with a new model version. */

export const FUELS = ['petrol', 'diesel'] as const
export const INJECTIONS = ['none', 'port', 'direct', 'mechanical-diesel', 'common-rail'] as const
export const LAYOUTS = ['inline', 'v', 'flat'] as const
export const VALVE_GEARS = ['overhead', 'side'] as const
export const COOLINGS = ['water', 'air'] as const
export const CAMSHAFTS = ['standard', 'other'] as const
export const ENGINE_TEMPERATURES = ['hot', 'warm', 'cold'] as const
export const THROTTLES = ['open', 'closed'] as const
export const PLUGS_OUT = ['all', 'one'] as const
export const GAUGE_CONNECTIONS = ['screwed', 'held'] as const
export const LISTENING_POINTS = ['intake', 'exhaust', 'crankcase', 'coolant', 'neighbour', 'outside'] as const
export const PLUG_APPEARANCES = ['tan', 'dry-black', 'wet-oil', 'wet-fuel', 'white', 'damaged'] as const
export const VACUUM_PATTERNS = ['steady', 'low-steady', 'regular-drop', 'irregular-drop', 'slow-fall'] as const
export const BORESCOPE_SIGHTS = ['burnt-exhaust-valve', 'scored-bore', 'cracked-piston', 'carbon', 'coolant', 'nothing'] as const
export const VALVES = ['intake', 'exhaust'] as const
export const CLEARANCE_STATES = ['right', 'tight', 'loose'] as const
export const OBSERVATION_CODES = [
  'weak-by-hand', 'locked-by-hand', 'smoke-blue-throttle', 'smoke-blue-overrun', 'smoke-white', 'smoke-black',
  'breather-smoke', 'water-in-oil', 'petrol-in-oil', 'oil-in-water', 'oil-use-high', 'spits-back',
  'bubbles-at-plug-thread', 'bubbles-at-joint', 'better-with-other-plug-and-lead', 'piston-low-at-top',
] as const
export const TESTS = [
  'compression', 'leakage', 'plug', 'power-balance', 'vacuum', 'coolant-gas', 'borescope', 'clearance', 'valve-lift',
  'cooling-pressure', 'observation', 'cranking-current',
] as const

export type ListeningPoint = (typeof LISTENING_POINTS)[number]
export type ObservationCode = (typeof OBSERVATION_CODES)[number]
export type PlugAppearance = (typeof PLUG_APPEARANCES)[number]
export type VacuumPattern = (typeof VACUUM_PATTERNS)[number]
export type BorescopeSight = (typeof BORESCOPE_SIGHTS)[number]
export type TestName = (typeof TESTS)[number]

/** Limits of a case. Work is bounded by them. */
export const CASE_LIMITS = { cylinders: 16, readings: 500, samples: 200_000, sessions: 500, strokes: 1000 } as const
