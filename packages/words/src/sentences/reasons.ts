import type { Because, Objection, ObjectionCode, Reading, Turns } from '@evenbore/contract'
import { formatPressure } from '../format/pressure.ts'
import type { Reader } from '../reader.ts'
import { caseReadingWords } from './case-reading.ts'

/** A sentence of the model in the reader's language; `own` is true where it could only be given as the model wrote it, in English. */
export interface Said {
  readonly text: string
  readonly own: boolean
}
const own = (text: string): Said => ({ text, own: true })
const told = (text: string): Said => ({ text, own: false })

/** Decibans from which a reading speaks strongly (ten times as likely), and plainly: the model's own steps. */
const STRONGLY = 10
const PLAINLY = 5

/** Why: what one row adds to one explanation. `readings` are those of the case that was judged. */
export function becauseWords(row: Because, readings: readonly Reading[], reader: Reader): Said {
  const { reasons } = reader.words
  if (!reasons) return own(row.says)
  if (row.kind === 'together') return told(reasons.together(row.decibans >= 0))
  const about = aboutWords(row, reader)
  if (row.kind === 'prior') return told(reasons.prior(about))
  const read = row.readings.flatMap((index) => readings[index] ?? [])
  if (read.length === 0) return own(row.says)
  const size = Math.abs(row.decibans)
  const strength = size >= STRONGLY ? 'strongly' : size >= PLAINLY ? 'plainly' : 'a-little'
  return told(reasons.speaks(reader.words.ui.list(read.map((reading) => caseReadingWords(reading, reader))), about, strength, row.decibans < 0))
}

/** The smallest plausible change of one reading that would change what leads. */
export function turnsWords({ cylinder, to, leads, says }: Turns, reader: Reader): Said {
  const { reasons, diagnosis } = reader.words
  return reasons ? told(reasons.turns(cylinder, formatPressure(to, reader.unit, reader.locale), diagnosis.faults[leads] ?? leads)) : own(says)
}

/** Objections whose readings are the ones to be looked at; those of the others are all that were judged, or all but the ones missing. */
const NAMES_ITS_OWN: ReadonlySet<ObjectionCode> = new Set([
  'mixed-strokes', 'mixed-conditions', 'oil-in-diesel', 'over-span', 'no-tester', 'not-weighed', 'too-few-strokes', 'adaptor-leaking', 'wrong-cylinder', 'wrong-unit',
  'piston-off-top', 'wet-below-dry', 'wet-too-high', 'leakage-against-compression', 'repeat-disagrees',
])

/** A reason not to compare or believe: what, about which cylinders where the case is at hand, and what to do. */
export function objectionWords(objection: Pick<Objection, 'code' | 'readings' | 'says' | 'do'>, readings: readonly Reading[], reader: Reader): { readonly says: string; readonly do: string; readonly own: boolean } {
  const { reasons, tests, ui } = reader.words
  if (!reasons) return { says: objection.says, do: objection.do, own: true }
  const cylinders = NAMES_ITS_OWN.has(objection.code) ? cylindersOf(objection.readings, readings) : []
  const words = reasons.objections[objection.code]
  return { says: cylinders.length === 0 ? words.says : `${words.says} ${reasons.concerns(ui.list(cylinders.map((cylinder) => tests.cylinder(cylinder))))}`, do: words.do, own: false }
}

function aboutWords(row: Because, { words }: Reader): string {
  const { faults, causes, betweenTwo } = words.diagnosis
  if (row.cylinders) return betweenTwo(...row.cylinders)
  const name = row.fault ? (faults[row.fault] ?? row.fault) : row.cause ? (causes[row.cause] ?? row.cause) : ''
  return row.cylinder === undefined ? name : `${words.tests.cylinder(row.cylinder)}: ${name}`
}

function cylindersOf(indexes: readonly number[], readings: readonly Reading[]): number[] {
  const found = indexes.flatMap((index) => {
    const reading = readings[index]
    return reading && 'cylinder' in reading && reading.cylinder !== undefined ? [reading.cylinder] : []
  })
  return [...new Set(found)].sort((a, b) => a - b)
}
