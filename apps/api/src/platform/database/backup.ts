import { createHash } from 'node:crypto'
import { createReadStream, createWriteStream } from 'node:fs'
import { once } from 'node:events'
import { createInterface } from 'node:readline'
import { createGunzip, createGzip } from 'node:zlib'
import { pipeline } from 'node:stream/promises'
import pg from 'pg'
import type { KeptFiles } from '../files/kept-files.ts'

/**
 * A backup is gzipped text, one JSON document a line: first the migrations the records were made by, then each table's name and
 * columns followed by its rows, then each kept file in base64, at last how many rows and files there are and the SHA-256 of all lines
 * before. A row is PostgreSQL's own text of it, so that nothing is lost on the way (numbers to the last digit, JSON as stored).
 */
const FORMAT = 'evenbore-backup-1'
const ROWS_AT_ONCE = 500

/** How much went into a backup or came out of one. */
export type BackupCounts = { readonly tables: number; readonly rows: number; readonly files: number }

/**
 * Writes everything in the database at `url`, as it stood at one moment, and the kept files into `file`. The service may go on meanwhile.
 * @throws Error when the database or a kept file cannot be read, or the file cannot be written
 */
export async function backUp(url: string, kept: KeptFiles, file: string): Promise<BackupCounts> {
  const db = new pg.Client({ connectionString: url, application_name: 'evenbore-backup' })
  await db.connect()
  const zip = createGzip()
  const written = pipeline(zip, createWriteStream(file, { flags: 'wx', mode: 0o600 }))
  written.catch(() => undefined)
  const hash = createHash('sha256')
  const put = async (document: unknown) => {
    const line = `${JSON.stringify(document)}\n`
    hash.update(line)
    if (!zip.write(line)) await Promise.race([once(zip, 'drain'), written])
  }
  try {
    await db.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY')
    const migrations = await db.query<{ name: string }>('SELECT migration_name AS name FROM _prisma_migrations WHERE rolled_back_at IS NULL ORDER BY migration_name')
    await put({ format: FORMAT, migrations: migrations.rows.map(({ name }) => name) })
    const tables = await tablesOf(db)
    let rows = 0
    for (const table of tables) {
      await put({ table, columns: await columnsOf(db, table) })
      await db.query(`DECLARE backup NO SCROLL CURSOR FOR SELECT t::text AS row FROM ${quoted(table)} t`)
      for (;;) {
        const batch = await db.query<{ row: string }>(`FETCH ${ROWS_AT_ONCE} FROM backup`)
        for (const { row } of batch.rows) await put(row)
        rows += batch.rows.length
        if (batch.rows.length < ROWS_AT_ONCE) break
      }
      await db.query('CLOSE backup')
    }
    // After the rows: a file is on the disk before the row that names it, so none of those above can be missing.
    const names = await kept.names()
    for (const name of names) {
      const content = await kept.read(name)
      if (content === undefined) throw new Error(`The kept file ${name} is damaged: put it back from an earlier backup, or remove it.`)
      await put({ file: content.toString('base64') })
    }
    zip.end(`${JSON.stringify({ tables: tables.length, rows, files: names.length, sha256: hash.digest('hex') })}\n`)
    await written
    return { tables: tables.length, rows, files: names.length }
  } finally {
    zip.destroy()
    await db.end()
  }
}

/**
 * Puts a backup into the empty database at `url`, whose migrations must be those of the backup, and its files among those kept. All of it
 * or nothing, but for files: they are named by their content, so one that no row names does no harm.
 * @throws Error with one sentence: not a backup, a damaged one, another version, or a database with records in it
 */
export async function restore(url: string, kept: KeptFiles, file: string): Promise<BackupCounts> {
  const db = new pg.Client({ connectionString: url, application_name: 'evenbore-restore' })
  await db.connect()
  try {
    await db.query('BEGIN')
    // Rows come back as they were written: the triggers that chain the trail or refuse changes have done their work already.
    for (const table of await tablesOf(db)) await db.query(`ALTER TABLE ${quoted(table)} DISABLE TRIGGER USER`)
    const counts = await readInto(db, kept, file)
    await db.query(SET_SEQUENCES)
    for (const table of await tablesOf(db)) await db.query(`ALTER TABLE ${quoted(table)} ENABLE TRIGGER USER`)
    await db.query('COMMIT')
    await db.query('ANALYZE')
    return counts
  } finally {
    await db.end()
  }
}

/** Each sequence goes on behind the highest number that its column holds. */
const SET_SEQUENCES = `DO $$
  DECLARE s record;
  BEGIN
    FOR s IN SELECT d.refobjid::regclass AS owner, a.attname AS column_name, d.objid::regclass AS name
      FROM pg_depend d JOIN pg_class c ON c.oid = d.objid AND c.relkind = 'S' JOIN pg_attribute a ON a.attrelid = d.refobjid AND a.attnum = d.refobjsubid
      WHERE d.deptype IN ('a', 'i') LOOP
      EXECUTE format('SELECT setval(%L, coalesce(max(%I), 0) + 1, false) FROM %s', s.name, s.column_name, s.owner);
    END LOOP;
  END $$`

