import type { Actor } from '@evenbore/contract'
import type { Language } from '@evenbore/words/languages.ts'
import { readMe } from '../../access/me.ts'
import { demand } from '../../access/door.ts'
import type { Database } from '../../platform/database/database.ts'
import { ProblemError } from '../../platform/problems/problem.ts'
import { evaluateJob } from '../evaluations/service.ts'
import { readGarage } from '../garages/service.ts'
import { readJob } from '../jobs/service.ts'
import { readQuote } from '../quotes/service.ts'
import { listFindings } from '../repairs/service.ts'
import { listJobRetests, readComparison } from '../retests/service.ts'
import { listSessions } from '../sessions/service.ts'
import type { Material } from './material.ts'
import { quoteSheet } from './quote.ts'
import { formatsOf, type Here } from './reader.ts'
import { releaseSheet } from './release.ts'
import { DENSITIES, openSheet, type Sheet } from './sheet.ts'
import { testRecord } from './test-record.ts'

export type SheetKind = 'test-record' | 'quote' | 'release'

const CONTENTS: Readonly<Record<SheetKind, (sheet: Sheet, material: Material, here: Here) => void>> = { 'test-record': testRecord, quote: quoteSheet, release: releaseSheet }

/**
 * A sheet of a job as PDF: from the same answers that the screens get, asked for in the caller's name, in the caller's unit of pressure.
 * @param asked language of the sheet; undefined: the caller's
 * @returns the document, and a name for its file
 * @throws problems `not-found`, `not-allowed`; `wrong-state` for a quote that was never sent
 */
export async function makeSheet(database: Database, actor: Actor, job: string, kind: SheetKind, asked: Language | undefined): Promise<{ readonly document: Buffer; readonly name: string; readonly language: Language }> {
  const material = await materialOf(database, actor, job, kind)
  const me = await readMe(database, actor)
  const garage = await readGarage(database, actor, material.job.garage)
  const language = asked ?? me.locale
  const here = formatsOf({ language, unit: me.pressureUnit ?? garage.pressureUnit, timeZone: garage.timeZone })
  const { code, plate, vehicle, customer, customerRecord } = material.job
  const title = here.words.job.sheets[kind]
  const head = { garage: garage.name, title: `${title}, ${here.day(new Date())}`, code, about: [`${plate}, ${vehicle}`, customerRecord?.name ?? customer] }
  const document = await onOneSheet((density) => {
    const sheet = openSheet(head, language, density)
    CONTENTS[kind](sheet, material, here)
    return sheet.finish(`${title} ${code} · ${here.words.sheet.by}`, here.words.sheet.page)
  })
  return { document, language, name: `${kind}-${code.replaceAll(/[^A-Za-z0-9]+/g, '-')}.pdf` }
}

/** Set as loosely as one sheet allows; what does not fit at all goes on to a second page, loosely again. */
async function onOneSheet(make: (density: number) => Promise<{ readonly document: Buffer; readonly pages: number }>): Promise<Buffer> {
  const loose = await make(DENSITIES[0])
  if (loose.pages === 1) return loose.document
  for (const density of DENSITIES.slice(1)) {
    const tighter = await make(density)
    if (tighter.pages === 1) return tighter.document
  }
  return loose.document
}

async function materialOf(database: Database, actor: Actor, id: string, kind: SheetKind): Promise<Material> {
  const job = await readJob(database.prisma, actor, id)
  demand(actor, 'papers.read', { garage: job.garage })
  const measured = kind === 'test-record'
  const released = kind === 'release'
  const retests = released ? await listJobRetests(database, actor, id) : []
  const last = retests.findLast((retest) => retest.kind === 'release')
  return {
    job,
    sessions: measured ? await listSessions(database, actor, id) : [],
    ...(measured ? await opinionOf(database, actor, id) : NO_OPINION),
    quote: await readQuote(database, actor, id),
    findings: released ? await listFindings(database.prisma, actor, id) : [],
    retests,
    release: last === undefined ? null : await readComparison(database, actor, last.id),
  }
}

const NO_OPINION = { evaluation: null, judged: [] } as const

/** What the model makes of the job, and of which readings; nothing where it will not say anything of such a case. */
async function opinionOf(database: Database, actor: Actor, job: string): Promise<Pick<Material, 'evaluation' | 'judged'>> {
  try {
    const found = await evaluateJob(database, actor, job, true)
    return { evaluation: found.evaluation, judged: found.case.readings }
  } catch (error) {
    if (error instanceof ProblemError && (error.code === 'invalid-case' || error.code === 'invalid-request')) return NO_OPINION
    throw error
  }
}
