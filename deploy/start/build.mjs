// What is generated from the sources: the database client and the web pages, each made anew only when a source of it changed.
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { COMMANDS, ROOT, environmentInside, runStep } from './progress.mjs'

const CLIENT = join(ROOT, 'apps', 'api', 'src', 'generated', 'prisma', 'client.ts')
const PAGES = join(ROOT, 'apps', 'web', 'build', 'index.html')
const PAGES_MARKER = join(ROOT, '.cache', 'web-sources.sha256')
const NOT_SOURCES = new Set(['node_modules', 'build', '.svelte-kit'])

/** Generates the database client where it is missing or older than the schema or the version of what generates it. */
export async function generateDatabaseClient({ quiet }) {
  const sources = ['prisma/schema.prisma', 'prisma.config.ts', 'package-lock.json'].map((path) => join(ROOT, path))
  const newest = Math.max(...sources.map((path) => statSync(path).mtimeMs))
  if (existsSync(CLIENT) && statSync(CLIENT).mtimeMs >= newest) return
  await runStep({
    title: 'Generating the database client',
    command: join(COMMANDS, 'prisma'),
    args: ['generate'],
    env: environmentInside(),
    quiet,
    failure: 'The database client could not be generated: see the message above.',
  })
}

/** Builds the web pages where they are missing or a source of theirs has another content. */
export async function buildWeb({ quiet }) {
  if (!existsSync(join(ROOT, 'apps', 'web', 'vite.config.ts'))) return
  const wanted = hashOfWebSources()
  if (existsSync(PAGES) && existsSync(PAGES_MARKER) && readFileSync(PAGES_MARKER, 'utf8') === wanted) return
  await runStep({
    title: 'Building the web pages',
    command: 'npm',
    args: ['run', '-s', 'build', '-w', 'apps/web'],
    env: environmentInside(),
    quiet,
    failure: 'The web pages could not be built: see the message above.',
  })
  mkdirSync(dirname(PAGES_MARKER), { recursive: true })
  writeFileSync(PAGES_MARKER, wanted)
}

function hashOfWebSources() {
  const hash = createHash('sha256')
  const folders = ['apps/web', 'packages/contract', 'packages/diagnosis', 'packages/client', 'packages/words']
  const files = [...folders.flatMap((folder) => filesBelow(folder)), 'package-lock.json', 'tsconfig.json']
  for (const file of files) hash.update(`${file}\0`).update(readFileSync(join(ROOT, file))).update('\0')
  return hash.digest('hex')
}

function filesBelow(folder) {
  return readdirSync(join(ROOT, folder), { withFileTypes: true })
    .filter((entry) => !NOT_SOURCES.has(entry.name) && !entry.name.endsWith('.test.ts'))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => (entry.isDirectory() ? filesBelow(`${folder}/${entry.name}`) : [`${folder}/${entry.name}`]))
}
