import type { Actor, FinishRepair, RepairRecord } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { emit } from '../../platform/live/outbox.ts'
import { problem } from '../../platform/problems/problem.ts'
import { keptBelief } from '../evaluations/service.ts'
import { agreedVersion, demandJob, demandOpen, lockJob, repairUnderWay as underWay, standingFacts, type JobFacts } from '../jobs/service.ts'
import { oweRelease } from '../retests/service.ts'
import { appendTrail } from '../trail/service.ts'
import { finishRow, insertRepair, readNames, readRepairs, readVersionAt, repairUnderWay, type RepairRow } from './store.ts'

export { listFindings } from './findings.ts'
export { believedIn, type Found } from './belief.ts'

/** Repairs of a job, the earliest first. */
export async function listRepairs(tx: Transaction, actor: Actor, job: string): Promise<RepairRecord[]> {
  await demandJob(tx, actor, 'quotes.read', job)
  return Promise.all((await readRepairs(tx, job)).map((row) => shown(tx, row)))
}

/** Starts the repair: only what the manager approved and the customer permitted, and nothing that waits for either. */
export async function startRepair(database: Database, actor: Actor, job: string): Promise<RepairRecord> {
  return database.transaction(async (tx) => {
    await lockJob(tx, job)
    const facts = await demandJob(tx, actor, 'repairs.write', job)
    demandOpen(facts)
    const version = await agreed(tx, facts)
    const row = await insertRepair(tx, { jobId: job, quoteVersionId: version.id, startedById: personOf(actor), operations: [] })
    await emit(tx, { kind: 'repair.changed', garageId: facts.garage, jobId: job, engineId: facts.engine, body: { repair: row.id, started: true } })
    await appendTrail(tx, { engine: facts.engine, job, garage: facts.garage, kind: 'repair-started', actor, body: { repair: row.id, quoteVersion: version.id, number: version.number } })
    return shown(tx, row)
  })
}

/** Finishes it: from now on its release retest is owed, against the session that the diagnosis rested on. */
export async function finishRepair(database: Database, actor: Actor, job: string, { operations, note: said }: FinishRepair): Promise<RepairRecord> {
  return database.transaction(async (tx) => {
    await lockJob(tx, job)
    const facts = await demandJob(tx, actor, 'repairs.write', job)
    demandOpen(facts)
    const note = said ?? null
    const repair = await repairUnderWay(tx, job)
    if (repair === null) throw problem('wrong-state', `No repair of job ${facts.code} is under way.`)
    const row = await finishRow(tx, repair.id, { operations, note, finishedById: personOf(actor) })
    await emit(tx, { kind: 'repair.changed', garageId: facts.garage, jobId: job, engineId: facts.engine, body: { repair: row.id, finished: true } })
    await appendTrail(tx, { engine: facts.engine, job, garage: facts.garage, kind: 'repair-finished', actor, body: { repair: row.id, operations, note } })
    const belief = repair.quoteVersion.evaluationId === null ? null : await keptBelief(tx, repair.quoteVersion.evaluationId)
    await oweRelease(tx, actor, { job, engine: facts.engine, garage: facts.garage }, row.id, belief?.consistency.session ?? null)
    return shown(tx, row)
  })
}

/** The version that may be worked on now. @throws problem `wrong-state` that says what is missing */
async function agreed(tx: Transaction, facts: JobFacts): Promise<{ id: string; number: number }> {
  const standing = standingFacts(facts)
  if (underWay(standing)) throw problem('wrong-state', facts.repair?.finishedAt == null ? 'A repair is under way already.' : 'The finished repair waits for its release retest first.')
  const place = agreedVersion(standing)
  const latest = facts.versions.length - 1
  if (latest < 0) throw problem('wrong-state', 'There is no quote: nothing was approved.')
  if (place !== latest) throw problem('wrong-state', `Version ${latest + 1} of the quote is not agreed: it needs the manager's approval and the customer's permission for its whole sum.`)
  return (await readVersionAt(tx, facts.id, place))!
}

async function shown(tx: Transaction, row: RepairRow): Promise<RepairRecord> {
  const names = await readNames(tx, [row.startedById, row.finishedById])
  const ref = (id: string | null) => (id === null ? null : { id, name: names.get(id) ?? '' })
  return {
    id: row.id, job: row.jobId, quoteVersion: row.quoteVersionId, startedAt: row.startedAt.toISOString(), startedBy: ref(row.startedById),
    finishedAt: row.finishedAt?.toISOString() ?? null, finishedBy: ref(row.finishedById), operations: row.operations as RepairRecord['operations'], note: row.note,
  }
}
