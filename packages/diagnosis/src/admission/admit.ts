import type { Case, CautionCode, ObjectionCode } from '@evenbore/contract'
import { standardPressurePa } from '../physics/atmosphere.ts'
import { commonUnit } from '../units/pressure.ts'
import { cautionsFor } from './cautions.ts'
import { comparable } from './comparable.ts'
import { compressionEvidence } from './compression.ts'
import { engineLayout } from './layout.ts'
import { leakageEvidence } from './leakage.ts'
import { missingCylinders, orderMistakes, readingMistakes, throttleShut, wrongUnit } from './mistakes-compression.ts'
import { leakageMistakes } from './mistakes-leakage.ts'
import { wetMistakes } from './mistakes-wet.ts'
import { objection, type Remark } from './remark.ts'
import { repeatRemarks } from './repeats.ts'
import { admitSessions } from './sessions.ts'
import { THRESHOLDS } from './thresholds.ts'
import type { Admission, AdmittedSession } from './types.ts'

/**
 * Makes a case ready: sessions resolved, readings in SI with their uncertainty, what may be compared and what may not, and the
 * objections and cautions that numbers alone give rise to. Trusts that the case passed the contract.
 */
export function admit(value: Case): Admission {
  const { engine } = value
  const layout = engineLayout(engine)
  const sessions = admitSessions(value)
  const { evidence: compression, judged, remarks } = comparable(value, sessions, compressionEvidence(value, sessions))
  const { evidence: leakage, remarks: leakageRemarks } = leakageEvidence(value, sessions)
  const place = new Map(sessions.map(({ id }, index) => [id, index]))
  const objections: Remark[] = [
    ...(engine.cycle === 2 ? [objection('two-stroke', value.readings.map((_, reading) => ({ reading })), 'A two-stroke leaks by other ways than those this model knows: rules are reported, faults are not inferred.', "Go by the maker's procedure and limits.")] : []),
    ...remarks,
    ...missingCylinders(engine, judged),
    ...repeatRemarks(judged?.cylinders ?? []),
    ...readingMistakes(compression, sessions),
    ...(judged ? wrongUnit(engine, sessions[judged.session]!, judged) : []),
    ...orderMistakes(compression),
    ...(judged ? throttleShut(engine, sessions[judged.session]!, judged) : []),
    ...wetMistakes(compression, judged),
    ...leakageRemarks,
    ...leakageMistakes(value, layout, sessions, leakage, judged),
    ...seaLevel(value, sessions),
  ]
  return {
    engine,
    layout,
    sessions,
    unit: commonUnit(value.readings.flatMap((reading) => (reading.test === 'compression' ? [reading.pressure] : []))),
    compression,
    judged,
    leakage,
    currents: value.readings.flatMap((trace, reading) => (trace.test === 'cranking-current' ? [{ reading, session: place.get(trace.session ?? null)!, trace }] : [])),
    objections: merged(objections),
    cautions: cautionsFor(value.readings, engine, hazards(value, objections)),
  }
}

/** A weather report gives air pressure reduced to sea level; at height that is far from what the engine breathes. */
function seaLevel(value: Case, sessions: readonly AdmittedSession[]): Remark[] {
  return sessions.filter(({ conditions, airFrom, airPa }) =>
    airFrom === 'typed' && conditions.altitudeM !== undefined && Math.abs(airPa - standardPressurePa(conditions.altitudeM)) > THRESHOLDS.airDifferencePa.value,
  ).map(({ id }) => objection(
    'sea-level-pressure',
    value.readings.flatMap((reading, index) => ((reading.session ?? null) === id ? [{ reading: index }] : [])),
    'The air pressure typed does not fit the altitude: it is probably the value reduced to sea level from a weather report.',
    'Read a barometer on the spot, or leave the air pressure out and let the altitude speak.',
  ))
}

/** Cautions that readings themselves call for. */
function hazards(value: Case, objections: readonly Remark[]): CautionCode[] {
  const codes: CautionCode[] = objections.some(({ code }) => code === 'oil-in-diesel') ? ['oil-in-diesel'] : []
  const liquid = value.readings.some((reading) => reading.test === 'observation' && reading.present !== false && (reading.code === 'locked-by-hand' || reading.code === 'water-in-oil'))
  if (liquid) codes.push('liquid-in-cylinder')
  return codes
}

/** One objection for each code and sentence, readings joined. */
function merged(objections: readonly Remark[]): Remark[] {
  const found = new Map<string, Remark>()
  for (const each of objections) {
    const key = `${each.code satisfies ObjectionCode} ${each.says}`
    const known = found.get(key)
    found.set(key, known ? { ...known, readings: [...new Set([...known.readings, ...each.readings])].sort((a, b) => a - b) } : each)
  }
  return [...found.values()]
}
