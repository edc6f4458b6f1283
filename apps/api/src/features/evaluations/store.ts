import type { Conditions, EngineSpecification, EnteredReading, Gauge, LeakageTester, PriorWork, Case } from '@evenbore/contract'
import type { Prisma } from '../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { sqlFile } from '../../platform/database/sql-file.ts'
import { newId } from '../../platform/ids.ts'

/** What a case is built from. `repaired`: whether a session came after the job's latest finished repair; null without one. */
export type CaseRow = {
  readonly job: string
  readonly garage: string
  readonly bay: string | null
  readonly engine: string
  readonly elevationM: number | null
  readonly priorWork: PriorWork
  readonly description: EngineSpecification
  readonly history: NonNullable<Case['engine']['history']>
  readonly sessions: readonly SessionOfCase[]
}
export type SessionOfCase = { readonly id: string; readonly conditions: Conditions; readonly gauge: Gauge | null; readonly tester: LeakageTester | null; readonly repaired: boolean | null }
export type ReadingOfCase = { readonly id: string; readonly session: string; readonly body: EnteredReading }

const CASE = { name: 'case-of-job', text: sqlFile(import.meta.url, './sql/case-of-job.sql') }
const READINGS = { name: 'readings-of-case', text: sqlFile(import.meta.url, './sql/readings-of-case.sql') }
const PENDING = { name: 'evaluation-pending', text: sqlFile(import.meta.url, './sql/pending.sql') }
const JOBS_PENDING = { name: 'evaluation-jobs-pending', text: sqlFile(import.meta.url, './sql/jobs-pending.sql') }

export async function readCase(database: Database, job: string): Promise<CaseRow | undefined> {
  return (await database.run<CaseRow>(CASE, [job]))[0]
}

export function readReadingsOfCase(database: Database, sessions: readonly string[], limit: number): Promise<ReadingOfCase[]> {
  return sessions.length === 0 ? Promise.resolve([]) : database.run<ReadingOfCase>(READINGS, [sessions, limit])
}

/** Reading entries that no evaluation note covers yet. */
export function readPending(database: Database, job: string): Promise<{ seq: number; reading: string }[]> {
  return database.run<{ seq: number; reading: string }>(PENDING, [job])
}

/** Jobs with readings made since, of which the latest has no note yet. */
export async function readJobsPending(database: Database, since: Date): Promise<string[]> {
  const milliseconds = since.getTime().toString(16).padStart(12, '0')
  const leastId = `${milliseconds.slice(0, 8)}-${milliseconds.slice(8)}-7000-8000-000000000000`
  return (await database.run<{ job: string }>(JOBS_PENDING, [leastId])).map(({ job }) => job)
}

/** Takes, until the transaction ends, the right to write notes of a job; false where another process has it. */
export async function tryNoting(tx: Transaction, job: string): Promise<boolean> {
  const [row] = await tx.$queryRaw<{ taken: boolean }[]>`SELECT pg_try_advisory_xact_lock(hashtextextended('evaluation ' || ${job}, 0)) AS taken`
  return row?.taken ?? false
}

export async function notedThrough(tx: Transaction, job: string): Promise<number> {
  const [row] = await tx.$queryRaw<{ through: number }[]>`
    SELECT (body::json ->> 'through')::int AS through FROM trail_entry WHERE job_id = ${job}::uuid AND kind = 'evaluation' ORDER BY seq DESC LIMIT 1`
  return row?.through ?? 0
}

export type KeptEvaluation = { readonly job: string; readonly engine: string; readonly caseHash: string; readonly model: string; readonly caseText: string; readonly resultText: string }

/** Keeps an evaluation for good, once for each case and model of a job; answers its id. */
export async function keepEvaluationRow(tx: Transaction, { job, engine, ...row }: KeptEvaluation): Promise<string> {
  const [made] = await tx.$queryRaw<{ id: string }[]>`
    INSERT INTO evaluation (id, job_id, engine_id, case_hash, model, case_text, result_text)
    VALUES (${newId()}::uuid, ${job}::uuid, ${engine}::uuid, ${row.caseHash}, ${row.model}, ${row.caseText}, ${row.resultText})
    ON CONFLICT (job_id, case_hash, model) DO NOTHING RETURNING id`
  if (made !== undefined) return made.id
  return (await tx.evaluation.findUniqueOrThrow({ where: { jobId_caseHash_model: { jobId: job, caseHash: row.caseHash, model: row.model } }, select: { id: true } })).id
}

const OF_GARAGE = { job: { select: { garageId: true, bayId: true } } } as const
export type EvaluationRow = Prisma.EvaluationGetPayload<{ include: typeof OF_GARAGE }>

export function readEvaluation(tx: Transaction, id: string): Promise<EvaluationRow | null> {
  return tx.evaluation.findUnique({ where: { id }, include: OF_GARAGE })
}

export type DecisionRow = Prisma.SuggestionDecisionGetPayload<object>

export function insertDecision(tx: Transaction, data: Prisma.SuggestionDecisionUncheckedCreateInput): Promise<DecisionRow> {
  return tx.suggestionDecision.create({ data })
}

export function readDecisions(tx: Transaction, job: string): Promise<DecisionRow[]> {
  return tx.suggestionDecision.findMany({ where: { jobId: job }, orderBy: [{ at: 'asc' }, { id: 'asc' }] })
}

/** Names of people by id. */
export async function readNames(tx: Transaction, ids: readonly (string | null)[]): Promise<ReadonlyMap<string, string>> {
  const people = await tx.person.findMany({ where: { id: { in: ids.filter((id) => id !== null) } }, select: { id: true, name: true } })
  return new Map(people.map(({ id, name }) => [id, name]))
}
