import { writeFile } from 'node:fs/promises'
import { loadAccounts } from './accounts.ts'
import { demoFile } from './demo-file.ts'
import { loadJobs } from './jobs.ts'

/**
 * Loads the demo chain into an empty install over HTTP. Reads EVENBORE_URL (scheme, host, port), EVENBORE_OWNER_LINK (the one-time
 * link's secret) and EVENBORE_DEMO_FILE (where the ways in are written, mode 600, before the first visit is booked).
 * Prints one line a step on standard output; exits 1 with one sentence when anything is refused.
 */
async function main(): Promise<void> {
  const { EVENBORE_URL: baseUrl, EVENBORE_OWNER_LINK: ownerLink, EVENBORE_DEMO_FILE: file } = process.env
  if (!baseUrl || !ownerLink || !file) throw new Error('EVENBORE_URL, EVENBORE_OWNER_LINK and EVENBORE_DEMO_FILE must be set')
  const accounts = await loadAccounts({ baseUrl, ownerLink })
  await writeFile(file, `${JSON.stringify(demoFile(baseUrl, accounts), null, 2)}\n`, { mode: 0o600 })
  console.log('demo: people and garages are there')
  await loadJobs({ baseUrl, accounts, onProgress: (done, of) => console.log(`demo: visit ${done} of ${of}`) })
}

try {
  await main()
} catch (error) {
  console.error(`The demo chain could not be loaded: ${error instanceof Error ? error.message : String(error)}`)
  process.exitCode = 1
}
