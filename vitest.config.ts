import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

const node = { environment: 'node', testTimeout: 60_000, hookTimeout: 120_000 } as const
/** One PostgreSQL and one migrated template for the whole project; each test file gets a database of its own. */
const withDatabase = { ...node, globalSetup: ['tests/support/global-postgres.ts'] }

/** Begun last, any of these would leave one worker alone with it while the others have nothing left to do. */
const LONG = ['e2e/screens', 'start/start', 'acceptance/simulated-engines']
class LongOnesFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const isShort = ({ moduleId }: TestSpecification) => Number(!LONG.some((name) => moduleId.includes(name)))
    return (await super.sort(files)).toSorted((a, b) => isShort(a) - isShort(b))
  }
}

export default defineConfig({
  test: {
    // Two cores: more workers only make each other's timeouts.
    maxWorkers: 2,
    sequence: { sequencer: LongOnesFirst },
    projects: [
      {
        test: {
          ...node,
          name: 'unit',
          include: ['packages/*/src/**/*.test.ts', 'apps/evaluate/src/**/*.test.ts', 'demo-data/src/**/*.test.ts', 'tests/{simulator,bench}/**/*.test.ts'],
        },
      },
      {
        test: {
          ...withDatabase,
          name: 'api',
          include: ['apps/api/src/**/*.test.ts', 'tests/{security,faults,start,load,support}/**/*.test.ts', 'packages/client/test/**/*.test.ts'],
        },
      },
      { test: { ...withDatabase, name: 'acceptance', include: ['tests/acceptance/**/*.test.ts'] } },
      {
        extends: './apps/web/vite.config.ts',
        root: './apps/web',
        test: { ...node, name: 'web', include: ['src/**/*.test.ts'] },
      },
      {
        test: { ...withDatabase, name: 'e2e', include: ['tests/e2e/**/*.test.ts'], testTimeout: 180_000, hookTimeout: 180_000 },
      },
    ],
  },
})
