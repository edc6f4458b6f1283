import type { Comparison, Finding, Retest } from '@evenbore/contract'
import type { Material } from './material.ts'
import type { Here } from './reader.ts'
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
    sheet.list(findings.map((finding) => findingWords(finding, findings.some(({ replaces }) => replaces === finding.id), here)))
  }
  if (release?.comparison) comparison(sheet, release.comparison, here)
  if (retests.length > 0) {
    sheet.heading(words.job.retests)
    sheet.list(retests.map((retest) => `${words.office.kinds[retest.kind]}: ${retestWords(retest, here)}`))
  }
  sheet.signature(words.job.signature, words.job.date)
}

function findingWords({ fault, cylinders, seen, by, at }: Finding, corrected: boolean, here: Here): string {
  const { words } = here
  const name = fault === 'nothing' ? words.job.findingNothing : (words.diagnosis.faults[fault] ?? words.diagnosis.causes[fault] ?? fault)
  return `${name}${cylinders.length > 0 ? `, ${words.job.atCylinders(cylinders)}` : ''}: ${seen} (${by?.name ?? words.desk.nobody}, ${here.when(at)}${corrected ? `; ${words.job.findingCorrected}` : ''})`
}

function comparison(sheet: Sheet, { comparable, objections, cylinders }: Comparison, here: Here): void {
  const { office, tests } = here.words
  sheet.heading(office.compare)
  sheet.text(comparable ? office.comparable : office.notComparable)
  sheet.list(objections.map(({ says, do: toDo }) => `${says} ${toDo}`))
  sheet.table(
    [{ head: '', share: 2 }, { head: office.before, share: 1.5, figures: true }, { head: office.after, share: 1.5, figures: true }, { head: office.change, share: 1.2, figures: true }, { head: office.howSure, share: 3 }],
    cylinders.map((each) => ({ cells: [tests.cylinder(each.cylinder), each.before ? here.pressure(each.before) : '–', each.after ? here.pressure(each.after) : '–', each.change === null ? '' : `${each.change > 0 ? '+' : ''}${here.number(each.change, 1, 1)} %`, changeWords(each, here)] })),
  )
}

function changeWords({ improved, unchanged, worse }: Comparison['cylinders'][number], { words, inHundred }: Here): string {
  if (improved === null || unchanged === null || worse === null) return ''
  const [best] = ([['improved', improved], ['unchanged', unchanged], ['worse', worse]] as const).toSorted(([, a], [, b]) => b - a)
  return `${words.office[best![0]]}, ${words.ui.inHundred(inHundred(best![1]))}`
}

/** A retest in one line: why, when due or what it came to. */
function retestWords({ reason, outcome, outcomeReason, decidedBy, decidedAt, dates }: Retest, here: Here): string {
  const { office, desk } = here.words
  if (outcome) {
    const came = outcome === 'waived' ? office.waived : office[outcome].toLowerCase()
    return `${reason}; ${office.decidedBy(came, decidedBy?.name ?? desk.nobody, decidedAt ? here.when(decidedAt) : '')}${outcomeReason ? `: “${outcomeReason}”` : ''}`
  }
  const due = dates.toSorted((a, b) => b.at.localeCompare(a.at))[0]
  return [reason, due?.latest ? desk.dueOn(here.date(due.latest)) : '', due?.odometerKm != null ? office.atKm(here.number(due.odometerKm)) : '', due?.event ? office.whenEvent(due.event) : '', due?.bookedFor ? desk.bookedFor(here.when(due.bookedFor)) : ''].filter(Boolean).join(', ')
}
