import type { CompressionReading, CylinderBelief } from '@evenbore/contract'
import type { Side } from './baseline.ts'

/** A cylinder believed sound at least this much before is still a measure for its sisters. */
const STILL_SOUND = 0.9

/**
 * Who repairs one cylinder often reads that one alone again. Its sisters, where they were sound and read dry before with the same gauge and as many
 * strokes, say what it should show: their earlier readings, as readings of the session that the retest is judged in. None where it was no dry retest.
 */
export function unreadSisters(before: Side, after: Side, beliefs: readonly CylinderBelief[]): CompressionReading[] {
  const then = before.admission.judged, now = after.admission.judged
  if (then?.kind !== 'dry' || now?.kind !== 'dry') return []
  const session = after.admission.sessions[now.session]!, old = before.admission.sessions[then.session]!
  const gauge = ({ spanPa, boundPa, statedResolutionPa, volumeBeforeValveMl, held }: typeof session.gauge): string => JSON.stringify([spanPa, boundPa, statedResolutionPa, volumeBeforeValveMl, held])
  const described = session.gauge.stated || old.gauge.stated
  if (described && gauge(session.gauge) !== gauge(old.gauge)) return []
  const read = new Set(now.cylinders.map(({ cylinder }) => cylinder)), strokes = now.cylinders[0]?.evidence[0]?.strokes
  return then.cylinders.flatMap(({ cylinder, evidence }) => {
    const sound = beliefs.find((belief) => belief.cylinder === cylinder)?.sound ?? 0
    if (read.has(cylinder) || sound < STILL_SOUND) return []
    return evidence.filter((each) => each.strokes === strokes).map(({ reading }): CompressionReading => {
      const { session: _session, seq: _seq, ...plain } = before.case.readings[reading] as CompressionReading
      return session.id === null ? plain : { ...plain, session: session.id }
    })
  })
}
