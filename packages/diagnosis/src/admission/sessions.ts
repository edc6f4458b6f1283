import type { Case, CaseSession } from '@evenbore/contract'
import { STANDARD_AIR_PA, standardPressurePa } from '../physics/atmosphere.ts'
import { toPascal } from '../units/pressure.ts'
import type { AdmittedGauge, AdmittedSession } from './types.ts'

/** A typed air pressure is good to about 2 hPa, an altitude to the weather of the day, neither: to any inhabited place. From memory. */
const AIR_SD_PA = { typed: 200, altitude: 1000, assumed: 3500 } as const

/** A gauge nobody described is taken as class 1.6 with twice the highest reading as its span (EN 837-1 class; the choice from memory). */
const UNSTATED = { accuracyClass: 1.6, spanOverHighest: 2 } as const

/** Every set of conditions of a case: the top level first, then the sessions by id. */
export function admitSessions(value: Case): AdmittedSession[] {
  const ids = Object.keys(value.sessions ?? {}).sort()
  return [admitSession(null, value, value), ...ids.map((id) => admitSession(id, value.sessions![id]!, value))]
}

function admitSession(id: string | null, session: CaseSession, value: Case): AdmittedSession {
  const { conditions, leakageTester } = session
  const airFrom = conditions.airPressure ? 'typed' : conditions.altitudeM !== undefined ? 'altitude' : 'assumed'
  const airPa = conditions.airPressure
    ? toPascal(conditions.airPressure)
    : conditions.altitudeM !== undefined ? standardPressurePa(conditions.altitudeM) : STANDARD_AIR_PA
  return {
    id,
    conditions,
    airPa,
    airFrom,
    airSdPa: AIR_SD_PA[airFrom],
    gauge: admitGauge(id, session, value),
    tester: leakageTester ? { supplyPa: toPascal(leakageTester.supply), restrictorMm: leakageTester.restrictorMm } : null,
  }
}

function admitGauge(id: string | null, { gauge }: CaseSession, value: Case): AdmittedGauge {
  if (gauge) {
    const spanPa = toPascal(gauge.span)
    return {
      stated: true,
      spanPa,
      boundPa: (gauge.accuracyClass / 100) * spanPa,
      statedResolutionPa: gauge.resolution ? toPascal(gauge.resolution) : null,
      volumeBeforeValveMl: gauge.volumeBeforeValveMl ?? null,
      held: gauge.connection === 'held',
    }
  }
  let highest = 0
  for (const reading of value.readings) {
    if (reading.test === 'compression' && (reading.session ?? null) === id) highest = Math.max(highest, toPascal(reading.pressure))
  }
  const boundPa = (UNSTATED.accuracyClass / 100) * UNSTATED.spanOverHighest * highest
  return { stated: false, spanPa: null, boundPa, statedResolutionPa: null, volumeBeforeValveMl: null, held: false }
}
