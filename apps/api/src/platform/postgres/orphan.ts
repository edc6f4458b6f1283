import { existsSync, readFileSync, realpathSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import pg from 'pg'

/** A server that an earlier process of ours left running when it was killed the hard way. */
export type Orphan = { readonly port: number; readonly stop: () => Promise<void> }

/**
 * Looks for one by `postmaster.pid`: first line its process, fourth its port. It is ours when it lets us in and names our folder.
 * A stale file, left by a crash of PostgreSQL itself, needs nothing: the next start recovers alone.
 * @throws Error with one sentence when another living Evenbore uses the folder
 */
export async function findOrphan(data: string, password: string): Promise<Orphan | undefined> {
  const file = join(data, 'postmaster.pid')
  if (!existsSync(file)) return undefined
  const lines = readFileSync(file, 'utf8').split('\n')
  const process_ = Number(lines[0])
  const port = Number(lines[3])
  if (!Number.isInteger(process_) || !Number.isInteger(port) || port <= 0) return undefined
  const client = new pg.Client({ host: '127.0.0.1', port, user: 'postgres', password, database: 'postgres', connectionTimeoutMillis: 2_000 })
  client.on('error', () => undefined)
  try {
    await client.connect()
    const folder = await client.query<{ data: string }>(`SELECT current_setting('data_directory') AS data`)
    if (folder.rows[0] === undefined || realpathSync(folder.rows[0].data) !== realpathSync(data)) return undefined
    // Another process of ours keeps its listener connected for as long as it lives.
    const others = await client.query(`SELECT 1 FROM pg_stat_activity WHERE application_name = 'evenbore' AND pid <> pg_backend_pid()`)
    if (others.rowCount !== 0) throw new InUse(data)
    return { port, stop: () => stopByPid(process_) }
  } catch (error) {
    if (error instanceof InUse) throw error
    return undefined
  } finally {
    await client.end().catch(() => undefined)
  }
}

class InUse extends Error {
  constructor(data: string) {
    super(`The data folder ${data} is in use by another Evenbore that is running: stop that one, or set DATA to another folder.`)
  }
}

async function stopByPid(process_: number): Promise<void> {
  try {
    process.kill(process_, 'SIGINT')
    for (let tries = 0; tries < 200; tries++) {
      await wait(25)
      process.kill(process_, 0)
    }
  } catch {
    // It is gone, which is what was wanted.
  }
}
