import type { Actor, Floor, JobSummary } from '@evenbore/contract'
import { demand } from '../../access/door.ts'
import type { Database } from '../../platform/database/database.ts'
import { problem } from '../../platform/problems/problem.ts'
import { summaryOf } from './facts.ts'
import { seesCustomer } from './service.ts'
import { floorOf, type FloorRetestRow } from './store.ts'

/** States in which somebody must say yes or no before work goes on. */
const DECISIONS: ReadonlySet<string> = new Set(['waiting-for-manager', 'waiting-for-customer'])

/** The garage seen from above: its bays, and the three lists. A tablet with nobody signed in sees the job in its own bay. */
export async function readFloor(database: Database, actor: Actor, garage: string): Promise<Floor> {
  demand(actor, 'jobs.read', { garage })
  const row = await floorOf(database, garage)
  if (row === undefined) throw problem('not-found')
  const alone = actor.kind === 'tablet' && actor.person === null
  // Asked once where it is the same for every job: only a tablet sees some customers and not others.
  const everyone = actor.kind !== 'tablet' && seesCustomer(actor, { garage, bay: null })
  const jobs: JobSummary[] = []
  for (const job of row.jobs) if (!alone || job.bay === actor.bay) jobs.push(summaryOf(job, everyone || seesCustomer(actor, job)))
  return sorted(row.garage, row.name, row.bays, jobs, alone ? [] : row.retests)
}

function sorted(garage: string, name: string, bays: readonly { readonly id: string; readonly name: string }[], jobs: readonly JobSummary[], retests: readonly FloorRetestRow[]): Floor {
  const inBay = new Map<string, JobSummary>()
  const inRetests = new Set(retests.map(({ job }) => job))
  const elsewhere: JobSummary[] = []
  const waitsForDecision: JobSummary[] = []
  const ready: JobSummary[] = []
  for (const job of jobs) {
    const { state } = job.standing
    if (job.bay !== null) inBay.set(job.bay.id, job)
    if (DECISIONS.has(state)) waitsForDecision.push(job)
    else if (state === 'ready') ready.push(job)
    else if (job.bay === null && !inRetests.has(job.id)) elsewhere.push(job)
  }
  return {
    garage,
    name,
    bays: bays.map((bay) => ({ id: bay.id, name: bay.name, job: inBay.get(bay.id) ?? null })),
    elsewhere: elsewhere.sort(bySince),
    waitsForDecision: waitsForDecision.sort(bySince),
    retestsDue: retests.map((retest) => ({ ...retest, bookedFor: retest.bookedFor === null ? null : new Date(retest.bookedFor).toISOString() })),
    ready: ready.sort(bySince),
  }
}

/** Who waits longest comes first. */
function bySince(a: JobSummary, b: JobSummary): number {
  return a.standing.since < b.standing.since ? -1 : a.standing.since > b.standing.since ? 1 : 0
}
