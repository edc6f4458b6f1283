import type { Transaction } from '../../platform/database/database.ts'
import { problem } from '../../platform/problems/problem.ts'
import { readJobPlace, type JobPlace } from './store.ts'

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
