import type { EngineDescription } from '@evenbore/contract'
import type { Knowledge } from '../knowledge/knowledge.ts'

/**
 * Rise of the reading (natural logarithm) because oil takes room above the piston, with its common spread and its scatter from cylinder to cylinder.
 * Polytropic compression into a clearance that the oil made smaller; displacement and ratio that are not known are the usual ones, with more spread.
 * `oilMl` undefined takes the tablespoon of the trade.
 */
export function oilRise(engine: EngineDescription, displacementCm3: number | null, knowledge: Knowledge) {
  const { tablespoonMl, partThatStays, usualRatio, sizeUnknown, unevenRoom, amountUnknown } = knowledge.oil
  const displacement = displacementCm3 ?? knowledge.noise.unknownDisplacementCm3.value
  const clearance = displacement / ((engine.compressionRatio ?? usualRatio.value[engine.valveGear ?? 'overhead']) - 1)
  const known = displacementCm3 !== null && engine.compressionRatio !== undefined
  return (oilMl: number | undefined): { mean: number; spread: number; scatter: number } => {
    const ml = oilMl ?? tablespoonMl.value
    const rise = (part: number): number => {
      const left = Math.max(0.35 * clearance, clearance - part * ml)
      const swept = 0.82 * displacement
      return Math.log(((swept + left) / left) ** EXPONENT - 1) - Math.log(((swept + clearance) / clearance) ** EXPONENT - 1)
    }
    const mean = rise(partThatStays.value.mean)
    const spread = (rise(partThatStays.value.mean + partThatStays.value.spread) - rise(partThatStays.value.mean - partThatStays.value.spread)) / 2
    return { mean, spread: Math.max(0.01, Math.hypot(spread, known ? 0 : sizeUnknown.value * mean)), scatter: mean * Math.hypot(unevenRoom.value, oilMl === undefined ? amountUnknown.value : 0) }
  }
}

/** Polytropic exponent while cranking (1.2 to 1.3, encyclopedia worked calculation). */
const EXPONENT = 1.25
