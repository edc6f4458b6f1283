import { rmSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildApp } from '../../apps/api/src/app.ts'
import { readConfig } from '../../apps/api/src/config.ts'
import { openDatabase, type Database } from '../../apps/api/src/platform/database/database.ts'
import type { App } from '../../apps/api/src/platform/http/app.ts'
import { freshDatabase } from './database.ts'

/** The service as it is served, on a database of its own. */
export type TestService = {
  readonly app: App
  readonly database: Database
  /** For supertest: `request(service.server)`. */
  readonly server: App['server']
  /** Listens on a free port of this machine, for clients that need an address. */
  readonly listen: () => Promise<string>
  readonly close: () => Promise<void>
}

/** Builds it. `environment` sets what the process would be told, e.g. `{ SIGN_INS_PER_MINUTE: '3' }`. */
export async function testService(environment: Readonly<Record<string, string>> = {}): Promise<TestService> {
  const { url, drop } = await freshDatabase()
  const database = openDatabase(url)
  const photos = join(tmpdir(), `evenbore-photos-${new URL(url).pathname.slice(1)}`)
  const config = readConfig({ NODE_ENV: 'test', LOG_LEVEL: 'silent', PHOTOS: photos, ...environment })
  const app = await buildApp({ config, database, strictAnswers: true })
  await app.ready()
  return {
    app,
    database,
    server: app.server,
    listen: async () => {
      if (!app.server.listening) await app.listen({ port: 0, host: '127.0.0.1' })
      return `http://127.0.0.1:${(app.server.address() as AddressInfo).port}`
    },
    close: async () => {
      await app.close()
      await database.close()
      await drop()
      rmSync(photos, { recursive: true, force: true })
    },
  }
}