async function readInto(db: pg.Client, kept: KeptFiles, file: string): Promise<BackupCounts> {
  const hash = createHash('sha256')
  let table: string | undefined
  let waiting: string[] = []
  let counts = { tables: 0, rows: 0, files: 0 }
  let end: { tables: number; rows: number; files: number; sha256: string } | undefined
  const flush = async () => {
    if (table !== undefined && waiting.length > 0) await put(table, waiting)
    counts = { ...counts, rows: counts.rows + waiting.length }
    waiting = []
  }
  const put = async (into: string, rows: readonly string[]) => {
    try {
      await db.query(`INSERT INTO ${quoted(into)} SELECT (r::${quoted(into)}).* FROM unnest($1::text[]) AS r`, [rows])
    } catch (cause) {
      throw new Error(`${file} is damaged or was cut short (${(cause as Error).message}): nothing was restored.`, { cause })
    }
  }
  const lines = createInterface({ input: createReadStream(file).pipe(createGunzip()).on('error', () => undefined), crlfDelay: Infinity })
  let first = true
  for await (const line of lines) {
    const document = JSON.parse(line) as string | { format?: string; migrations?: string[]; table?: string; columns?: string[]; file?: string; tables?: number; rows?: number; files?: number; sha256?: string }
    if (first) await demandFit(db, document)
    first = false
    if (typeof document === 'object' && document.sha256 !== undefined) {
      end = document as typeof end
      break
    }
    hash.update(`${line}\n`)
    if (typeof document === 'string') {
      waiting.push(document)
      if (waiting.length === ROWS_AT_ONCE) await flush()
    } else if (document.file !== undefined) {
      await flush()
      await kept.keep(Buffer.from(document.file, 'base64'))
      counts = { ...counts, files: counts.files + 1 }
    } else if (document.table !== undefined) {
      await flush()
      table = document.table
      counts = { ...counts, tables: counts.tables + 1 }
      const columns = await columnsOf(db, table)
      if (columns.join() !== (document.columns ?? []).join()) throw new Error(`The backup's table ${table} has other columns than this version's.`)
    }
  }
  await flush()
  if (end === undefined || end.sha256 !== hash.digest('hex') || end.rows !== counts.rows || end.files !== counts.files) throw new Error(`${file} is damaged or was cut short: nothing was restored.`)
  return counts
}

async function demandFit(db: pg.Client, document: unknown): Promise<void> {
  const { format, migrations } = document as { format?: string; migrations?: string[] }
  if (format !== FORMAT || migrations === undefined) throw new Error('This file is no backup of Evenbore.')
  const { rows } = await db.query<{ name: string }>('SELECT migration_name AS name FROM _prisma_migrations WHERE rolled_back_at IS NULL ORDER BY migration_name')
  if (rows.map(({ name }) => name).join() !== migrations.join()) throw new Error('The backup was made by another version: restore it with that one, then start this one.')
  for (const table of await tablesOf(db)) {
    const { rowCount } = await db.query(`SELECT 1 FROM ${quoted(table)} LIMIT 1`)
    if (rowCount !== 0) throw new Error(`The database is not empty (${table} has rows): restore into an empty one.`)
  }
}

/** Every table, those that others refer to before the others: rows go back in this order without switching references off. */
async function tablesOf(db: pg.Client): Promise<string[]> {
  const { rows } = await db.query<{ name: string; needs: string[] }>(
    `SELECT c.relname AS name, coalesce(array_agg(f.relname::text) FILTER (WHERE f.oid <> c.oid), '{}') AS needs
      FROM pg_class c LEFT JOIN pg_constraint k ON k.conrelid = c.oid AND k.contype = 'f' LEFT JOIN pg_class f ON f.oid = k.confrelid
      WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' AND c.relname <> '_prisma_migrations' GROUP BY c.relname ORDER BY c.relname`,
  )
  const ordered: string[] = []
  const add = (name: string) => {
    if (ordered.includes(name)) return
    for (const needed of rows.find((row) => row.name === name)?.needs ?? []) add(needed)
    ordered.push(name)
  }
  for (const { name } of rows) add(name)
  return ordered
}

async function columnsOf(db: pg.Client, table: string): Promise<string[]> {
  const { rows } = await db.query<{ name: string }>(
    `SELECT attname AS name FROM pg_attribute WHERE attrelid = $1::regclass AND attnum > 0 AND NOT attisdropped ORDER BY attnum`, [quoted(table)],
  )
  return rows.map(({ name }) => name)
}

const quoted = (name: string) => pg.escapeIdentifier(name)
