import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gunzipSync, gzipSync } from 'node:zlib'
import { freshDatabase, testChain, testJob, testService } from '@evenbore/tests/support'
import pg from 'pg'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { keptFiles } from '../files/kept-files.ts'
import { backUp, restore } from './backup.ts'

const folder = mkdtempSync(join(tmpdir(), 'evenbore-backup-'))
const file = join(folder, 'records.gz')
const kept = keptFiles(join(folder, 'photos'))
const elsewhere = keptFiles(join(folder, 'elsewhere'))
const PICTURES = [Buffer.from('one picture'), Buffer.from([0, 255, 10, 13])]
let source: Awaited<ReturnType<typeof testService>>

beforeAll(async () => {
  source = await testService()
  for (const picture of PICTURES) await kept.keep(picture)
  const chain = await testChain(source)
  const job = await testJob(source, chain.mill)
  for (let count = 0; count < 3; count++) {
    await source.database.transaction(async (tx) => {
      await tx.$executeRaw`INSERT INTO trail_entry (id, engine_id, kind, actor, body) VALUES (gen_random_uuid(), ${job.engine}::uuid, 'note', '{}', '{"text":"a \\"quoted\\" ü, (1)"}')`
      await tx.outboxEvent.create({ data: { kind: 'job.changed', body: { number: 0.1 + 0.2, text: 'ü\n"' } } })
    })
  }
})
afterAll(async () => {
  await source.close()
  rmSync(folder, { recursive: true })
})

const everything = async (url: string) => {
  const client = new pg.Client({ connectionString: url })
  await client.connect()
  const tables = (await client.query<{ name: string }>(`SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' AND tablename <> '_prisma_migrations' ORDER BY 1`)).rows
  const content: Record<string, string[]> = {}
  for (const { name } of tables) content[name] = (await client.query<{ row: string }>(`SELECT t::text AS row FROM "${name}" t ORDER BY 1`)).rows.map(({ row }) => row)
  await client.end()
  return content
}

describe('a backup', () => {
  test('put into an empty database gives the same rows in every table, and goes on from there', async () => {
    const made = await backUp(source.database.url, kept, file)
    expect(made.files).toBe(2)
    expect(made.rows).toBeGreaterThan(15)
    const target = await freshDatabase()
    expect(await restore(target.url, elsewhere, file)).toEqual(made)
    const files = await elsewhere.names()
    expect(files).toEqual(await kept.names())
    expect(await Promise.all(files.map((name) => elsewhere.read(name)))).toEqual(expect.arrayContaining(PICTURES))
    expect(await everything(target.url)).toEqual(await everything(source.database.url))
    const client = new pg.Client({ connectionString: target.url })
    await client.connect()
    // The sequence goes on, the chain of the trail goes on, and append-only tables refuse changes again.
    await client.query(`INSERT INTO outbox_event (kind, body) VALUES ('job.changed', '{}')`)
    await client.query(`INSERT INTO trail_entry (id, engine_id, kind, actor, body) SELECT gen_random_uuid(), engine_id, 'note', '{}', '{}' FROM trail_entry LIMIT 1`)
    expect((await client.query(`SELECT max(seq)::int AS seq FROM trail_entry`)).rows).toEqual([{ seq: 4 }])
    await expect(client.query('DELETE FROM trail_entry')).rejects.toThrow('append only')
    await client.end()
    await target.drop()
  })

  test('is not put into a database that has records', async () => {
    await expect(restore(source.database.url, elsewhere, file)).rejects.toThrow('The database is not empty')
  })

  test('that lost a row, a file or its end, restores nothing', async () => {
    const lines = gunzipSync(readFileSync(file)).toString('utf8').split('\n')
    const at = lines.findIndex((line) => line.startsWith('"'))
    const picture = lines.findIndex((line) => line.startsWith('{"file"'))
    for (const damaged of [lines.toSpliced(at, 1), lines.toSpliced(picture, 1), lines.slice(0, -2)]) {
      const target = await freshDatabase()
      writeFileSync(join(folder, 'damaged.gz'), gzipSync(damaged.join('\n')))
      await expect(restore(target.url, elsewhere, join(folder, 'damaged.gz'))).rejects.toThrow('is damaged or was cut short')
      expect(Object.values(await everything(target.url)).flat()).toEqual([])
      await target.drop()
    }
  })
})
