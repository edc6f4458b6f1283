import { loadAccounts } from './accounts.ts'
import { loadJobs } from './jobs.ts'

/**
 * Loads the demo chain into an empty install over HTTP, for the service's first start. Reads DEMO_BASE_URL (scheme, host, port) and
 * DEMO_OWNER_LINK (the one-time link's secret). Says one JSON document a line: `accounts` first, then `progress`, at last `done`.
 * Exits 1 with one sentence on standard error when anything is refused.
 */
async function main(): Promise<void> {
  const { DEMO_BASE_URL: baseUrl, DEMO_OWNER_LINK: ownerLink } = process.env
  if (!baseUrl || !ownerLink) throw new Error('DEMO_BASE_URL and DEMO_OWNER_LINK must be set')
  const accounts = await loadAccounts({ baseUrl, ownerLink })
  tell({
    accounts: {
      people: accounts.people.map(({ name, roles, email, password, pin }) => ({ name, roles: roles.map(({ garage, role }) => ({ garage, role })), email, password, pin })),
      tablets: accounts.tablets,
      apps: accounts.apps,
    },
  })
  await loadJobs({ baseUrl, accounts, onProgress: (done, of) => (done % 10 === 0 || done === of) && tell({ progress: `visit ${done} of ${of}` }) })
  tell({ done: 'the demo chain is complete' })
}

const tell = (report: object) => process.stdout.write(`${JSON.stringify(report)}\n`)

try {
  await main()
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`)
  process.exitCode = 1
}
