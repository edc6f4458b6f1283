import { spawnSync } from 'node:child_process'
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { buildApp } from './app.ts'
import { readConfig } from './config.ts'
import { openDatabase } from './platform/database/database.ts'
import { migrate } from './platform/database/migrate.ts'
import { startCluster } from './platform/postgres/cluster.ts'

/**
 * `npm run openapi`: writes the published document to packages/client/openapi.json, and the client's types from it. The document comes
 * from the service as it is served, on a database of its own that is thrown away.
 */
const ROOT = resolve(import.meta.dirname, '..', '..', '..')
const CLIENT = join(ROOT, 'packages', 'client')

const folder = mkdtempSync(join(tmpdir(), 'evenbore-openapi-'))
chmodSync(folder, 0o755) // as root PostgreSQL runs as another user, which must be able to enter
const cluster = await startCluster({ folder, database: 'openapi' })
try {
  const config = readConfig({ LOG_LEVEL: 'silent' })
  await migrate(cluster.url, config.migrationsFolder)
  const database = openDatabase(cluster.url)
  const app = await buildApp({ config, database })
  await app.ready()
  writeFileSync(join(CLIENT, 'openapi.json'), `${JSON.stringify(app.openapi().document, null, 1)}\n`)
  await app.close()
  await database.close()
} finally {
  await cluster.stop()
  rmSync(folder, { recursive: true, force: true })
}
process.exitCode = spawnSync(process.execPath, [join(CLIENT, 'generate.ts')], { cwd: CLIENT, stdio: 'inherit' }).status ?? 1
