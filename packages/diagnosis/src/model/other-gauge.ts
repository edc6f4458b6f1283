import type { Case, CompressionReading } from '@evenbore/contract'
import type { Admission } from '../admission/types.ts'
import type { Cause } from '../knowledge/causes.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { EngineEvidence } from './evidence.ts'

/** What is stated of the gauge behind a reading, as text: a case names no gauge, so gauges are told apart by what they are. */
export function gaugeBehind(given: Case, { session }: Pick<CompressionReading, 'session'>): string {
  return JSON.stringify((session === undefined ? undefined : given.sessions?.[session]?.gauge) ?? given.gauge ?? null)
}

/**
 * Checks of the gauge: cylinders that were read dry in the judged session, and with another gauge under the same conditions. Such readings
 * are not compared with the rest; what they say is whether the first gauge reads wrong by a common factor. One for each further session.
 */
export function otherGauges(given: Case, { compression, judged, sessions }: Admission): EngineEvidence[] {
  if (judged?.kind !== 'dry') return []
  const first = judged.cylinders[0]?.evidence[0]
  if (first === undefined) return []
  const gauge = gaugeBehind(given, given.readings[first.reading] as CompressionReading)
  const here = sessions[judged.session]!.conditions
  return [...Map.groupBy(compression, ({ session }) => session)].flatMap(([session, list]): EngineEvidence[] => {
    const there = sessions[session]!.conditions
    if (session === judged.session || here.engine !== there.engine || here.throttle !== there.throttle || here.plugsOut !== there.plugsOut) return []
    const checks = list.flatMap(({ reading, kind, cylinder, pa, strokes }) => {
      const before = judged.cylinders.find((c) => c.cylinder === cylinder)
      if (kind !== 'dry' || pa <= 0 || before === undefined || before.pa <= 0 || strokes !== first.strokes) return []
      return gaugeBehind(given, given.readings[reading] as CompressionReading) === gauge ? [] : [{ reading, log: Math.log(pa / before.pa) }]
    })
    return checks.length === 0 ? [] : [{ kind: 'other-gauge', reading: checks[0]!.reading, logRatio: checks.reduce((sum, { log }) => sum + log, 0) / checks.length }]
  })
}

/** How likely two gauges differ so much under a cause: by the error of a wrong gauge, or by what two right ones differ (and, rarely, by anything). */
export function weighOtherGauge(logRatio: number, cause: Cause, { otherGauge, causes }: Knowledge): number {
  const { shift, spread } = causes['gauge-error'].value
  const wrong = normal(logRatio + shift, Math.hypot(spread, otherGauge.agrees.value))
  if (cause === 'gauge-error') return wrong
  const odd = otherGauge.differsAnyway.value
  return (1 - odd) * normal(logRatio, otherGauge.agrees.value) + odd * wrong
}

function normal(gap: number, sd: number): number {
  return Math.exp(-0.5 * (gap / sd) ** 2) / sd
}
