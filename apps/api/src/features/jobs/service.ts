import { may, type Action, type Actor, type Job, type JobEdit, type JobsQuery, type JobSummary, type SearchHit, type Standing } from '@evenbore/contract'
import { z } from 'zod'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { decodeCursor, toPage, type Page } from '../../platform/http/cursor.ts'
import { demandChanged, demandVersion } from '../../platform/http/etag.ts'
import { problem } from '../../platform/problems/problem.ts'
import { demandGarage } from '../garages/service.ts'
import { standingFacts, summaryOf, type JobFacts } from './facts.ts'
import { needlesOf } from './needles.ts'
import { shownJob } from './show.ts'
import { standingOf } from './standing.ts'
import { factsOfJob, jobById, jobsOf, searchJobs, updateJob } from './store.ts'
import { told } from './told.ts'

export { standingFacts, type JobFacts } from './facts.ts'
export { agreedVersion, permittedMinor, repairUnderWay } from './standing.ts'
export { lockJob } from './store.ts'

/** One job with its people, car, engine, contacts and parts. */
export async function readJob(tx: Transaction, actor: Actor, id: string): Promise<Job> {
  const facts = await demandJob(tx, actor, 'jobs.read', id)
  const row = await jobById(tx, id)
  if (row === null) throw problem('not-found')
  return shownJob(tx, actor, row, facts)
}

/**
 * The facts of a job that somebody names.
 * @throws problem `not-found`, also for another garage's
 */
export async function demandJob(tx: Transaction, actor: Actor, action: Action, id: string): Promise<JobFacts> {
  const facts = await factsOfJob(tx, id)
  demand(actor, action, { garage: facts?.garage, bay: facts?.bay ?? null })
  if (facts === undefined) throw problem('not-found')
  return facts
}

/**
 * Where a job stands, as the transaction sees it: what other features ask before they act on it.
 * @throws problem `not-found`
 */
export async function jobStanding(tx: Transaction, id: string): Promise<Standing> {
  const facts = await factsOfJob(tx, id)
  if (facts === undefined) throw problem('not-found')
  return standingOf(standingFacts(facts))
}

/** Jobs of a garage, newest first. */
export async function listJobs(database: Database, actor: Actor, garage: string, query: JobsQuery): Promise<Page<JobSummary>> {
  demand(actor, 'jobs.read', { garage, bay: null })
  await demandGarage(database.prisma, actor, 'jobs.read', garage)
  const after = decodeCursor(query.after, z.tuple([z.iso.datetime(), z.uuid()]))
  const people = seesPeople(actor, garage)
  const needles = query.q === undefined || query.q === '' ? null : needlesOf(query.q)
  const rows = await jobsOf(database, garage, { needles, people, open: query.open === undefined ? null : query.open === 'true', after, limit: query.limit })
  return toPage(rows, query.limit, ({ bookedAt, id }) => [new Date(bookedAt).toISOString(), id], (row) => summaryOf(row, seesCustomer(actor, row)))
}

/** Jobs by what was typed at the counter: code, plate, name or phone. */
export async function search(database: Database, actor: Actor, garage: string, typed: string): Promise<SearchHit[]> {
  demand(actor, 'jobs.read', { garage, bay: null })
  await demandGarage(database.prisma, actor, 'jobs.read', garage)
  const hits = await searchJobs(database, garage, needlesOf(typed), seesPeople(actor, garage))
  return hits.map((row) => ({ ...summaryOf(row, seesCustomer(actor, row)), matched: row.matched as SearchHit['matched'] }))
}

/** Edits what was told at book-in. A job that is over is kept as it is. */
export async function editJob(database: Database, actor: Actor, id: string, version: number, edit: JobEdit): Promise<Job> {
  return database.transaction(async (tx) => {
    const facts = await demandJob(tx, actor, 'jobs.write', id)
    demandVersion((await jobById(tx, id))?.version ?? 0, version)
    demandOpen(facts)
    demandChanged((await updateJob(tx, id, edit, version)) ? [id] : [])
    await told(tx, facts, { edited: Object.keys(edit) })
    return readJob(tx, actor, id)
  })
}

/** @throws problem `wrong-state` for a job that is handed over or cancelled */
export function demandOpen(facts: JobFacts): void {
  if (facts.handedOverAt !== null) throw problem('wrong-state', `Job ${facts.code} was handed over. A come-back is a new job.`)
  if (facts.cancelledAt !== null) throw problem('wrong-state', `Job ${facts.code} was cancelled. Book the car in again.`)
}

/** May this actor see who brought this car? A tablet may in its own bay only. */
export function seesCustomer(actor: Actor, { garage, bay }: Pick<JobFacts, 'garage' | 'bay'>): boolean {
  return may(actor, 'customers.read', { garage, bay })
}

function seesPeople(actor: Actor, garage: string): boolean {
  return may(actor, 'customers.read', { garage, bay: null })
}
