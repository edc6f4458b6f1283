import type { Comparison } from '@evenbore/contract'
import type { Admission } from '../admission/types.ts'
import { consistency } from '../rules/consistency.ts'
import { gaugeError, probabilitySpreadInside } from '../rules/inside.ts'
import { readingDensity } from '../rules/reading-density.ts'

/** Spreads this close, in percentage points, count as the same: one and a half standard deviations of what two readings at each end make of no change at all; from memory. */
const SAME_POINTS = 3
/** Spreads at which the distribution is taken, as parts of the highest. */
const GRID = [0, 0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.08, 0.1, 0.12, 0.15, 0.18, 0.22, 0.27, 0.33, 0.4, 0.5, 0.6, 0.75, 0.9, 1]

/** The spread before and after, and the probabilities that it became smaller, stayed within three points, became larger. */
export function spreadChange(before: Admission, after: Admission, comparable: boolean): Comparison['spread'] {
  const old = consistency(before).spreadPercent
  const now = consistency(after).spreadPercent
  const shown = { before: old, after: now, change: old === null || now === null ? null : now - old }
  if (!comparable || old === null || now === null) return { ...shown, improved: null, unchanged: null, worse: null }
  const earlier = distribution(before)
  const later = distribution(after)
  let improved = 0
  let worse = 0
  for (const { at, mass } of earlier) {
    for (const other of later) {
      if (other.at < at - SAME_POINTS / 100) improved += mass * other.mass
      else if (other.at > at + SAME_POINTS / 100) worse += mass * other.mass
    }
  }
  return { ...shown, improved, unchanged: Math.max(0, 1 - improved - worse), worse }
}

/** The true spread's distribution as masses at fine steps, the distribution function taken as straight between grid points. */
function distribution({ judged, sessions }: Admission): { at: number; mass: number }[] {
  const cylinders = judged!.cylinders
  const tables = cylinders.map((cylinder) => readingDensity(cylinder, cylinders.filter((other) => other !== cylinder).map(({ pa }) => pa)))
  const error = gaugeError(sessions[judged!.session]!.gauge, Math.max(...cylinders.map(({ pa }) => pa)))
  const below = GRID.map((spread) => (spread === 0 ? 0 : spread === 1 ? 1 : probabilitySpreadInside(tables, { part: 1 - spread }, error)))
  return GRID.slice(1).flatMap((to, index) => {
    const from = GRID[index]!
    const mass = Math.max(0, below[index + 1]! - below[index]!)
    const pieces = Math.max(1, Math.round((to - from) / 0.005))
    return Array.from({ length: pieces }, (_, piece) => ({ at: from + ((to - from) * (piece + 0.5)) / pieces, mass: mass / pieces }))
  })
}
