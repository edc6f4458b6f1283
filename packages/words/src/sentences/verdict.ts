import type { Evaluation } from '@evenbore/contract'
import { formatNumber, inHundred } from '../format/number.ts'
import type { Reader } from '../reader.ts'

/** How things stand in one breath: the lead is underlined, the rest says how sure that is. */
export interface VerdictSentence {
  readonly lead: string
  readonly rest: string
}

/** Near the limit a tenth of a percent matters; far from it only noise. */
const NEAR = 2

/** The verdict as sentences, from the evaluation's numbers; no word of it is decided here. */
export function verdictSentence(evaluation: Evaluation, reader: Reader): VerdictSentence {
  const { words, locale } = reader
  const { consistency } = evaluation
  const { lowest, highest, spreadPercent, probabilityInside, verdict, rule, limitPercent } = consistency
  if (!lowest || !highest || spreadPercent === null || probabilityInside === null) return { lead: words.diagnosis.undecided, rest: words.diagnosis.oneOnly }
  const ruleWords = rule === 'one-tenth' ? words.diagnosis.limitTenth : words.diagnosis.limitOwn
  const near = limitPercent !== undefined && Math.abs(spreadPercent - limitPercent) < NEAR
  const spread = words.diagnosis.below(lowest.cylinder, formatNumber(spreadPercent, locale, near ? 1 : 0), highest.cylinder)
  if (verdict === 'undecided') return { lead: words.diagnosis.undecided, rest: `${spread} ${words.diagnosis.doubt(inHundred(probabilityInside, locale))}` }
  const sure = verdict === 'inside' ? probabilityInside : 1 - probabilityInside
  const lead = verdict === 'inside' ? words.diagnosis.inside(ruleWords) : words.diagnosis.outside(ruleWords)
  return { lead, rest: `${spread} ${sure >= 0.985 ? words.diagnosis.noDoubt(inHundred(sure, locale)) : words.diagnosis.littleDoubt(inHundred(sure, locale))}` }
}

/** The few explanations worth a line for one cylinder: those above 5 in 100 (at most four), and the rest together. `sound` stands among them. */
export function beliefRows(evaluation: Evaluation, cylinder: number, reader: Reader): { name: string; probability: number; figure: string }[] {
  const belief = evaluation.cylinders.find((each) => each.cylinder === cylinder)
  if (!belief) return []
  const { faults, somethingElse } = reader.words.diagnosis
  const all = [{ fault: 'sound', probability: belief.sound }, ...belief.faults].sort((a, b) => b.probability - a.probability)
  const shown = all.filter(({ probability }, i) => i < 4 && probability >= 0.05)
  const rest = 1 - shown.reduce((sum, { probability }) => sum + probability, 0)
  const rows = shown.map(({ fault, probability }) => ({ name: faults[fault] ?? fault, probability }))
  if (rest > 0.005) rows.push({ name: somethingElse, probability: rest })
  return rows.map((row, i) => ({ ...row, figure: i === 0 ? reader.words.ui.inHundred(inHundred(row.probability, reader.locale)) : inHundred(row.probability, reader.locale) }))
}

/** The cylinders worth showing, most suspect first; at least one where anything was read. */
export function suspects(evaluation: Evaluation): number[] {
  const sorted = [...evaluation.cylinders].sort((a, b) => a.sound - b.sound)
  const doubtful = sorted.filter(({ sound }) => sound < 0.8).slice(0, 3)
  return (doubtful.length > 0 ? doubtful : []).map(({ cylinder }) => cylinder)
}
