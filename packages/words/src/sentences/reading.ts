import type { EnteredReading } from '@evenbore/contract'
import type { Words } from '../en.ts'
import type { Reader } from '../reader.ts'
import { formatNumber } from '../format/number.ts'
import { formatPressure } from '../format/pressure.ts'

type Of<Test extends EnteredReading['test']> = Extract<EnteredReading, { test: Test }>

/** A reading as one line: "Cylinder 3: 129 psi, 10 strokes". */
export function readingWords(reading: EnteredReading, reader: Reader): string {
  const { tests } = reader.words
  const where = 'cylinder' in reading && reading.cylinder !== undefined ? `${tests.cylinder(reading.cylinder)}: ` : ''
  return `${where}${valueWords(reading, reader)}`
}

function valueWords(reading: EnteredReading, reader: Reader): string {
  const { words, locale, unit } = reader
  const { tests, session } = words
  const pressure = (value: Parameters<typeof formatPressure>[0]) => formatPressure(value, unit, locale)
  switch (reading.test) {
    case 'compression':
      return compression(reading, reader)
    case 'leakage':
      return leakage(reading, reader)
    case 'plug':
      return [tests.appearances[reading.appearance], reading.afterRunAtSpeed ? session.afterRun : ''].filter(Boolean).join(', ')
    case 'power-balance':
      return `${tests.names['power-balance']}, ${formatNumber(reading.rpmDrop, locale)} rpm`
    case 'vacuum':
      return [tests.vacuumPatterns[reading.pattern], reading.reading ? formatPressure(reading.reading, reading.reading.unit, locale) : ''].filter(Boolean).join(', ')
    case 'coolant-gas':
      return `${tests.names['coolant-gas']}: ${reading.present ? session.present : session.absent}`
    case 'borescope':
      return `${tests.names.borescope}: ${words.ui.list(reading.seen.map((seen) => tests.seen[seen]))}`
    case 'clearance':
      return `${tests.valves[reading.valve]}, ${tests.clearances[reading.state]}`
    case 'valve-lift':
      return `${tests.valves[reading.valve]}, ${formatNumber(reading.mm, locale, 2)} mm`
    case 'cooling-pressure':
      return `${tests.names['cooling-pressure']}: ${pressure(reading.lostPressure)}, ${words.ui.minutes(reading.minutes)}`
    case 'observation':
      return `${tests.observations[reading.code]}${reading.present === false ? `: ${session.absent}` : ''}`
    case 'cranking-current':
      return `${tests.names['cranking-current']}, ${formatNumber(reading.samples.amps.length, locale)}`
  }
}

function compression(reading: Of<'compression'>, { words, unit, locale }: Reader): string {
  const { tests } = words
  const kind = reading.wet ? tests.names.wet : reading.snap ? tests.names.snap : reading.running ? tests.names.running : ''
  return [formatPressure(reading.pressure, unit, locale), kind, reading.strokeCount ? tests.strokes(reading.strokeCount) : ''].filter(Boolean).join(', ')
}

function leakage(reading: Of<'leakage'>, { words, unit, locale }: Reader): string {
  const { tests } = words
  const heard = Object.entries(reading.heard ?? {})
    .filter(([, loudness]) => loudness > 0)
    .map(([point, loudness]) => `${tests.listening[point as keyof typeof tests.listening]} ${tests.loudness[loudness] ?? ''}`)
  const lost = reading.percent !== undefined ? `${formatNumber(reading.percent, locale, 1)} %` : reading.held ? formatPressure(reading.held, unit, locale) : ''
  return [`${tests.names.leakage} ${lost}`.trim(), ...leakageManner(reading, words), ...heard].join(', ')
}

/** How a leakage test is done otherwise than usual: with oil in, with rockers slack. */
export function leakageManner({ wet, rockersSlack }: { readonly wet?: boolean | undefined; readonly rockersSlack?: readonly number[] | undefined }, { tests, ui }: Words): string[] {
  return [wet ? tests.oilIn : '', rockersSlack?.length ? tests.slack(ui.list(rockersSlack.map(String))) : ''].filter(Boolean)
}
