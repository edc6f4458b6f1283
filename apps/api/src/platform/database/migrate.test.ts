import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { randomBytes } from 'node:crypto'
import pg from 'pg'
import { afterEach, beforeEach, describe, expect, inject, test } from 'vitest'
import { migrate } from './migrate.ts'

const REAL = resolve(import.meta.dirname, '..', '..', '..', '..', '..', 'prisma', 'migrations')
let url: string
let folder: string

const ask = async (address: string, text: string) => {
  const client = new pg.Client({ connectionString: address })
  await client.connect()
  try {
    return (await client.query(text)).rows
  } finally {
    await client.end()
  }
}
const put = (name: string, sql: string) => {
  mkdirSync(join(folder, name), { recursive: true })
  writeFileSync(join(folder, name, 'migration.sql'), sql)
}

beforeEach(async () => {
  const address = new URL(inject('templateUrl'))
  address.pathname = '/postgres'
  const name = `migrate_${randomBytes(6).toString('hex')}`
  await ask(address.href, `CREATE DATABASE ${name}`)
  address.pathname = `/${name}`
  url = address.href
  folder = mkdtempSync(join(tmpdir(), 'evenbore-migrations-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

describe('migrations', () => {
  test('the real ones apply to an empty database, and a second time nothing is left to do', async () => {
    cpSync(REAL, folder, { recursive: true })
    expect((await migrate(url, folder)).length).toBeGreaterThanOrEqual(2)
    expect(await migrate(url, folder)).toEqual([])
  })

  test('of two processes that start at once one applies and the other waits', async () => {
    put('0001_a', 'CREATE TABLE a (x int); SELECT pg_sleep(0.2);')
    const [first, second] = await Promise.all([migrate(url, folder), migrate(url, folder)])
    expect([...first, ...second]).toEqual(['0001_a'])
  })

  test('one that fails half way leaves nothing, and PostgreSQL’s own words', async () => {
    put('0001_a', 'CREATE TABLE a (x int); CREATE TABLE a (x int);')
    await expect(migrate(url, folder)).rejects.toThrow('The migration 0001_a failed and was rolled back: relation "a" already exists')
    expect(await ask(url, `SELECT to_regclass('a') AS a`)).toEqual([{ a: null }])
  })

  test('an edited one, and one that this build does not know, stop the start', async () => {
    put('0001_a', 'CREATE TABLE a (x int);')
    await migrate(url, folder)
    put('0001_a', 'CREATE TABLE a (x text);')
    await expect(migrate(url, folder)).rejects.toThrow('was changed after it had been applied')
    rmSync(join(folder, '0001_a'), { recursive: true })
    await expect(migrate(url, folder)).rejects.toThrow('which this version does not know')
  })

  test('functions with semicolons in them and comments with semicolons work', async () => {
    put('0001_a', `-- a; b\nCREATE FUNCTION one() RETURNS int LANGUAGE plpgsql AS $$ BEGIN PERFORM 1; RETURN 1; END $$;`)
    await migrate(url, folder)
    expect(await ask(url, 'SELECT one() AS one')).toEqual([{ one: 1 }])
  })
})
