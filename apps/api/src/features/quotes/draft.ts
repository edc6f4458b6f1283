import type { Actor, QuoteDraft, QuoteDraftPut } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { demandJob, demandOpen, type JobFacts } from '../jobs/service.ts'
import { deleteDraft, insertDraft, readDraft, readNames, readPricing, updateDraft } from './store.ts'
import { pricedLine, totalsOf, type Pricing } from './totals.ts'
import { toDraft } from './wire.ts'

/** What an edit of the draft is based on: a version of it, or that there is none yet. */
export type Basis = number | 'none'

/**
 * Keeps the draft of a job. Whoever edited it last is its author, whom the manager's answer may not come from.
 * @throws problems `stale` where it is at another version (or there is one already), `invalid-request` with paths into the lines
 */
export async function putDraft(database: Database, actor: Actor, job: string, basis: Basis, input: QuoteDraftPut): Promise<QuoteDraft> {
  return database.transaction(async (tx) => {
    const facts = await demandJob(tx, actor, 'quotes.draft', job)
    demandOpen(facts)
    const pricing = await readPricing(tx, facts.garage)
    demandCylinders(input, facts)
    demandTotal(input, pricing)
    const data = { lines: input.lines, note: input.note, authorId: author(actor) }
    const done = basis === 'none' ? await insertDraft(tx, job, data) : await updateDraft(tx, job, basis, data)
    if (!done) throw await stale(tx, job, basis)
    await told(tx, facts)
    const row = (await readDraft(tx, job))!
    return toDraft(row, pricing, await readNames(tx, [row.authorId]))
  })
}

/** Drops the draft. */
export async function dropDraft(database: Database, actor: Actor, job: string, version: number): Promise<void> {
  await database.transaction(async (tx) => {
    const facts = await demandJob(tx, actor, 'quotes.draft', job)
    if ((await readDraft(tx, job)) === null) throw problem('not-found')
    if (!(await deleteDraft(tx, job, version))) throw await stale(tx, job, version)
    await told(tx, facts)
  })
}

async function stale(tx: Transaction, job: string, basis: Basis) {
  const present = await readDraft(tx, job)
  if (present === null) return problem('stale', 'There is no draft any more: it was sent or dropped. Read the quote again.')
  return problem('stale', basis === 'none' ? `There is a draft already, at version ${present.version}. Read it and edit it.` : `You edit version ${basis}; it is at version ${present.version} now. Read it again.`)
}

function author(actor: Actor): string {
  const person = personOf(actor)
  if (person === null) throw problem('not-allowed', 'A quote is written by a person.')
  return person
}

function demandCylinders({ lines }: QuoteDraftPut, { cylinders }: JobFacts): void {
  lines.forEach((line, at) => {
    line.cylinders.forEach((cylinder, index) => {
      if (cylinder > cylinders) throw badField(`/lines/${at}/cylinders/${index}`, `a cylinder of this engine, 1 to ${cylinders}`, String(cylinder))
    })
  })
}

function demandTotal({ lines }: QuoteDraftPut, pricing: Pricing): void {
  if (totalsOf(lines.map((line) => pricedLine(line, pricing.currency)), pricing) === undefined) throw badField('/lines', 'lines that come to less than 20 million in the main unit of the currency')
}

async function told(tx: Transaction, { garage, id, engine }: JobFacts): Promise<void> {
  await emit(tx, { kind: 'job.changed', garageId: garage, jobId: id, engineId: engine, body: { draft: true } })
}
