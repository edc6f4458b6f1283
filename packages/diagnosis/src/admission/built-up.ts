import { fitBuildUp, unbuiltPart } from '../physics/build-up.ts'
import type { BuiltUp } from '../physics/expected.ts'
import { median } from './leakage.ts'
import type { CombinedCylinder, CompressionEvidence, Judged } from './types.ts'

/** What is carried beyond the last stroke is known to this part of it; from memory. */
const CARRIED_FURTHER = 0.4
/** Less than this was not built up by any count of strokes worth a reading. */
const LEAST_BUILT = 0.4

/**
 * How far the strokes of a test built the pressure up, where first strokes or all of them were noted: the middle one of the cylinders, for a
 * leak lets a cylinder stand still early. Null where nothing was noted.
 */
export function measuredBuiltUp(judged: Judged | null): BuiltUp | null {
  if (judged === null || judged.kind !== 'dry') return null
  const log = median(judged.cylinders.map(ofCylinder).filter((each) => each !== null))
  return log === null ? null : { log, sd: CARRIED_FURTHER * Math.abs(log) }
}

function ofCylinder({ evidence }: CombinedCylinder): number | null {
  return median(evidence.map(ofReading).filter((each) => each !== null))
}

function ofReading({ pa, strokes, strokesPa, firstStrokePa }: CompressionEvidence): number | null {
  if (!(pa > 0)) return null
  const fit = strokesPa === null ? null : fitBuildUp(strokesPa.map((_, index) => index + 1), strokesPa)
  if (fit !== null) return Math.max(Math.log(LEAST_BUILT), Math.min(0, Math.log(pa / fit.level)))
  const count = strokesPa?.length ?? strokes
  const first = strokesPa?.[0] ?? firstStrokePa
  if (count === null || count < 2 || first === null || first === undefined) return null
  return Math.max(Math.log(LEAST_BUILT), Math.log1p(-(unbuiltPart(first, pa, count) ** count)))
}
