import { existsSync } from 'node:fs'
import { resolve } from 'node:path'
import { readConfig } from './config.ts'
import { backUp, restore } from './platform/database/backup.ts'
import { checkDatabase } from './platform/database/database.ts'
import { migrate } from './platform/database/migrate.ts'
import { keptFiles } from './platform/files/kept-files.ts'
import { startCluster } from './platform/postgres/cluster.ts'
import { runningClusterUrl } from './platform/postgres/running.ts'

const USAGE = 'Usage: npm run backup -- FILE, or npm run restore -- FILE\n'

/** `backup FILE` writes the records to a file, also while the service runs; `restore FILE` puts them into an empty database. */
async function run(action: string | undefined, given: string | undefined): Promise<number> {
  if ((action !== 'backup' && action !== 'restore') || given === undefined) {
    process.stderr.write(USAGE)
    return 3
  }
  // npm changes the folder; paths are meant from where the user stands.
  const file = resolve(process.env['INIT_CWD'] ?? '.', given)
  if (action === 'backup' && existsSync(file)) throw new Error(`${file} exists already: name another file.`)
  if (action === 'restore' && !existsSync(file)) throw new Error(`There is no file ${file}.`)
  const { url, stop } = await findDatabase(action)
  try {
    const kept = keptFiles(readConfig(process.env).photoFolder)
    const { rows, tables, files } = action === 'backup' ? await backUp(url, kept, file) : await restore(url, kept, file)
    process.stdout.write(`${rows} rows of ${tables} tables and ${files} files of photos ${action === 'backup' ? 'written to' : 'restored from'} ${file}\n`)
    return 0
  } finally {
    await stop()
  }
}

async function findDatabase(action: 'backup' | 'restore'): Promise<{ url: string; stop: () => Promise<void> }> {
  const config = readConfig(process.env)
  const none = async () => undefined
  if (config.databaseUrl !== undefined) {
    await checkDatabase(config.databaseUrl)
    if (action === 'restore') await migrate(config.databaseUrl, config.migrationsFolder)
    return { url: config.databaseUrl, stop: none }
  }
  const running = await runningClusterUrl(config.dataFolder, 'evenbore')
  if (running !== undefined) {
    if (action === 'restore') throw new Error('Evenbore is running on this data folder: stop it before restoring.')
    return { url: running, stop: none }
  }
  const cluster = await startCluster({ folder: config.dataFolder, database: 'evenbore' })
  if (action === 'restore') await migrate(cluster.url, config.migrationsFolder)
  return cluster
}

try {
  process.exitCode = await run(process.argv[2], process.argv[3])
} catch (error) {
  process.stderr.write(`${(error as Error).message}\n`)
  process.exitCode = 1
}
