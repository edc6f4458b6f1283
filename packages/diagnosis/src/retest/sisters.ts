import type { CompressionReading, CylinderBelief } from '@evenbore/contract'
import { gaugeBehind } from '../model/other-gauge.ts'
import type { Side } from './baseline.ts'

/** A cylinder believed sound at least this much before is still a measure for its sisters. */
const STILL_SOUND = 0.9

/**
 * Who repairs one cylinder often reads that one alone again. Its sisters, where they were sound and read dry before with the same gauge and as many
 * strokes, say what it should show: their earlier readings, as readings of the session that the retest is judged in. None where it was no dry retest.
 */
export function unreadSisters(before: Side, after: Side, beliefs: readonly CylinderBelief[]): CompressionReading[] {
  const then = before.admission.judged, now = after.admission.judged
  const first = now?.cylinders[0]?.evidence[0]
  if (then?.kind !== 'dry' || now?.kind !== 'dry' || first === undefined) return []
  const noted = ({ case: given }: Side, reading: number): CompressionReading => given.readings[reading] as CompressionReading
  const gauge = gaugeBehind(after.case, noted(after, first.reading))
  const read = new Set(now.cylinders.map(({ cylinder }) => cylinder)), { id } = after.admission.sessions[now.session]!
  return then.cylinders.flatMap(({ cylinder, evidence }) => {
    const sound = beliefs.find((belief) => belief.cylinder === cylinder)?.sound ?? 0
    if (read.has(cylinder) || sound < STILL_SOUND) return []
    return evidence.filter(({ strokes, reading }) => strokes === first.strokes && gaugeBehind(before.case, noted(before, reading)) === gauge).map(({ reading }): CompressionReading => {
      const { session: _session, seq: _seq, ...plain } = noted(before, reading)
      return id === null ? plain : { ...plain, session: id }
    })
  })
}
