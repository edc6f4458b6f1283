import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { buildApp } from '../../apps/api/src/app.ts'
import { readConfig } from '../../apps/api/src/config.ts'
import { openDatabase } from '../../apps/api/src/platform/database/database.ts'
import { migrate } from '../../apps/api/src/platform/database/migrate.ts'
import { startCluster } from '../../apps/api/src/platform/postgres/cluster.ts'
import type { TestService } from './service.ts'

/** The service as it is served, with a PostgreSQL of its own that waits for the disk as in use: for benches. */
export type LocalService = Omit<TestService, 'listen'> & { readonly address: string; readonly databaseUrl: string }

/** Starts it on a free port, in a throw-away folder that `close` removes. */
export async function localService(): Promise<LocalService> {
  const folder = mkdtempSync(join(tmpdir(), 'evenbore-bench-'))
  chmodSync(folder, 0o755) // as root PostgreSQL runs as another user, which must be able to enter
  const cluster = await startCluster({ folder, database: 'bench' })
  await migrate(cluster.url, resolve(import.meta.dirname, '..', '..', 'prisma', 'migrations'))
  const database = openDatabase(cluster.url)
  const app = await buildApp({ config: readConfig({ NODE_ENV: 'test', LOG_LEVEL: 'silent', DATA: folder }), database })
  await app.listen({ port: 0, host: '127.0.0.1' })
  return {
    app,
    database,
    server: app.server,
    address: `http://127.0.0.1:${(app.server.address() as AddressInfo).port}`,
    databaseUrl: cluster.url,
    close: async () => {
      await app.close()
      await database.close()
      await cluster.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/**
 * The text of a statement that the service has prepared, as the database itself holds it: what a bench compares with is what is run.
 * @throws Error when no connection of the service has prepared one of that name
 */
export async function preparedStatement({ database }: Pick<LocalService, 'database'>, name: string): Promise<string> {
  const clients = await Promise.all(Array.from({ length: database.pool.totalCount }, () => database.pool.connect()))
  try {
    for (const client of clients) {
      const { rows } = await client.query<{ statement: string }>('SELECT statement FROM pg_prepared_statements WHERE name = $1', [name])
      if (rows[0] !== undefined) return rows[0].statement
    }
    throw new Error(`the service has prepared no statement named ${name}`)
  } finally {
    for (const client of clients) client.release()
  }
}
