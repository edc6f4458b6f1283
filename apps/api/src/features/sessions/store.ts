import type { Conditions, EnteredReading, Gauge, LeakageTester, SessionPurpose } from '@evenbore/contract'
import type { Prisma } from '../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { sqlFile } from '../../platform/database/sql-file.ts'

/** A job as far as what hangs on it needs to know: whose it is, whose engine, where it stands now, and whether it is over. */
export type JobPlace = {
  readonly id: string
  readonly code: string
  readonly garage: string
  readonly engine: string
  readonly bay: string | null
  readonly over: 'handed over' | 'cancelled' | null
}

export async function readJobPlace(tx: Transaction, job: string): Promise<JobPlace | undefined> {
  const row = await tx.job.findUnique({ where: { id: job }, select: { id: true, code: true, garageId: true, engineId: true, bayId: true, handedOverAt: true, cancelledAt: true } })
  if (row === null) return undefined
  return { id: row.id, code: row.code, garage: row.garageId, engine: row.engineId, bay: row.bayId, over: row.handedOverAt !== null ? 'handed over' : row.cancelledAt !== null ? 'cancelled' : null }
}

/** A session with the names of its instruments and of who opened it. */
export type SessionRow = {
  readonly id: string
  readonly job: string
  readonly garage: string
  readonly bay: string | null
  readonly engine: string
  readonly purpose: SessionPurpose
  readonly conditions: Conditions
  readonly gauge: { readonly id: string; readonly name: string } | null
  readonly gaugeSpecification: Gauge | null
  readonly tester: { readonly id: string; readonly name: string } | null
  readonly testerSpecification: LeakageTester | null
  readonly apps: string[]
  readonly openedAt: Date
  readonly openedBy: { readonly id: string; readonly name: string } | null
  readonly closedAt: Date | null
  readonly version: number
}

/** A reading as stored, with what replaced it. */
export type ReadingRow = {
  readonly id: string
  readonly session: string
  readonly body: EnteredReading | null
  readonly state: 'placed' | 'unplaced'
  readonly replaces: string | null
  readonly replacedBy: string | null
  readonly withdrawn: boolean
  readonly reason: string | null
  readonly takenAt: Date
  readonly receivedAt: Date
  readonly takenBy: { readonly id: string; readonly name: string } | null
  readonly offline: boolean
}

const SESSIONS = { name: 'sessions', text: sqlFile(import.meta.url, './sql/sessions.sql') }
const READINGS = { name: 'readings', text: sqlFile(import.meta.url, './sql/readings.sql') }

/** The sessions of a job, or one session, in the order of opening. */
export async function readSessions(database: Database, of: { readonly job: string } | { readonly session: string }): Promise<SessionRow[]> {
  return database.run<SessionRow>(SESSIONS, ['job' in of ? of.job : null, 'session' in of ? of.session : null])
}

/** Every reading of these sessions, replaced and withdrawn ones too, in the order they were taken. */
export async function readReadings(database: Database, sessions: readonly string[]): Promise<ReadingRow[]> {
  return sessions.length === 0 ? [] : database.run<ReadingRow>(READINGS, [sessions])
}

export async function sessionExists(tx: Transaction, session: string): Promise<{ job: string } | undefined> {
  const row = await tx.session.findUnique({ where: { id: session }, select: { jobId: true } })
  return row === null ? undefined : { job: row.jobId }
}

/** An instrument of the garage that is still in use. */
export async function readInstrument(tx: Transaction, id: string, garage: string): Promise<{ kind: string; specification: Prisma.JsonValue } | null> {
  return tx.gauge.findFirst({ where: { id, garageId: garage, retiredAt: null }, select: { kind: true, specification: true } })
}

/** Ids of outside apps, out of `ids`, that are in use. */
export async function knownApps(tx: Transaction, ids: readonly string[]): Promise<string[]> {
  return (await tx.outsideApp.findMany({ where: { id: { in: [...ids] }, revokedAt: null }, select: { id: true } })).map(({ id }) => id)
}

export async function releaseRetestOwed(tx: Transaction, job: string): Promise<boolean> {
  return (await tx.retest.count({ where: { jobId: job, kind: 'release', outcome: null } })) > 0
}

export async function insertSession(tx: Transaction, data: Prisma.SessionUncheckedCreateInput): Promise<void> {
  await tx.session.create({ data })
}

/**
 * Closes open sessions of a job (or the one named) and answers their ids. Takes the rows' locks, so a reading under way is kept before
 * the session closes and a later one finds it closed.
 */
export async function closeSessionRows(tx: Transaction, of: { readonly job: string; readonly session?: string }, by: string | null): Promise<string[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    UPDATE session SET closed_at = now(), closed_by_id = ${by}::uuid, version = version + 1
    WHERE job_id = ${of.job}::uuid AND closed_at IS NULL AND (${of.session ?? null}::uuid IS NULL OR id = ${of.session ?? null}::uuid)
    RETURNING id`
  return rows.map(({ id }) => id).sort()
}
