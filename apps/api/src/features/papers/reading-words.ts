import type { Conditions, EnteredReading } from '@evenbore/contract'
import type { Here } from './reader.ts'

/** A reading as one line: "Cylinder 3: 129 psi, 10 strokes". */
export function readingWords(reading: EnteredReading, here: Here): string {
  const where = 'cylinder' in reading && reading.cylinder !== undefined ? `${here.words.tests.cylinder(reading.cylinder)}: ` : ''
  return `${where}${valueWords(reading, here)}`
}

function valueWords(reading: EnteredReading, here: Here): string {
  const { tests, session, ui } = here.words
  switch (reading.test) {
    case 'compression': {
      const kind = reading.wet ? tests.names.wet : reading.snap ? tests.names.snap : reading.running ? tests.names.running : ''
      return [here.pressure(reading.pressure), kind, reading.strokeCount ? tests.strokes(reading.strokeCount) : ''].filter(Boolean).join(', ')
    }
    case 'leakage': {
      const heard = Object.entries(reading.heard ?? {}).filter(([, loudness]) => loudness > 0).map(([point, loudness]) => `${tests.listening[point as keyof typeof tests.listening]} ${tests.loudness[loudness] ?? ''}`)
      const lost = reading.percent !== undefined ? `${here.number(reading.percent, 1)} %` : reading.held ? here.pressure(reading.held) : ''
      return [`${tests.names.leakage} ${lost}`.trim(), ...heard].join(', ')
    }
    case 'plug': return [`${tests.names.plug}: ${tests.appearances[reading.appearance]}`, reading.afterRunAtSpeed ? session.afterRun : ''].filter(Boolean).join(', ')
    case 'power-balance': return `${tests.names['power-balance']}, ${here.number(reading.rpmDrop)} rpm`
    case 'vacuum': return [tests.vacuumPatterns[reading.pattern], reading.reading ? here.pressure(reading.reading, reading.reading.unit) : ''].filter(Boolean).join(', ')
    case 'coolant-gas': return `${tests.names['coolant-gas']}: ${reading.present ? session.present : session.absent}`
    case 'borescope': return `${tests.names.borescope}: ${ui.list(reading.seen.map((seen) => tests.seen[seen]))}`
    case 'clearance': return `${tests.valves[reading.valve]}, ${tests.clearances[reading.state]}`
    case 'valve-lift': return `${tests.valves[reading.valve]}, ${here.number(reading.mm, 2)} mm`
    case 'cooling-pressure': return `${tests.names['cooling-pressure']}: ${here.pressure(reading.lostPressure)}, ${ui.minutes(reading.minutes)}`
    case 'observation': return `${tests.observations[reading.code]}${reading.present === false ? `: ${session.absent}` : ''}`
    case 'cranking-current': return tests.names['cranking-current']
  }
}

/** Conditions as one line: "hot, throttle open, all plugs out, 10 strokes, Gauge 4 (class 1.6)". */
export function conditionWords(conditions: Conditions, gauge: { readonly name: string; readonly accuracyClass?: number | undefined } | null, { words: { tests }, number }: Here): string {
  return [
    tests.engineHeat[conditions.engine], tests.throttle[conditions.throttle], tests.plugsOut[conditions.plugsOut],
    conditions.strokes === undefined ? '' : tests.strokes(conditions.strokes),
    conditions.crankingRpm === undefined ? '' : tests.rpm(number(conditions.crankingRpm)),
    conditions.batteryVolts === undefined ? '' : tests.volts(number(conditions.batteryVolts, 1)),
    conditions.clearancesSet ? tests.clearancesSet : '', conditions.headTorqued ? tests.headTorqued : '',
    gauge === null ? tests.noGauge : gauge.accuracyClass === undefined ? gauge.name : tests.gauge(gauge.name, number(gauge.accuracyClass, 2)),
  ].filter(Boolean).join(', ')
}
