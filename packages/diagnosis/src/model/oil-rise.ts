import type { EngineDescription } from '@evenbore/contract'
import type { Knowledge } from '../knowledge/knowledge.ts'

/**
 * Rise of the reading (natural logarithm) because oil takes room above the piston, with its common spread and its scatter from cylinder to cylinder.
 * Polytropic compression into a clearance that the oil made smaller; needs displacement and ratio, else a guess from the tables.
 * `oilMl` undefined takes the tablespoon of the trade.
 */
export function oilRise(engine: EngineDescription, displacementCm3: number | null, knowledge: Knowledge) {
  const { tablespoonMl, partThatStays, unknownRise, unevenRoom, amountUnknown } = knowledge.oil
  return (oilMl: number | undefined): { mean: number; spread: number; scatter: number } => {
    const ml = oilMl ?? tablespoonMl.value
    const uneven = Math.hypot(unevenRoom.value, oilMl === undefined ? amountUnknown.value : 0)
    const ratio = engine.compressionRatio
    if (displacementCm3 === null || ratio === undefined) {
      const mean = unknownRise.value.mean * ml / tablespoonMl.value
      return { mean, spread: unknownRise.value.spread * Math.max(0.3, ml / tablespoonMl.value), scatter: uneven * mean }
    }
    const clearance = displacementCm3 / (ratio - 1)
    const rise = (part: number): number => {
      const left = Math.max(0.35 * clearance, clearance - part * ml)
      const swept = 0.82 * displacementCm3
      return Math.log(((swept + left) / left) ** EXPONENT - 1) - Math.log(((swept + clearance) / clearance) ** EXPONENT - 1)
    }
    const mean = rise(partThatStays.value.mean)
    const spread = (rise(partThatStays.value.mean + partThatStays.value.spread) - rise(partThatStays.value.mean - partThatStays.value.spread)) / 2
    return { mean, spread: Math.max(0.01, spread), scatter: uneven * mean }
  }
}

/** Polytropic exponent while cranking (1.2 to 1.3, encyclopedia worked calculation). */
const EXPONENT = 1.25
