import type { Reading } from '@evenbore/contract'
import type { Reader } from '../reader.ts'
import { formatNumber } from '../format/number.ts'
import { formatPressure } from '../format/pressure.ts'
import { leakageManner } from './reading.ts'

/** One reading in a few words: "Cylinder 3, dry compression 129 psi". */
export function caseReadingWords(reading: Reading, reader: Reader): string {
  const { tests } = reader.words
  const where = 'cylinder' in reading && reading.cylinder ? `${tests.cylinder(reading.cylinder)}, ` : ''
  switch (reading.test) {
    case 'compression': {
      const name = reading.snap ? tests.names.snap : reading.running ? tests.names.running : reading.wet ? tests.names.wet : tests.names.compression
      return `${where}${name} ${formatPressure(reading.pressure, reader.unit, reader.locale)}`
    }
    case 'leakage': {
      const lost = reading.percent !== undefined ? `${formatNumber(reading.percent, reader.locale, 1)} %` : reading.held ? formatPressure(reading.held, reader.unit, reader.locale) : ''
      return [`${where}${tests.names.leakage} ${lost}`, ...leakageManner(reading, reader.words)].join(', ')
    }
    case 'plug':
      return `${where}${tests.names.plug}: ${tests.appearances[reading.appearance]}`
    case 'observation':
      return `${where}${tests.observations[reading.code]}`
    case 'vacuum':
      return `${tests.names.vacuum}: ${tests.vacuumPatterns[reading.pattern]}`
    case 'clearance':
      return `${where}${tests.names.clearance}: ${tests.valves[reading.valve]} ${tests.clearances[reading.state]}`
    case 'borescope':
      return `${where}${tests.names.borescope}: ${reading.seen.map((sight) => tests.seen[sight]).join(', ')}`
    default:
      return `${where}${tests.names[reading.test]}`
  }
}
