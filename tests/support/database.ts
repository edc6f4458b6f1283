import { randomBytes } from 'node:crypto'
import pg from 'pg'
import { inject } from 'vitest'

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the migrated template database, which nothing connects to: databases are copied from it. */
    templateUrl: string
  }
}

/** A database of its own for a test file: a copy of the migrated template, dropped at the end. */
export type TestDatabase = { readonly url: string; readonly drop: () => Promise<void> }

/** Copies the template; takes about 50 ms. */
export async function freshDatabase(): Promise<TestDatabase> {
  const template = new URL(inject('templateUrl'))
  const name = `test_${randomBytes(6).toString('hex')}`
  await atServer(template, `CREATE DATABASE ${name} TEMPLATE ${template.pathname.slice(1)} STRATEGY FILE_COPY`)
  const url = new URL(template)
  url.pathname = `/${name}`
  return { url: url.href, drop: () => atServer(template, `DROP DATABASE IF EXISTS ${name} WITH (FORCE)`) }
}

async function atServer(template: URL, statement: string): Promise<void> {
  const server = new URL(template)
  server.pathname = '/postgres'
  const client = new pg.Client({ connectionString: server.href })
  await client.connect()
  try {
    // Two test files that copy at the same moment would each find the template in use by the other.
    await client.query('SELECT pg_advisory_lock(4080)')
    await client.query(statement)
  } finally {
    await client.end()
  }
}
