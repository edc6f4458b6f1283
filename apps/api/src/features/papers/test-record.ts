import type { CautionCode, EnteredReading, Evaluation, Reading, Session, StoredReading } from '@evenbore/contract'
import { conditionWords } from '@evenbore/words/sentences/conditions.ts'
import { engineWords } from '@evenbore/words/sentences/engine.ts'
import { readingWords } from '@evenbore/words/sentences/reading.ts'
import { becauseWords } from '@evenbore/words/sentences/reasons.ts'
import { beliefRows, suspects, verdictSentence } from '@evenbore/words/sentences/verdict.ts'
import type { Material } from './material.ts'
import { objectionLine, type Here } from './reader.ts'
import type { Sheet } from './sheet.ts'

const MOST_REASONS = 4

/** What was measured, under which conditions, and what it says. */
export function testRecord(sheet: Sheet, { job, sessions, evaluation, judged }: Material, here: Here): void {
  const { words } = here
  const { specification, description, stampedNumber } = job.engineRecord
  sheet.text([[description, engineWords(specification, words), stampedNumber].filter(Boolean).join(', '), job.odometerKm === null ? '' : `${here.number(job.odometerKm)} km`].filter(Boolean).join('; '))
  sheet.text(`${words.job.complaint}: “${job.complaint}”`)
  if (evaluation !== null) opinion(sheet, evaluation, judged, sessions, here)
  if (sessions.every(({ readings }) => readings.length === 0)) sheet.text(words.sheet.noReadings)
  for (const session of sessions) readings(sheet, session, here)
  if (evaluation !== null) sheet.text(`${words.job.modelVersion(evaluation.model)} ${words.sheet.advice}`, { small: true })
  sheet.signature(words.desk.roles.technician, words.job.date)
}

function opinion(sheet: Sheet, evaluation: Evaluation, judged: readonly Reading[], sessions: readonly Session[], here: Here): void {
  const { diagnosis, ui, cautions, tests } = here.words
  const { lead, rest } = verdictSentence(evaluation, here)
  sheet.text(lead, { style: 'bold' })
  sheet.text(rest)
  const dry = dryReadings(sessions, here)
  const highest = Math.max(...dry.map(({ pa }) => pa))
  if (dry.length > 1) {
    sheet.heading(tests.names.compression)
    sheet.bars(dry.map(({ cylinder, pa, figure }) => ({ name: tests.cylinder(cylinder), part: pa / highest, figure })))
  }
  // A caution stands before what it is about: the readings below and the work they lead to.
  for (const { code } of evaluation.cautions.filter((caution) => belongs(caution.code, sessions))) sheet.caution(ui.caution, cautions[code])
  if (evaluation.objections.length > 0) {
    sheet.heading(diagnosis.objections)
    sheet.list(evaluation.objections.map((objection) => objectionLine(objection, judged, here)))
  }
  for (const { cause, probability } of evaluation.engine.filter((each) => each.cause !== 'none' && each.probability >= 0.1)) sheet.bars([{ name: diagnosis.causes[cause] ?? cause, part: probability, figure: ui.inHundred(here.inHundred(probability)) }])
  for (const { cylinders: [a, b], probability } of evaluation.neighbours.filter((each) => each.probability >= 0.1)) sheet.bars([{ name: diagnosis.betweenTwo(a, b), part: probability, figure: ui.inHundred(here.inHundred(probability)) }])
  for (const cylinder of suspects(evaluation)) {
    sheet.heading(diagnosis.asItLooks(cylinder))
    sheet.bars(beliefRows(evaluation, cylinder, here).map(({ name, probability, figure }) => ({ name, part: probability, figure })))
  }
  const reasons = [...evaluation.because].sort((a, b) => Number(a.kind === 'prior') - Number(b.kind === 'prior') || Math.abs(b.decibans) - Math.abs(a.decibans)).slice(0, MOST_REASONS)
  if (reasons.length > 0) {
    sheet.heading(diagnosis.because)
    sheet.list(reasons.map((reason) => becauseWords(reason, judged, here).text))
  }
}

/** Cautions of one kind of test; the others hold for whoever cranks the engine. The evaluation also names those of tests still to come. */
const OF_TESTS: Partial<Readonly<Record<CautionCode, readonly EnteredReading['test'][]>>> = {
  'compressed-air': ['leakage'], 'running-engine': ['power-balance', 'vacuum', 'coolant-gas'], 'high-tension': ['power-balance'], 'coolant-cap': ['coolant-gas', 'cooling-pressure'],
  borescope: ['borescope'], 'current-clamp': ['cranking-current'],
}

/** Does a caution belong to what this sheet records? */
function belongs(code: CautionCode, sessions: readonly Session[]): boolean {
  const readings = sessions.flatMap((session) => session.readings.flatMap(({ reading }) => reading ?? []))
  if (code === 'wet-test-oil') return readings.some((reading) => reading.test === 'compression' && reading.wet)
  return OF_TESTS[code]?.some((test) => readings.some((reading) => reading.test === test)) ?? true
}

/** The latest dry compression of each cylinder that counts, in the order of cylinders. */
function dryReadings(sessions: readonly Session[], here: Here): { readonly cylinder: number; readonly pa: number; readonly figure: string }[] {
  const latest = new Map<number, StoredReading['reading'] & { readonly test: 'compression' }>()
  for (const { reading, current, state } of sessions.flatMap((session) => session.readings)) {
    if (current && state === 'placed' && reading?.test === 'compression' && !reading.wet && !reading.running && !reading.snap) latest.set(reading.cylinder, reading)
  }
  return [...latest].sort(([a], [b]) => a - b).map(([cylinder, { pressure }]) => ({ cylinder, pa: here.pascals(pressure), figure: here.pressure(pressure) }))
}

function readings(sheet: Sheet, session: Session, here: Here): void {
  const { words } = here
  const { job } = words
  if (session.readings.length === 0) return
  const gauge = session.gauge ?? session.tester
  sheet.heading(`${job.purposes[session.purpose]}, ${here.when(session.openedAt)}`)
  sheet.text(conditionWords(session.conditions, gauge === null ? null : { name: gauge.name, accuracyClass: session.gaugeSpecification?.accuracyClass }, words, here.locale), { small: true })
  sheet.table(
    [{ head: job.reading, share: 5 }, { head: job.takenBy, share: 2.4 }, { head: job.takenAt, share: 2.2 }],
    session.readings.map((stored) => {
      const notes = [stored.replacedBy && !stored.current ? job.replaced : '', stored.withdrawn ? job.withdrawn : '', stored.state === 'unplaced' ? job.unplaced : '', stored.offline ? job.arrivedLate : '', stored.reason ? `“${stored.reason}”` : ''].filter(Boolean).join(', ')
      const said = stored.reading === null ? job.withdrawn : readingWords(stored.reading, here)
      return { cells: [notes ? `${said} (${notes})` : said, stored.takenBy?.name ?? '', here.when(stored.takenAt)], struck: !stored.current }
    }),
  )
}
