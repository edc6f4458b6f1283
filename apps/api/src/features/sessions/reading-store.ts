import type { EnteredReading } from '@evenbore/contract'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { gatherRows } from '../../platform/database/gather.ts'
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
  readonly body: EnteredReading | null
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
  readonly entryId: string
  readonly kind: string
  /** What the trail is told where the reading finds its place, and where it does not. */
  readonly told: string
  readonly toldUnplaced: string | null
  /** JSON of the event up to the inside of its last field, the reading; the statement adds what only the database knows. */
  readonly eventHead: string
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

const KEEP = { name: 'keep-readings', text: sqlFile(import.meta.url, './sql/keep-readings.sql') }
/** Two at once would each be smaller, and a run costs more than its rows: with one, a sixth more readings are kept (`npm run bench:service`). */
const MOST_RUNNING = 1
const MOST_ROWS = 100
const gathered = new WeakMap<Database, (row: KeepReading) => Promise<KeepOutcome | undefined>>()

/** Keeps the reading, together with others that come at the same time, or says why not; undefined where the session does not exist. */
export function keepReadingRow(database: Database, row: KeepReading): Promise<KeepOutcome | undefined> {
  let keep = gathered.get(database)
  if (keep === undefined) {
    const runAll = async (rows: readonly KeepReading[]) => inOrder(rows, await database.run<OutcomeRow>(KEEP, [asJson(rows)]))
    gathered.set(database, (keep = gatherRows({ runAll, keyOf: ({ id }) => id, mostRows: MOST_ROWS, mostRunning: MOST_RUNNING })))
  }
  return keep(row)
}

/** The same as part of a transaction that does more: a reading that moves to another job is told there too. */
export async function keepReadingRowWithin(tx: Transaction, row: KeepReading): Promise<KeepOutcome | undefined> {
  return (await tx.$queryRawUnsafe<OutcomeRow[]>(KEEP.text, asJson([row])))[0]
}

type OutcomeRow = KeepOutcome & { readonly id: string }

const asJson = (rows: readonly KeepReading[]) => JSON.stringify(rows.map((row, at) => ({ at, ...row })))

function inOrder(rows: readonly KeepReading[], outcomes: readonly OutcomeRow[]): (KeepOutcome | undefined)[] {
  const byId = new Map(outcomes.map((outcome) => [outcome.id, outcome]))
  return rows.map(({ id }) => byId.get(id))
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
