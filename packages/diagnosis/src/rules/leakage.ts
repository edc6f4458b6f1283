import type { LeakageResult } from '@evenbore/contract'
import type { Admission } from '../admission/types.ts'

/** One entry for each leakage reading: what was lost, the leak's area, what the reference tester would have shown. */
export function leakageResults({ leakage }: Admission): LeakageResult[] {
  return leakage.map((entry) => {
    const { reading, cylinder, percent, overLimit, leakAreaMm2, percentAtReference, againstSisters } = entry
    const known = leakAreaMm2 !== null && entry.areaLogSd !== null && entry.percentAtReferenceLow !== null && entry.percentAtReferenceHigh !== null
    const reach = known ? Math.exp(1.959964 * entry.areaLogSd!) : 1
    return {
      reading, cylinder, percentAsRead: percent, overLimit, leakAreaMm2, percentAtReference, againstSisters,
      ...(known ? {
        leakAreaLowMm2: leakAreaMm2 / reach,
        leakAreaHighMm2: leakAreaMm2 * reach,
        percentAtReferenceLow: entry.percentAtReferenceLow!,
        percentAtReferenceHigh: entry.percentAtReferenceHigh!,
      } : {}),
    }
  })
}
