import { createHash, randomUUID } from 'node:crypto'
import { readFile, readdir } from 'node:fs/promises'
import { join } from 'node:path'
import pg from 'pg'

/** A row of Prisma's own history table, so that the ordinary tool can take over at any time. */
type HistoryRow = { readonly migration_name: string; readonly checksum: string; readonly finished_at: Date | null; readonly rolled_back_at: Date | null }

const CREATE_HISTORY_IF_MISSING = `
  CREATE TABLE IF NOT EXISTS _prisma_migrations (
    id VARCHAR(36) PRIMARY KEY NOT NULL, checksum VARCHAR(64) NOT NULL, finished_at TIMESTAMPTZ, migration_name VARCHAR(255) NOT NULL,
    logs TEXT, rolled_back_at TIMESTAMPTZ, started_at TIMESTAMPTZ NOT NULL DEFAULT now(), applied_steps_count INTEGER NOT NULL DEFAULT 0)`
const READ_HISTORY = 'SELECT migration_name, checksum, finished_at, rolled_back_at FROM _prisma_migrations'
const RECORD = `
  INSERT INTO _prisma_migrations (id, checksum, migration_name, finished_at, applied_steps_count) VALUES ($1, $2, $3, now(), 1)`
/** The number that Prisma's own tool locks with, so that neither runs while the other does. */
const LOCK = 72707369

/**
 * Applies the migrations in `folder` that the database at `url` does not have, each in a transaction of its own.
 * Two processes that start at once: one waits and then applies nothing.
 * @returns the names applied now
 * @throws Error with one sentence: an edited file, a migration of a newer build, one left unfinished, or PostgreSQL's own message
 */
export async function migrate(url: string, folder: string): Promise<string[]> {
  const db = new pg.Client({ connectionString: url, application_name: 'evenbore-migrations' })
  await db.connect()
  try {
    await db.query('SET client_min_messages = warning')
    await db.query('SELECT pg_advisory_lock($1)', [LOCK])
    await db.query(CREATE_HISTORY_IF_MISSING)
    const names = (await readdir(folder, { withFileTypes: true })).filter((entry) => entry.isDirectory()).map((entry) => entry.name).sort()
    const history = await readHistory(db, names)
    const applied: string[] = []
    for (const name of names) {
      const sql = await readFile(join(folder, name, 'migration.sql'), 'utf8')
      const checksum = createHash('sha256').update(sql).digest('hex')
      if (alreadyDone(history.get(name), checksum)) continue
      await apply(db, name, sql, checksum)
      applied.push(name)
    }
    return applied
  } finally {
    await db.end()
  }
}

async function readHistory(db: pg.Client, names: readonly string[]): Promise<Map<string, HistoryRow>> {
  const { rows } = await db.query<HistoryRow>(READ_HISTORY)
  const standing = rows.filter((row) => row.rolled_back_at === null)
  const unknown = standing.find((row) => !names.includes(row.migration_name))
  if (unknown !== undefined) throw new Error(`The database has the migration ${unknown.migration_name}, which this version does not know: start a newer version.`)
  return new Map(standing.map((row) => [row.migration_name, row]))
}

function alreadyDone(row: HistoryRow | undefined, checksum: string): boolean {
  if (row === undefined) return false
  if (row.finished_at === null) throw new Error(`The migration ${row.migration_name} was left unfinished in the database: restore a backup or mend it by hand.`)
  if (row.checksum !== checksum) throw new Error(`The migration ${row.migration_name} was changed after it had been applied: migrations are never edited.`)
  return true
}

async function apply(db: pg.Client, name: string, sql: string, checksum: string): Promise<void> {
  await db.query('BEGIN')
  try {
    await db.query(sql) // the whole file by the simple protocol, which takes many statements and $$ bodies
    await db.query(RECORD, [randomUUID(), checksum, name])
    await db.query('COMMIT')
  } catch (cause) {
    await db.query('ROLLBACK')
    throw new Error(`The migration ${name} failed and was rolled back: ${(cause as Error).message}.`, { cause })
  }
}
