import type { PersonRef, RetestDate, RetestKind } from '@evenbore/contract'
import type { Prisma } from '../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { sqlFile } from '../../platform/database/sql-file.ts'
import { newId } from '../../platform/ids.ts'

/** A retest with its dates, oldest first. `due` is the latest date that stands, `infinity` without one. */
export type RetestRow = {
  readonly id: string
  readonly job: string
  readonly garage: string
  readonly bay: string | null
  readonly code: string
  readonly engine: string
  readonly kind: RetestKind
  readonly reason: string
  readonly baselineSession: string | null
  readonly session: string | null
  readonly fulfilledByJob: string | null
  readonly repair: string | null
  readonly outcome: 'passed' | 'failed' | 'waived' | null
  readonly outcomeReason: string | null
  readonly comparison: string | null
  readonly decidedAt: Date | null
  readonly decidedBy: PersonRef | null
  readonly createdAt: Date
  readonly dates: RetestDate[]
  readonly due: string
  readonly overdueDays: number | null
  readonly jobOver: boolean
}

const RETESTS = sqlFile(import.meta.url, './sql/retests.sql')
const LIST = { name: 'retests', text: RETESTS }
const MOST_OF_A_JOB = 200

/** A page of a garage's retests, the earliest due first; one more than `limit` where there is one. */
export function retestsOfGarage(database: Database, garage: string, due: boolean, after: readonly [string, string] | undefined, limit: number): Promise<RetestRow[]> {
  return database.run<RetestRow>(LIST, [null, null, garage, due, after?.[0] ?? null, after?.[1] ?? null, limit + 1])
}

/** Retests that a job owes or promised, and those it was booked in for. */
export function retestsOfJob(tx: Transaction, job: string): Promise<RetestRow[]> {
  return tx.$queryRawUnsafe<RetestRow[]>(RETESTS, null, job, null, false, null, null, MOST_OF_A_JOB)
}

export async function readRetest(tx: Transaction, id: string): Promise<RetestRow | undefined> {
  return (await tx.$queryRawUnsafe<RetestRow[]>(RETESTS, id, null, null, false, null, null, 1))[0]
}

/** Holds the retest until the transaction ends, so that it is decided once. */
export async function lockRetest(tx: Transaction, id: string): Promise<void> {
  await tx.$queryRaw`SELECT 1 FROM retest WHERE id = ${id}::uuid FOR UPDATE`
}

export async function insertRetest(tx: Transaction, data: Omit<Prisma.RetestUncheckedCreateInput, 'id'>): Promise<string> {
  return (await tx.retest.create({ data: { id: newId(), ...data }, select: { id: true } })).id
}

export type Due = { readonly latest: string | null; readonly odometerKm: number | null; readonly event: string | null; readonly bookedFor?: string | null; readonly reason?: string | null }

export async function insertDate(tx: Transaction, retestId: string, { latest, ...due }: Due, byId: string | null): Promise<string> {
  return (await tx.retestDate.create({ data: { id: newId(), retestId, latest: latest === null ? null : new Date(`${latest}T00:00:00Z`), ...due, byId }, select: { id: true } })).id
}

export async function decideRetest(tx: Transaction, id: string, data: Prisma.RetestUncheckedUpdateInput): Promise<void> {
  await tx.retest.update({ where: { id }, data })
}

/** A session with the job it belongs to and whether a reading of it counts. */
export async function readSessionPlace(tx: Transaction, session: string): Promise<{ id: string; job: string; engine: string; purpose: string; receivedAt: Date; hasReadings: boolean } | undefined> {
  const row = await tx.session.findUnique({ where: { id: session }, select: { id: true, jobId: true, engineId: true, purpose: true, receivedAt: true } })
  if (row === null) return undefined
  const readings = await tx.$queryRaw<{ some: boolean }[]>`
    SELECT EXISTS (SELECT 1 FROM reading r WHERE r.session_id = ${session}::uuid AND r.state = 'placed' AND NOT r.withdrawn
      AND NOT EXISTS (SELECT 1 FROM reading later WHERE later.replaces = r.id)) AS some`
  return { id: row.id, job: row.jobId, engine: row.engineId, purpose: row.purpose, receivedAt: row.receivedAt, hasReadings: readings[0]?.some ?? false }
}

/** The latest session of some jobs that has a reading, of one purpose where it is named. */
export async function latestSession(tx: Transaction, job: string, purpose?: string): Promise<string | null> {
  const row = await tx.session.findFirst({ where: { jobId: job, purpose, readings: { some: { state: 'placed', withdrawn: false } } }, orderBy: [{ receivedAt: 'desc' }, { id: 'desc' }], select: { id: true } })
  return row?.id ?? null
}

export async function jobOfSession(tx: Transaction, session: string): Promise<string | undefined> {
  return (await tx.session.findUnique({ where: { id: session }, select: { jobId: true } }))?.jobId
}

/** What was done between baseline and retest. */
export async function operationsOf(tx: Transaction, repair: string | null): Promise<string[]> {
  return repair === null ? [] : ((await tx.repair.findUnique({ where: { id: repair }, select: { operations: true } }))?.operations ?? [])
}

export async function finishedAt(tx: Transaction, repair: string): Promise<Date | null> {
  return (await tx.repair.findUnique({ where: { id: repair }, select: { finishedAt: true } }))?.finishedAt ?? null
}
