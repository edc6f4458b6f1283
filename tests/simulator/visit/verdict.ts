import type { EngineDescription } from '@evenbore/contract'

const PA = { psi: 6894.757293168361, kPa: 1e3, bar: 1e5, 'kgf/cm2': 98066.5 } as const

/** Whether readings free of the gauge's noise lie inside the limit in force: the engine's own spread, else one tenth of the highest. */
export function insideLimit(engine: EngineDescription, noiseFreePa: readonly number[]): boolean {
  const highest = Math.max(...noiseFreePa)
  const lowest = Math.min(...noiseFreePa)
  const { spreadPercent, spreadPressure } = engine.limits ?? {}
  if (spreadPercent === undefined && spreadPressure === undefined) return (highest - lowest) / highest <= 0.1
  const percentHolds = spreadPercent === undefined || (100 * (highest - lowest)) / highest <= spreadPercent
  const pressureHolds = spreadPressure === undefined || highest - lowest <= spreadPressure.value * PA[spreadPressure.unit]
  return percentHolds && pressureHolds
}
