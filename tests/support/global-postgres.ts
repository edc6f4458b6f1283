import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import type { TestProject } from 'vitest/node'
import { migrate } from '../../apps/api/src/platform/database/migrate.ts'
import { startCluster } from '../../apps/api/src/platform/postgres/cluster.ts'

/** Starts a PostgreSQL in a throw-away folder, migrates one template, and stops it after the tests. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), 'evenbore-tests-'))
  chmodSync(folder, 0o755) // as root PostgreSQL runs as another user, which must be able to enter
  // Nobody pulls the plug on a test run: without waiting for the disk it is three times as fast.
  const cluster = await startCluster({ folder, database: 'template_evenbore', settings: ['fsync=off', 'synchronous_commit=off', 'full_page_writes=off'] })
  await migrate(cluster.url, resolve(import.meta.dirname, '..', '..', 'prisma', 'migrations'))
  project.provide('templateUrl', cluster.url)
  return async () => {
    await cluster.stop()
    rmSync(folder, { recursive: true, force: true })
  }
}
