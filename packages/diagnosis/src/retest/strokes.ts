import type { CombinedCylinder } from '../admission/types.ts'
import { fitBuildUp } from '../physics/build-up.ts'

/** Factors that bring two cylinders to the same number of strokes; null where the build-up was not recorded. */
export interface StrokeCorrection {
  readonly before: number
  readonly after: number
}

/** Standard deviation that a build-up fitted and carried further adds, relative; from memory. */
export const CARRIED_FURTHER_SD = 0.02

/** Corrects unlike stroke counts, as far as the peaks after each stroke were noted. */
export function equalStrokes(before: CombinedCylinder, after: CombinedCylinder): (StrokeCorrection & { readonly carried: boolean }) | null {
  const old = before.evidence[0]!.strokes
  const now = after.evidence[0]!.strokes
  if (old === null || now === null || old === now) return { before: 1, after: 1, carried: false }
  const [longer, shorter, count] = old > now ? [before, after, now] : [after, before, old]
  const listed = longer.evidence.find(({ strokesPa }) => strokesPa && strokesPa.length >= count)
  if (listed && listed.pa > 0) {
    const factor = listed.strokesPa![count - 1]! / listed.pa
    return longer === before ? { before: factor, after: 1, carried: false } : { before: 1, after: factor, carried: false }
  }
  const grown = shorter.evidence.find(({ strokesPa }) => strokesPa && strokesPa.length >= 3)
  const fit = grown && fitBuildUp(grown.strokesPa!.map((_, index) => index + 1), grown.strokesPa!)
  if (!grown || !fit) return null
  const factor = Math.expm1(-fit.rate * Math.max(old, now)) / Math.expm1(-fit.rate * count)
  return shorter === before ? { before: factor, after: 1, carried: true } : { before: 1, after: factor, carried: true }
}
