import type { Database } from '../../platform/database/database.ts'
import { sqlFile } from '../../platform/database/sql-file.ts'

/** A reading with its trail entry and event, ready to be kept. Texts of the trail are canonical (RFC 8785). */
export type KeepReading = {
  readonly id: string
  readonly session: string
  readonly engine: string
  readonly job: string
  readonly garage: string
  readonly engineVersion: number
  readonly familyVersion: number
  readonly test: string
  readonly cylinder: number | null
  readonly body: string | null
  readonly pressurePa: number | null
  readonly replaces: string | null
  readonly withdrawn: boolean
  readonly reason: string | null
  readonly takenAt: string
  readonly takenBy: string | null
  readonly tablet: string | null
  readonly app: string | null
  /** The taker's id where it came from the request and must be known. */
  readonly unprovenTaker: string | null
  readonly offline: boolean
  readonly requestHash: string
  readonly actor: string
  readonly entry: { readonly id: string; readonly kind: string; readonly body: string; readonly bodyUnplaced: string | null; readonly event: string }
  /** Engine and job that a moved reading leaves. */
  readonly left: { readonly id: string; readonly engine: string; readonly job: string; readonly garage: string; readonly kind: string; readonly body: string; readonly event: string } | null
}

export type KeepOutcome = {
  readonly closed: boolean
  readonly sameEngine: boolean
  readonly takerKnown: boolean
  readonly priorHash: string | null
  readonly receivedAt: Date | null
  readonly state: 'placed' | 'unplaced' | null
  readonly isNew: boolean
}

const KEEP = { name: 'keep-reading', text: sqlFile(import.meta.url, './sql/keep-reading.sql') }

/** Keeps the reading or says why not; undefined where the session does not exist. */
export async function keepReadingRow(database: Database, row: KeepReading): Promise<KeepOutcome | undefined> {
  const { entry, left } = row
  const [outcome] = await database.run<KeepOutcome>(KEEP, [
    row.id, row.session, row.engine, row.engineVersion, row.familyVersion, row.test, row.cylinder, row.body, row.pressurePa, row.replaces, row.withdrawn, row.reason,
    row.takenAt, row.takenBy, row.tablet, row.app, row.unprovenTaker, row.offline, row.requestHash, row.actor,
    entry.id, row.job, row.garage, entry.kind, entry.body, entry.bodyUnplaced,
    left?.id ?? null, left?.engine ?? null, left?.job ?? null, left?.garage ?? null, left?.kind ?? null, left?.body ?? null,
    entry.event, left?.event ?? null,
  ])
  return outcome
}

/** A reading that another is to replace. */
export type ReplacedReading = { readonly id: string; readonly session: string; readonly engine: string; readonly job: string; readonly garage: string; readonly apps: string[]; readonly test: string; readonly cylinder: number | null; readonly replacedBy: string | null }

const REPLACED = {
  name: 'reading-replaced',
  text: `SELECT r.id, r.session_id AS session, r.engine_id AS engine, s.job_id AS job, j.garage_id AS garage, s.app_ids AS apps, r.test, r.cylinder,
      (SELECT later.id FROM reading later WHERE later.replaces = r.id) AS "replacedBy"
    FROM reading r JOIN session s ON s.id = r.session_id JOIN job j ON j.id = s.job_id WHERE r.id = $1`,
}

/** The reading with this id and where it belongs. */
export async function readReplaced(database: Database, reading: string): Promise<ReplacedReading | undefined> {
  return (await database.run<ReplacedReading>(REPLACED, [reading]))[0]
}
