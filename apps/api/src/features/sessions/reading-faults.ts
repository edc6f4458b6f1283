import { caseFaults, jsonPointer, PASCALS_PER_UNIT, quoteValue, type Case, type EnteredReading, type FieldError, type Pressure, type VacuumPressure } from '@evenbore/contract'
import type { SessionFacts } from './session-facts.ts'

/**
 * What cannot be so in a reading of this session: a cylinder that the engine does not have, more held than supplied, a stroke count
 * unlike the strokes. The same checks as those of a case, with paths into the body of the PUT.
 */
export function readingFaults(reading: EnteredReading, facts: SessionFacts): FieldError[] {
  const { description, conditions, tester } = facts
  const alone: Case = { engine: description, conditions, ...(tester === null ? {} : { leakageTester: tester }), readings: [reading] }
  return caseFaults(alone)
    .filter(({ path }) => path[0] === 'readings')
    .map(({ path, expected, got }) => ({ path: jsonPointer(['reading', ...path.slice(2)]), expected, got: quoteValue(got) }))
}

/** The pressure that stands for a reading, in pascal: final compression, what leakage held, vacuum, what the coolant lost; null for a look. */
export function pressurePaOf(reading: EnteredReading): number | null {
  const pressure = pressureOf(reading)
  return pressure === undefined ? null : pressure.value * PASCALS_PER_UNIT[pressure.unit]
}

function pressureOf(reading: EnteredReading): Pressure | VacuumPressure | undefined {
  switch (reading.test) {
    case 'compression': return reading.pressure
    case 'leakage': return reading.held
    case 'vacuum': return reading.reading
    case 'cooling-pressure': return reading.lostPressure
    default: return undefined
  }
}
