import { setTimeout as wait } from 'node:timers/promises'
import { readConfig, type Config } from '../config.ts'
import { makeOwnerLink, needsOwner } from '../access/owner.ts'
import { checkDatabase, openDatabase, type Database } from '../platform/database/database.ts'
import { migrate } from '../platform/database/migrate.ts'
import { startCluster, type Cluster } from '../platform/postgres/cluster.ts'
import type { App } from '../platform/http/app.ts'
import { loadDemo, readDemo, refreshDemo, wasCutShort } from './demo.ts'
import { listen, publicAddress } from './listen.ts'
import { say } from './say.ts'

/** What runs, in the order of its start; it is stopped in the opposite order. */
const running: { readonly name: string; readonly stop: () => Promise<unknown> }[] = []
let stopping = false

/** Starts configuration, database, migrations, service, in this order. */
async function start(): Promise<void> {
  const config = readConfig(process.env)
  const database = await startDatabase(config)
  const { buildApp } = await loadService()
  const app = await buildApp({ config, database })
  running.push({ name: 'service', stop: () => app.close() })
  await app.ready()
  const demo = await prepareDemo(config, database, app)
  // Most of the time the whole demo chain is there before anybody can look; what is late goes on arriving.
  await Promise.race([demo.complete, wait(Math.max(0, DEMO_PATIENCE_MS - process.uptime() * 1000), undefined, { ref: false })])
  if (stopping) return
  const address = await listen(app, config)
  const shown = publicAddress(config, address)
  await demo.write(address)
  say(`Evenbore is at ${shown}   (API: ${shown}/docs)`)
  await announceSignIns(config, database, shown, demo.signIns)
  say('Ctrl-C stops it.')
  // The first query through Prisma takes half a second: before anybody asks one, it is asked for nothing.
  void database.prisma.signingKey.count().catch(() => undefined)
}

/** The service's own modules take longest to load: that happens while PostgreSQL starts. */
const loadService = () => import('../app.ts')

async function startDatabase(config: Config): Promise<Database> {
  let url = config.databaseUrl
  if (url === undefined) {
    const cluster: Cluster = await startCluster({ folder: config.dataFolder, database: 'evenbore', onProgress: say, onLaunched: () => void loadService() })
    running.push({ name: 'database', stop: cluster.stop })
    url = cluster.url
  } else {
    await checkDatabase(url)
  }
  const applied = await migrate(url, config.migrationsFolder)
  if (applied.length > 0) say(`Prepared the records (${applied.length} migration${applied.length === 1 ? '' : 's'})`)
  const database = openDatabase(url)
  running.push({ name: 'connections', stop: database.close })
  return database
}

/** The service listens within ten seconds of the process's beginning, demo chain or not. */
const DEMO_PATIENCE_MS = 7_000

type PreparedDemo = { readonly write: (address: string) => Promise<void>; readonly signIns: string[]; readonly complete: Promise<unknown> }
const NO_DEMO: PreparedDemo = { write: async () => undefined, signIns: [], complete: Promise.resolve() }

/** The demo chain: loaded on a first empty start, never in production. Its accounts are there before the service listens. */
async function prepareDemo(config: Config, database: Database, app: App): Promise<PreparedDemo> {
  if (config.production) return NO_DEMO
  const stored = readDemo(config)
  if (!(await needsOwner(database))) {
    if (wasCutShort(config)) say(`The demo chain is incomplete, since it was stopped while it was being made: remove ${config.dataFolder} to have it made anew.`)
    return stored === undefined ? NO_DEMO : { ...NO_DEMO, ...refreshDemo(config, database, stored) }
  }
  const link = await makeOwnerLink(database)
  return (await loadDemo(config, app, link, (end) => running.push({ name: 'demo', stop: end }))) ?? NO_DEMO
}

async function announceSignIns(config: Config, database: Database, address: string, demoSignIns: readonly string[]): Promise<void> {
  for (const line of demoSignIns) say(line)
  if (await needsOwner(database)) {
    say('There is no owner yet. Open this link once, within a day, to become one:')
    say(`  ${address}/owner#${await makeOwnerLink(database)}`)
  } else if (config.production) {
    say('Sign in with your own account.')
  }
}

async function stop(code: number): Promise<void> {
  if (stopping) return
  stopping = true
  for (const { stop: end } of running.splice(0).reverse()) {
    // What hangs must not keep the database from being closed.
    await Promise.race([end().catch(() => undefined), wait(8_000, undefined, { ref: false })])
  }
  process.exit(code)
}

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void stop(0))
process.on('uncaughtException', (error) => {
  process.stderr.write(`Something broke: ${error.stack ?? error.message}\n`)
  void stop(1)
})

try {
  await start()
} catch (error) {
  // Ctrl-C in the middle of a start takes its ground away; that is no fault to report.
  if (!stopping) process.stderr.write(`${(error as Error).message}\n`)
  await stop(1)
}
