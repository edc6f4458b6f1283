import type { BorescopeSight, EnteredReading, ObservationCode, Pressure, VacuumPattern, VacuumPressure } from '@evenbore/contract'
import type { TestScreen } from './test-kinds.ts'

/** What the plain form holds; each test takes what it has. */
export interface OtherFields {
  readonly cylinder: number | undefined
  readonly valve: 'intake' | 'exhaust' | undefined
  readonly clearance: 'right' | 'tight' | 'loose' | undefined
  readonly pattern: VacuumPattern | undefined
  readonly present: boolean | undefined
  readonly code: ObservationCode | undefined
  readonly seen: readonly BorescopeSight[]
  readonly number: number | undefined
  readonly pressure: Pressure | undefined
  readonly vacuum: VacuumPressure | undefined
  readonly minutes: number | undefined
}

/** The reading that the form makes, or undefined while something is missing or out of range. */
export function otherReading(test: TestScreen, fields: OtherFields): EnteredReading | undefined {
  const { cylinder, valve, clearance, pattern, present, code, seen, number, pressure, vacuum, minutes } = fields
  switch (test) {
    case 'clearance':
      return cylinder && valve && clearance ? { test, cylinder, valve, state: clearance } : undefined
    case 'valve-lift':
      return cylinder && valve && number !== undefined && number <= 50 ? { test, cylinder, valve, mm: number } : undefined
    case 'power-balance':
      return cylinder && number !== undefined && number <= 5000 ? { test, cylinder, rpmDrop: number } : undefined
    case 'vacuum':
      return pattern ? { test, pattern, ...(vacuum ? { reading: vacuum } : {}) } : undefined
    case 'coolant-gas':
      return present === undefined ? undefined : { test, present }
    case 'borescope':
      return cylinder && seen.length > 0 ? { test, cylinder, seen: [...seen] } : undefined
    case 'cooling-pressure':
      return pressure && minutes !== undefined && minutes > 0 && minutes <= 600 ? { test, lostPressure: pressure, minutes } : undefined
    case 'observation':
      return code ? { test, code, ...(cylinder ? { cylinder } : {}), ...(present === false ? { present: false } : {}) } : undefined
    default:
      return undefined
  }
}
