import { may, whyNot, type Actor, type Approval, type Subject } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import { demand } from '../../access/door.ts'
import type { Transaction } from '../../platform/database/database.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { demandJob, demandOpen, lockJob, type JobFacts } from '../jobs/service.ts'
import { appendTrail } from '../trail/service.ts'
import { insertApproval, isLoneOwner, readNames, readVersion, readVersions, repairSince, type VersionRow } from './store.ts'
import { toApproval } from './wire.ts'

export type Answer = { readonly kind: 'approved' | 'sent-back' | 'refused'; readonly reason: string | null }

const TRAIL = { approved: 'quote-approved', 'sent-back': 'quote-sent-back', refused: 'quote-refused', withdrawn: 'approval-withdrawn' } as const

/**
 * A manager's or owner's answer to the latest version: approves within his limit, sends back with a question, or refuses. Never his
 * own quote; a lone owner may, with a reason, and the trail marks it.
 */
export async function answerVersion(tx: Transaction, actor: Actor, id: string, { kind, reason }: Answer): Promise<Approval> {
  const { version, facts } = await lockedVersion(tx, actor, id)
  const subject = await subjectOf(tx, version, facts.garage)
  demand(actor, 'quotes.answer', subject)
  demandOpen(facts)
  await demandLatest(tx, version)
  const answered = version.approvals.at(-1)?.kind
  if (answered !== undefined && answered !== 'withdrawn') throw problem('wrong-state', `Version ${version.number} was answered already: ${answered}.`)
  const by = personOf(actor)!
  const ownQuote = version.authorId === by
  if (ownQuote && kind === 'approved' && reason === null) throw badField('/reason', 'a reason, since you approve your own quote')
  return keep(tx, actor, version, facts, { kind, reason, byId: by, ownQuote, deputyForId: deputisedFor(actor, subject) })
}

/** Takes an approval back, until the repair starts: the version waits for an answer again. */
export async function withdrawApproval(tx: Transaction, actor: Actor, id: string, reason: string): Promise<Approval> {
  const { version, facts } = await lockedVersion(tx, actor, id)
  const approval = version.approvals.at(-1)
  const by = personOf(actor)
  const giver = approval === undefined ? null : approval.byId === by ? approval.byId : (approval.deputyForId ?? approval.byId)
  demand(actor, 'approvals.withdraw', { garage: facts.garage, author: giver })
  demandOpen(facts)
  if (approval?.kind !== 'approved') throw problem('wrong-state', `Version ${version.number} is not approved.`)
  if (await repairSince(tx, version.jobId, approval.at)) throw problem('wrong-state', 'The repair was started: the approval stands.')
  return keep(tx, actor, version, facts, { kind: 'withdrawn', reason, byId: by!, ownQuote: false, deputyForId: null })
}

/** What the permission table is asked about a version. */
export async function subjectOf(tx: Transaction, version: Pick<VersionRow, 'authorId' | 'totalMinor'>, garage: string): Promise<Subject> {
  const { authorId, totalMinor } = version
  return { garage, author: authorId, totalMinor, loneOwner: await isLoneOwner(tx, authorId, garage, totalMinor) }
}

/** The version, with its job locked so that two answers cannot cross. */
export async function lockedVersion(tx: Transaction, actor: Actor, id: string): Promise<{ version: VersionRow; facts: JobFacts }> {
  const found = await readVersion(tx, id)
  if (found === null) throw problem('not-found')
  await lockJob(tx, found.jobId)
  const facts = await demandJob(tx, actor, 'quotes.read', found.jobId)
  return { version: (await readVersion(tx, id))!, facts }
}

/** @throws problem `wrong-state` where a later version was sent */
export async function demandLatest(tx: Transaction, version: VersionRow): Promise<void> {
  const latest = (await readVersions(tx, version.jobId)).at(-1)!
  if (latest.id !== version.id) throw problem('wrong-state', `Version ${latest.number} was sent after this one: answer that.`)
}

/** The manager in whose place somebody answers, where his own roles would not do. */
function deputisedFor(actor: Actor, subject: Subject): string | null {
  if (actor.kind !== 'person' || may({ ...actor, deputyFor: [] }, 'quotes.answer', subject)) return null
  return actor.deputyFor.find((standIn) => whyNot({ ...actor, roles: actor.roles.filter(({ role }) => role !== 'manager' && role !== 'owner'), deputyFor: [standIn] }, 'quotes.answer', subject) === null)?.manager ?? null
}

type KeptAnswer = { readonly kind: keyof typeof TRAIL; readonly reason: string | null; readonly byId: string; readonly ownQuote: boolean; readonly deputyForId: string | null }

async function keep(tx: Transaction, actor: Actor, version: VersionRow, facts: JobFacts, answer: KeptAnswer): Promise<Approval> {
  const row = await insertApproval(tx, { quoteVersionId: version.id, ...answer })
  const { kind, reason, ownQuote, deputyForId } = answer
  await emit(tx, { kind: 'quote.answered', garageId: facts.garage, jobId: facts.id, engineId: facts.engine, body: { quoteVersion: version.id, number: version.number, answer: kind } })
  await appendTrail(tx, {
    engine: facts.engine, job: facts.id, garage: facts.garage, kind: TRAIL[kind], actor,
    body: {
      quoteVersion: version.id, number: version.number, approval: row.id, totalMinor: version.totalMinor, currency: version.currency, reason,
      ...(ownQuote ? { ownQuote: true } : {}), ...(deputyForId === null ? {} : { deputyFor: deputyForId }),
    },
  })
  return toApproval(row, await readNames(tx, [row.byId, row.deputyForId]))
}
