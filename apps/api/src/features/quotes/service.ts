import { whyNot, type Actor, type Decision, type Quote } from '@evenbore/contract'
import { demand } from '../../access/door.ts'
import type { Database } from '../../platform/database/database.ts'
import { demandGarage } from '../garages/service.ts'
import { demandJob, permittedMinor } from '../jobs/service.ts'
import { subjectOf } from './answer.ts'
import { readDraft, readNames, readPricing, readVersion, readVersions, readWaiting } from './store.ts'
import { peopleOf, toDraft, totalsAsSent, toVersion } from './wire.ts'

/** The quote of a job: its draft, every version as it was sent with its answers, and what the customer has permitted. */
export async function readQuote(database: Database, actor: Actor, job: string): Promise<Quote> {
  const tx = database.prisma
  const facts = await demandJob(tx, actor, 'quotes.read', job)
  const pricing = await readPricing(tx, facts.garage)
  const [draft, versions] = await Promise.all([readDraft(tx, job), readVersions(tx, job)])
  const names = await readNames(tx, [draft?.authorId ?? null, ...peopleOf(versions)])
  return {
    job, draft: draft === null ? null : toDraft(draft, pricing, names), versions: versions.map((version) => toVersion(version, names)), permittedMinor: permittedMinor(facts) ?? 0, currency: pricing.currency,
  }
}

/** What waits for a manager's answer in a garage, and whether the one who asks could give it. */
export async function listDecisions(database: Database, actor: Actor, garage: string): Promise<Decision[]> {
  const tx = database.prisma
  demand(actor, 'quotes.read', { garage })
  await demandGarage(tx, actor, 'quotes.read', garage)
  const decisions: Decision[] = []
  for (const waiting of await readWaiting(database, garage)) {
    const version = await readVersion(tx, waiting.id)
    if (version === null) continue
    const why = whyNot(actor, 'quotes.answer', await subjectOf(tx, version, garage))
    decisions.push({
      job: waiting.job, code: waiting.code, plate: waiting.plate, vehicle: waiting.vehicle, quoteVersion: waiting.id, number: waiting.number,
      author: { id: waiting.authorId, name: waiting.author }, sentAt: waiting.sentAt.toISOString(), totals: totalsAsSent(version), mayApprove: why === null, why,
    })
  }
  return decisions
}
