import type { Actor, Authorisation, NewAuthorisation } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import { demand } from '../../access/door.ts'
import type { Transaction } from '../../platform/database/database.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { demandOpen } from '../jobs/service.ts'
import { appendTrail } from '../trail/service.ts'
import { demandLatest, lockedVersion } from './answer.ts'
import { insertAuthorisation, readNames } from './store.ts'
import { toAuthorisation } from './wire.ts'

/** The tablet's or the counter's clock may be ahead of ours by this much. */
const CLOCK_SLACK_MS = 5 * 60_000

/**
 * Records the customer's permission, or that he declined: who, when, how, for how much, and the number called.
 * What such a note holds: 815 ILCS 306/25 (read); exceeding the sum needs a new one: 16 CCR 3354(a) (read). Local law comes first.
 * The trail holds no name and no number: those stay in the garage's record.
 */
export async function authorise(tx: Transaction, actor: Actor, id: string, input: NewAuthorisation): Promise<Authorisation> {
  const { version, facts } = await lockedVersion(tx, actor, id)
  demand(actor, 'authorisations.write', { garage: facts.garage })
  demandOpen(facts)
  await demandLatest(tx, version)
  if (version.approvals.at(-1)?.kind !== 'approved') throw problem('wrong-state', `Version ${version.number} is not approved by the manager: the customer is asked after that.`)
  if (Date.parse(input.givenAt) > Date.now() + CLOCK_SLACK_MS) throw badField('/givenAt', 'a time that has passed', input.givenAt)
  const { kind, personName, method, numberCalled = null, partsBack, note = null, givenAt } = input
  const amountMinor = input.amountMinor ?? version.totalMinor
  const { currency } = version
  const row = await insertAuthorisation(tx, { jobId: facts.id, quoteVersionId: id, kind, personName, method, numberCalled, amountMinor, currency, partsBack, note, givenAt, recordedById: personOf(actor) })
  await emit(tx, { kind: 'authorisation.recorded', garageId: facts.garage, jobId: facts.id, engineId: facts.engine, body: { quoteVersion: id, number: version.number, word: kind } })
  await appendTrail(tx, {
    engine: facts.engine, job: facts.id, garage: facts.garage, kind: kind === 'given' ? 'authorisation-given' : 'authorisation-declined', actor,
    body: { quoteVersion: id, number: version.number, authorisation: row.id, method, amountMinor, currency, partsBack, givenAt },
  })
  return toAuthorisation(row, await readNames(tx, [row.recordedById]))
}
