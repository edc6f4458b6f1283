import pg from 'pg'
import type { Database } from '../../platform/database/database.ts'
import { EXPORTED } from './tables.ts'

const ROWS_AT_A_TIME = 500

/**
 * Every record of some garages, as of one moment: a read-only snapshot on a connection of its own, so that a slow reader keeps nobody
 * else waiting. Rows come by a cursor and are never all in memory.
 */
export async function* readRecords(database: Database, garages: readonly string[]): AsyncGenerator<{ kind: string; record: unknown }> {
  const client = new pg.Client({ connectionString: database.url, application_name: 'evenbore-export' })
  client.on('error', () => undefined)
  await client.connect()
  try {
    await client.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY')
    for (const garage of garages) {
      for (const { kind, sql } of EXPORTED) {
        await client.query(`DECLARE records NO SCROLL CURSOR FOR ${sql.replaceAll('$1', client.escapeLiteral(garage))}`)
        for (;;) {
          const { rows } = await client.query<{ record: unknown }>(`FETCH ${ROWS_AT_A_TIME} FROM records`)
          for (const { record } of rows) yield { kind, record }
          if (rows.length < ROWS_AT_A_TIME) break
        }
        await client.query('CLOSE records')
      }
    }
  } finally {
    await client.end().catch(() => undefined)
  }
}

export async function allGarages(database: Database): Promise<string[]> {
  return (await database.prisma.garage.findMany({ orderBy: { name: 'asc' }, select: { id: true } })).map(({ id }) => id)
}
