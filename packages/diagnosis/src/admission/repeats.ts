import { cylinderWords, objection, type Remark } from './remark.ts'
import { THRESHOLDS } from './thresholds.ts'
import type { CombinedCylinder, CompressionEvidence } from './types.ts'

/** Standard deviation of one reading: repeatability and rounding together. */
export function readingSdPa(evidence: CompressionEvidence): number {
  return Math.hypot(evidence.sdPa, evidence.resolutionPa / Math.sqrt(12))
}

/** Whether two readings of one cylinder differ by more than two standard deviations of their difference. */
export function disagree(a: CompressionEvidence, b: CompressionEvidence): boolean {
  return Math.abs(a.pa - b.pa) > THRESHOLDS.repeatSds.value * Math.hypot(readingSdPa(a), readingSdPa(b))
}

/**
 * Combines repeats by cylinder: the mean as value; agreeing repeats narrow it. Where they contradict each other the scatter is
 * widened by the Birge ratio, the root of chi-square over degrees of freedom (from memory).
 */
export function combineRepeats(evidence: readonly CompressionEvidence[]): CombinedCylinder[] {
  const cylinders = Map.groupBy(evidence, (entry) => entry.cylinder)
  return [...cylinders].sort(([a], [b]) => a - b).map(([cylinder, entries]) => {
    const sorted = entries.toSorted((a, b) => a.reading - b.reading)
    // summed in order of size, so that the order of the list cannot move the last digit
    const pa = sorted.map((entry) => entry.pa).sort((a, b) => a - b).reduce((sum, each) => sum + each, 0) / sorted.length
    const contradiction = sorted.some((a) => sorted.some((b) => disagree(a, b)))
    const chiSquare = sorted.map((entry) => ((entry.pa - pa) / readingSdPa(entry)) ** 2).sort((a, b) => a - b).reduce((sum, each) => sum + each, 0)
    const widening = contradiction ? Math.max(1, Math.sqrt(chiSquare / (sorted.length - 1))) : 1
    return { cylinder, readings: sorted.map((entry) => entry.reading), evidence: sorted, pa, widening }
  })
}

/** Objections to repeats that contradict each other. */
export function repeatRemarks(cylinders: readonly CombinedCylinder[]): Remark[] {
  return cylinders.filter(({ widening, evidence }) => widening > 1 || evidence.some((a) => evidence.some((b) => disagree(a, b)))).map(({ evidence }) =>
    objection('repeat-disagrees', evidence, `The repeats of ${cylinderWords(evidence)} differ by more than a gauge explains.`, 'Reseat the adaptor, crank for as many strokes, read once more. A badly seated adaptor reads low, so trust the higher one first.'))
}
