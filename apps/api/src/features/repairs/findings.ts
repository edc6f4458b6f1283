import { BRIDGE, CAUSES, type Actor, type Finding, type NewFinding } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import type { Transaction } from '../../platform/database/database.ts'
import { constraintOf, sqlStateOf } from '../../platform/database/sql-state.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { keptBelief } from '../evaluations/service.ts'
import { demandJob, demandOpen, type JobFacts } from '../jobs/service.ts'
import { appendTrail } from '../trail/service.ts'
import { believedIn, type Found } from './belief.ts'
import { insertFinding, readBelief, readFinding, readFindings, readNames, type FindingRow } from './store.ts'

const ENGINE_WIDE: ReadonlySet<string> = new Set(CAUSES)

/** What strip-down showed, in the order it was recorded, each against what had been believed. Replaced ones too. */
export async function listFindings(tx: Transaction, actor: Actor, job: string): Promise<Finding[]> {
  await demandJob(tx, actor, 'sessions.read', job)
  const rows = await readFindings(tx, job)
  return shownAll(tx, rows)
}

/** Records a finding against the evaluation that opened the engine; a correction names the one it replaces. */
export async function recordFinding(tx: Transaction, actor: Actor, job: string, { cylinders, fault, seen, replaces }: NewFinding): Promise<Finding> {
  const facts = await demandJob(tx, actor, 'findings.write', job)
  demandOpen(facts)
  demandPossible({ fault, cylinders }, facts)
  if (replaces !== undefined) await demandReplaceable(tx, job, replaces)
  const evaluationId = await readBelief(tx, job)
  const sorted = [...cylinders].sort((a, b) => a - b)
  const row = await insertFinding(tx, {
    jobId: job, engineId: facts.engine, evaluationId, cylinder: sorted.length === 1 ? sorted[0]! : null, cylinders: sorted, fault, seen, replaces: replaces ?? null, byId: personOf(actor),
  }).catch((error: unknown) => {
    if (sqlStateOf(error) === '23505' && constraintOf(error) === 'finding_replaced_once') throw problem('already-replaced', 'Another correction of this finding came first.')
    throw error
  })
  const [finding] = await shownAll(tx, [row])
  await emit(tx, { kind: 'finding.recorded', garageId: facts.garage, jobId: job, engineId: facts.engine, body: { finding: row.id, fault, cylinders: sorted } })
  await appendTrail(tx, {
    engine: facts.engine, job, garage: facts.garage, kind: 'finding', actor,
    body: { finding: row.id, fault, cylinders: sorted, seen, evaluation: evaluationId, believed: finding!.believed, ...(replaces === undefined ? {} : { replaces }) },
  })
  return finding!
}

/** The cylinders must be this engine's, and as many as the fault speaks of. */
function demandPossible({ fault, cylinders }: Found, facts: JobFacts): void {
  cylinders.forEach((cylinder, at) => {
    if (cylinder > facts.cylinders) throw badField(`/cylinders/${at}`, `a cylinder of this engine, 1 to ${facts.cylinders}`, String(cylinder))
    if (cylinders.indexOf(cylinder) !== at) throw badField(`/cylinders/${at}`, 'each cylinder once', String(cylinder))
  })
  const got = `a list of ${cylinders.length}`
  if (fault === BRIDGE && cylinders.length !== 2) throw badField('/cylinders', 'the two neighbours', got)
  if (ENGINE_WIDE.has(fault) && cylinders.length > 0) throw badField('/cylinders', 'no cylinders: this is of the whole engine', got)
  if (fault !== BRIDGE && fault !== 'nothing' && !ENGINE_WIDE.has(fault) && cylinders.length === 0) throw badField('/cylinders', 'the cylinder, or cylinders, where it was found', got)
}

async function demandReplaceable(tx: Transaction, job: string, replaces: string): Promise<void> {
  const replaced = await readFinding(tx, job, replaces)
  if (replaced === undefined) throw badField('/replaces', 'the id of a finding of this job', replaces)
  if (replaced.replacedBy !== null) throw problem('already-replaced', `It was replaced by the finding ${replaced.replacedBy}.`)
}

async function shownAll(tx: Transaction, rows: readonly FindingRow[]): Promise<Finding[]> {
  const names = await readNames(tx, rows.map(({ byId }) => byId))
  const evaluations = new Map(await Promise.all([...new Set(rows.map(({ evaluationId }) => evaluationId))].map(async (id) => [id, id === null ? null : await keptBelief(tx, id)] as const)))
  return rows.map((row) => {
    const evaluation = evaluations.get(row.evaluationId) ?? null
    const found = { fault: row.fault as Finding['fault'], cylinders: row.cylinders }
    return {
      id: row.id, job: row.jobId, engine: row.engineId, evaluation: row.evaluationId, ...found, seen: row.seen, replaces: row.replaces, believed: evaluation === null ? null : believedIn(evaluation, found),
      by: row.byId === null ? null : { id: row.byId, name: names.get(row.byId) ?? '' }, at: row.at.toISOString(),
    }
  })
}
