// Makes a clone ready to run: installed packages, generated database client, built web pages.
// Runs before anything is installed, therefore plain JavaScript for Node 20 with Node's own modules only.
//
//   node deploy/start/ensure.mjs            what `npm start` needs
//   node deploy/start/ensure.mjs --tests    the same before tests
//   node deploy/start/ensure.mjs --quiet    prints only when a step is really needed, and never on standard output
import { pathToFileURL } from 'node:url'
import { installPackages } from './install.mjs'
import { generateDatabaseClient, buildWeb } from './build.mjs'
import { failWith } from './progress.mjs'

const OLDEST_NODE = 20

/**
 * Brings the clone up to date; does nothing, in a few milliseconds, when it is.
 * @param {{ web: boolean, quiet: boolean }} options web: build the pages too; quiet: keep standard output clean
 */
export async function ensure({ web, quiet }) {
  const major = Number(process.versions.node.split('.')[0])
  if (major < OLDEST_NODE) failWith(`Node ${process.versions.node} is too old: Node ${OLDEST_NODE} or later is needed.`)
  await installPackages({ quiet })
  await generateDatabaseClient({ quiet })
  if (web) await buildWeb({ quiet })
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const quiet = process.argv.includes('--quiet')
  await ensure({ web: true, quiet })
}
