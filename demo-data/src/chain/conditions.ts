import type { Conditions } from '@evenbore/contract'

/** The usual way: hot, throttle open, all plugs out, ten compression strokes. */
export const HOT: Conditions = { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 10, crankingRpm: 210, batteryVolts: 10.8 }
export const WARM: Conditions = { ...HOT, engine: 'warm' }
export const COLD: Conditions = { ...HOT, engine: 'cold', crankingRpm: 180, batteryVolts: 10.1 }
/** Cold, and the throttle was left shut: numbers that must not be compared with others. */
export const SHUT: Conditions = { ...COLD, throttle: 'closed' }
export const DIESEL: Conditions = { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6, crankingRpm: 240, batteryVolts: 11.2 }
