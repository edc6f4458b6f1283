import type { Transaction } from '../../platform/database/database.ts'
import { problem } from '../../platform/problems/problem.ts'
import { readJobPlace } from './store.ts'

/** A job as far as what hangs on it needs to know: whose it is, whose engine, where it stands now, and whether it is over. */
export type JobPlace = {
  readonly id: string
  readonly code: string
  readonly garage: string
  readonly engine: string
  readonly bay: string | null
  readonly over: 'handed over' | 'cancelled' | null
}

/**
 * The job that a path names. Its garage is still to be asked about: `demand(actor, action, { garage: job.garage })`.
 * @throws problem `not-found`
 */
export async function jobPlace(tx: Transaction, job: string): Promise<JobPlace> {
  const place = await readJobPlace(tx, job)
  if (place === undefined) throw problem('not-found')
  return place
}

/** @throws problem `wrong-state` for a job that was handed over or cancelled: nothing more happens on it */
export function demandOpen(job: JobPlace): void {
  if (job.over !== null) throw problem('wrong-state', `Job ${job.code} was ${job.over}. A come-back is a new job.`)
}
