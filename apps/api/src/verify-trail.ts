import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { readConfig, type Config } from './config.ts'
import { verifyTrails } from './features/trail/service.ts'
import { checkDatabase, openDatabase } from './platform/database/database.ts'
import { startCluster } from './platform/postgres/cluster.ts'
import { runningClusterUrl } from './platform/postgres/running.ts'

/** Where the records are: the database that DATABASE_URL names, the embedded one while it runs, or that one started for the check. */
async function findDatabase(config: Config): Promise<{ url: string; stop: () => Promise<void> }> {
  if (config.databaseUrl !== undefined) {
    await checkDatabase(config.databaseUrl)
    return { url: config.databaseUrl, stop: async () => undefined }
  }
  const running = await runningClusterUrl(config.dataFolder, 'evenbore')
  if (running !== undefined) return { url: running, stop: async () => undefined }
  if (!existsSync(join(config.dataFolder, 'postgres'))) throw new Error(`There are no records in ${config.dataFolder} yet: start Evenbore once, or name the database in DATABASE_URL.`)
  return startCluster({ folder: config.dataFolder, database: 'evenbore' })
}

/** Checks the trail of every engine. Exit 0: all whole; 1: broken ones, each named; 3: could not be checked. */
async function verify(): Promise<number> {
  const { url, stop } = await findDatabase(readConfig(process.env))
  const database = openDatabase(url)
  try {
    const checks = await verifyTrails(database)
    const broken = checks.filter(({ whole }) => !whole)
    for (const { engine, broken: fault } of broken) process.stdout.write(`engine ${engine}, entry ${fault?.seq}: ${fault?.says}\n`)
    const entries = checks.reduce((sum, check) => sum + check.entries, 0)
    process.stdout.write(`${checks.length} trails with ${entries} entries: ${broken.length === 0 ? 'all whole' : `${broken.length} broken`}\n`)
    return broken.length === 0 ? 0 : 1
  } finally {
    await database.close()
    await stop()
  }
}

try {
  process.exitCode = await verify()
} catch (error) {
  process.stderr.write(`${(error as Error).message}\n`)
  process.exitCode = 3
}
