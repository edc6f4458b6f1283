import { execFileSync } from 'node:child_process'

/** The user that PostgreSQL runs as when we are root, since it refuses to run as root itself. */
export type PostgresOwner = { readonly uid: number; readonly gid: number }

/**
 * undefined: PostgreSQL runs as the present user. As root: the system's user `postgres`, made when it is missing.
 * @throws Error with one sentence where that user cannot be made
 */
export function postgresOwner(): PostgresOwner | undefined {
  if (process.getuid?.() !== 0) return undefined
  const known = lookUp()
  if (known !== undefined) return known
  try {
    execFileSync('groupadd', ['postgres'], { stdio: 'ignore' })
    execFileSync('useradd', ['-g', 'postgres', 'postgres'], { stdio: 'ignore' })
  } catch {
    // Another start may have made it meanwhile; the look-up below tells.
  }
  const made = lookUp()
  if (made === undefined) throw new Error('PostgreSQL does not run as root, and the user "postgres" could not be made: start as another user.')
  return made
}

function lookUp(): PostgresOwner | undefined {
  try {
    const ask = (flag: string) => Number(execFileSync('id', [flag, 'postgres'], { stdio: ['ignore', 'pipe', 'ignore'] }).toString().trim())
    return { uid: ask('-u'), gid: ask('-g') }
  } catch {
    return undefined
  }
}
