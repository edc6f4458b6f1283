import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import pg from 'pg'

/**
 * The address of `database` on the PostgreSQL that runs on `folder` just now, for tools that work beside a running service;
 * undefined where none runs there.
 */
export async function runningClusterUrl(folder: string, database: string): Promise<string | undefined> {
  const pidFile = join(folder, 'postgres', 'postmaster.pid')
  const passwordFile = join(folder, 'postgres-password')
  if (!existsSync(pidFile) || !existsSync(passwordFile)) return undefined
  const port = Number(readFileSync(pidFile, 'utf8').split('\n')[3])
  const url = `postgresql://postgres:${readFileSync(passwordFile, 'utf8')}@127.0.0.1:${port}/${database}`
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 2_000 })
  client.on('error', () => undefined)
  try {
    await client.connect()
    return url
  } catch {
    return undefined
  } finally {
    await client.end().catch(() => undefined)
  }
}
