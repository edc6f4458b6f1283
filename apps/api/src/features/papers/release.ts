import type { Comparison, Finding } from '@evenbore/contract'
import { changeWord } from '@evenbore/words/sentences/change.ts'
import { findingWords } from '@evenbore/words/sentences/finding.ts'
import { retestWords } from '@evenbore/words/sentences/retest.ts'
import type { Material } from './material.ts'
import { objectionLine, type Here } from './reader.ts'
import type { Sheet } from './sheet.ts'

/** What was found and done, what the retest showed, and what is promised for later. */
export function releaseSheet(sheet: Sheet, { job, quote, findings, retests, release }: Material, here: Here): void {
  const { words } = here
  sheet.text(`${words.job.complaint}: “${job.complaint}”`)
  const version = quote.versions.findLast(({ approvals }) => approvals.at(-1)?.kind === 'approved')
  if (version !== undefined) {
    sheet.heading(words.job.repair)
    sheet.list(version.lines.map(({ text }) => text))
  }
  if (findings.length > 0) {
    sheet.heading(words.job.findings)
    sheet.list(findings.map((finding) => findingLine(finding, findings.some(({ replaces }) => replaces === finding.id), here)))
  }
  if (release?.comparison) comparison(sheet, release.comparison, here)
  if (retests.length > 0) {
    sheet.heading(words.job.retests)
    sheet.list(retests.map((retest) => `${words.office.kinds[retest.kind]}: ${retestWords(retest, words, here)}`))
  }
  sheet.signature(words.job.signature, words.job.date)
}

function findingLine({ fault, cylinders, seen, by, at }: Finding, corrected: boolean, here: Here): string {
  const { words } = here
  return `${findingWords(fault, words)}${cylinders.length > 0 ? `, ${words.job.atCylinders(cylinders)}` : ''}: ${seen} (${by?.name ?? words.desk.nobody}, ${here.when(at)}${corrected ? `; ${words.job.findingCorrected}` : ''})`
}

function comparison(sheet: Sheet, { comparable, objections, cylinders }: Comparison, here: Here): void {
  const { office, tests } = here.words
  sheet.heading(office.compare)
  sheet.text(comparable ? office.comparable : office.notComparable)
  sheet.list(objections.map((objection) => objectionLine(objection, [], here)))
  sheet.table(
    [{ head: '', share: 2 }, { head: office.before, share: 1.5, figures: true }, { head: office.after, share: 1.5, figures: true }, { head: office.change, share: 1.2, figures: true }, { head: office.howSure, share: 3 }],
    cylinders.map((each) => ({ cells: [tests.cylinder(each.cylinder), each.before ? here.pressure(each.before) : '–', each.after ? here.pressure(each.after) : '–', each.change === null ? '' : `${each.change > 0 ? '+' : ''}${here.number(each.change, 1, 1)} %`, changeWords(each, here)] })),
  )
}

function changeWords(change: Comparison['cylinders'][number], { words, inHundred }: Here): string {
  const likeliest = changeWord(change)
  return likeliest === undefined ? '' : `${words.office[likeliest.word]}, ${words.ui.inHundred(inHundred(likeliest.probability))}`
}
