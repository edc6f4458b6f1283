import type { EngineDescription } from '@evenbore/contract'
import type { Knowledge } from '../knowledge/knowledge.ts'

/**
 * Rise of the reading (natural logarithm) because oil takes room above the piston, with its spread.
 * Polytropic compression into a clearance that the oil made smaller; needs displacement and ratio, else a guess from the tables.
 * `oilMl` undefined takes the tablespoon of the trade.
 */
export function oilRise(engine: EngineDescription, displacementCm3: number | null, knowledge: Knowledge) {
  const { tablespoonMl, partThatStays, unknownRise } = knowledge.oil
  return (oilMl: number | undefined): { mean: number; spread: number } => {
    const ml = oilMl ?? tablespoonMl.value
    const ratio = engine.compressionRatio
    if (displacementCm3 === null || ratio === undefined) {
      return { mean: unknownRise.value.mean * ml / tablespoonMl.value, spread: unknownRise.value.spread * Math.max(0.3, ml / tablespoonMl.value) }
    }
    const clearance = displacementCm3 / (ratio - 1)
    const rise = (part: number): number => {
      const left = Math.max(0.35 * clearance, clearance - part * ml)
      const swept = 0.82 * displacementCm3
      return Math.log(((swept + left) / left) ** EXPONENT - 1) - Math.log(((swept + clearance) / clearance) ** EXPONENT - 1)
    }
    const mean = rise(partThatStays.value.mean)
    const spread = (rise(partThatStays.value.mean + partThatStays.value.spread) - rise(partThatStays.value.mean - partThatStays.value.spread)) / 2
    return { mean, spread: Math.max(0.01, spread) }
  }
}

/** Polytropic exponent while cranking (1.2 to 1.3, encyclopedia worked calculation). */
const EXPONENT = 1.25
