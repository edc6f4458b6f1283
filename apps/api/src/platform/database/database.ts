import { PrismaPg } from '@prisma/adapter-pg'
import pg from 'pg'
import { PrismaClient, type Prisma } from '../../generated/prisma/client.ts'
import { sqlStateOf } from './sql-state.ts'

/**
 * A transaction, handed from a service to its stores: what one action writes (data, trail, outbox event) commits together or not
 * at all. Raw SQL runs in it by `tx.$queryRaw`.
 */
export type Transaction = Prisma.TransactionClient

/** A statement that PostgreSQL plans once for each connection and name. */
export type Statement = { readonly name: string; readonly text: string }

export type Database = {
  readonly url: string
  readonly prisma: PrismaClient
  readonly pool: pg.Pool
  /** Runs `work` in one transaction, again (twice at most) where PostgreSQL asks for that because of another writer. */
  readonly transaction: <T>(work: (tx: Transaction) => Promise<T>) => Promise<T>
  /** Runs one prepared statement, by itself one transaction: the way of hot writes and of lists. */
  readonly run: <Row extends pg.QueryResultRow>(statement: Statement, values: readonly unknown[]) => Promise<Row[]>
  /** `listener` is called after each transaction of `transaction`, and by whoever writes events with `run`. */
  readonly onCommit: (listener: () => void) => void
  readonly committed: () => void
  readonly close: () => Promise<void>
}

/** Connections of one process: more than this gains nothing on two cores; many processes share the server's limit. */
const CONNECTIONS = 10
const RETRIES = 2
/** serialization_failure and deadlock_detected: the same work may well succeed now. */
const WORTH_RETRYING = new Set(['40001', '40P01'])

/** Gives up connecting after a while. Set on the pool, the limit would cost a timer for every query that waits for a connection. */
class ImpatientClient extends pg.Client {
  constructor(options?: pg.ClientConfig) {
    super({ ...options, connectionTimeoutMillis: 10_000 })
  }
}

/** Opens connections to the database at `url`; none is made before the first query. */
export function openDatabase(url: string): Database {
  const pool = new pg.Pool({ connectionString: url, max: CONNECTIONS, application_name: 'evenbore', Client: ImpatientClient })
  // An idle connection that breaks is replaced by the pool; without a listener it would end the process.
  pool.on('error', () => undefined)
  const prisma = new PrismaClient({ adapter: new PrismaPg(pool) })
  const listeners: (() => void)[] = []
  const committed = () => { for (const listener of listeners) listener() }

  async function transaction<T>(work: (tx: Transaction) => Promise<T>): Promise<T> {
    for (let attempt = 0; ; attempt++) {
      try {
        const result = await prisma.$transaction(work, { maxWait: 10_000, timeout: 30_000 })
        committed()
        return result
      } catch (error) {
        if (attempt === RETRIES || !WORTH_RETRYING.has(sqlStateOf(error) ?? '')) throw error
      }
    }
  }

  return {
    url,
    prisma,
    pool,
    transaction,
    run: async <Row extends pg.QueryResultRow>(statement: Statement, values: readonly unknown[]) =>
      (await pool.query<Row>({ name: statement.name, text: statement.text, values: values as unknown[] })).rows,
    onCommit: (listener) => void listeners.push(listener),
    committed,
    close: async () => {
      await prisma.$disconnect()
      await pool.end()
    },
  }
}

/**
 * Tries the database once, so that a wrong address stops the start with a sentence.
 * @throws Error with one sentence that holds no password
 */
export async function checkDatabase(url: string): Promise<void> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 5_000 })
  client.on('error', () => undefined)
  try {
    await client.connect()
    const { rows } = await client.query<{ version: number }>(`SELECT current_setting('server_version_num')::int AS version`)
    const version = rows[0]?.version ?? 0
    if (version < 150_000) throw new Error(`it is PostgreSQL ${Math.floor(version / 10_000)}, and 15 or later is needed`)
  } catch (cause) {
    const reason = (cause as Error).message || String((cause as { code?: unknown }).code ?? 'no answer')
    throw new Error(`The database that DATABASE_URL names cannot be used: ${reason}.`, { cause })
  } finally {
    await client.end().catch(() => undefined)
  }
}
