import request from 'supertest'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { testChain, testJob, testService, type TestChain, type TestJob, type TestService } from '../../../../../tests/support/index.ts'
import { exportHeads } from './heads.ts'
import { appendTrail } from './service.ts'

let service: TestService
let chain: TestChain
const actor = () => ({ kind: 'person', person: chain.mill.technician.id, roles: [], deputyFor: [] }) as const
const get = (path: string, token: string) => request(service.server).get(path).set('authorization', `Bearer ${token}`)
const check = async (job: TestJob) => (await get(`/v1/engines/${job.engine}/trail/check`, chain.mill.technician.token)).body

/** A job whose engine has a trail of four entries. */
async function trailOfFour(): Promise<TestJob> {
  const job = await testJob(service, chain.mill)
  for (const kind of ['job-booked', 'session-opened', 'quote-sent', 'quote-approved'] as const) {
    await service.database.transaction((tx) => appendTrail(tx, { engine: job.engine, job: job.id, garage: chain.mill.id, kind, actor: actor(), body: { b: 2, a: 'first' } }))
  }
  return job
}

/** What somebody with the database's password could do: the guards are triggers, and triggers can be switched off. */
async function tamper(sql: string, values: unknown[]): Promise<void> {
  const client = await service.database.pool.connect()
  try {
    await client.query('SET session_replication_role = replica')
    await client.query(sql, values)
  } finally {
    await client.query('SET session_replication_role = DEFAULT')
    client.release()
  }
}

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
})
afterAll(() => service.close())

test('an untouched trail is whole, and its text is kept in canonical form', async () => {
  const job = await trailOfFour()
  expect(await check(job)).toMatchObject({ entries: 4, whole: true, broken: null })
  const rows = await service.database.prisma.trailEntry.findMany({ where: { engineId: job.engine } })
  expect(rows[0]!.body).toBe('{"a":"first","b":2}')
})

test.each([
  ['changed', `UPDATE trail_entry SET body = '{"a":"other","b":2}' WHERE engine_id = $1 AND seq = 2`, 2, /changed/],
  ['missing', 'DELETE FROM trail_entry WHERE engine_id = $1 AND seq = 2', 3, /entry 2 is missing/],
  ['missing at the end', 'DELETE FROM trail_entry WHERE engine_id = $1 AND seq = 4', 4, /entry 4 is missing/],
  ['rewritten with a fitting hash of its own', `UPDATE trail_entry SET body = '{}', hash = trail_hash(previous_hash, engine_id, seq, at, kind, actor, '{}') WHERE engine_id = $1 AND seq = 2`, 3, /does not follow/],
  ['rewritten at the end', `UPDATE trail_entry SET body = '{}', hash = trail_hash(previous_hash, engine_id, seq, at, kind, actor, '{}') WHERE engine_id = $1 AND seq = 4`, 5, /head/],
  [
    'inserted',
    `INSERT INTO trail_entry (id, engine_id, seq, at, kind, actor, body, previous_hash, hash)
     SELECT gen_random_uuid(), engine_id, 5, at, kind, actor, body, hash, trail_hash(hash, engine_id, 5, at, kind, actor, body) FROM trail_entry WHERE engine_id = $1 AND seq = 4`,
    6, /head/,
  ],
])('a row that was %s is found and named', async (_what, sql, seq, says) => {
  const job = await trailOfFour()
  await tamper(sql, [job.engine])
  const found = await check(job)
  expect(found).toMatchObject({ whole: false, broken: { seq } })
  expect(found.broken.says).toMatch(says)
})

test('the trail comes in pages, and shows another garage no quote', async () => {
  const job = await trailOfFour()
  const first = await get(`/v1/engines/${job.engine}/trail?limit=3`, chain.mill.technician.token)
  expect(first.body.items.map(({ seq }: { seq: number }) => seq)).toEqual([1, 2, 3])
  expect(first.body.items[2]).toMatchObject({ kind: 'quote-sent', actor: { id: chain.mill.technician.id, name: chain.mill.technician.name }, body: { a: 'first', b: 2 } })
  const second = await get(`/v1/engines/${job.engine}/trail?limit=3&after=${first.body.next}`, chain.mill.technician.token)
  expect([second.body.items.length, second.body.next]).toEqual([1, null])
  const elsewhere = await get(`/v1/jobs/${job.id}/trail`, chain.harbour.technician.token)
  expect(elsewhere.body.items.map(({ body }: { body: unknown }) => body === null)).toEqual([false, false, true, true])
  expect(elsewhere.body.items[3]).toMatchObject({ kind: 'quote-approved', actor: null, hash: expect.stringMatching(/^[0-9a-f]{64}$/) })
  expect((await get(`/v1/engines/${job.engine}/trail?after=rubbish`, chain.mill.technician.token)).body.errors[0].path).toBe('/query/after')
})

test('heads are told once a day', async () => {
  const now = new Date()
  expect(await exportHeads(service.database, now)).toBeGreaterThan(0)
  expect(await exportHeads(service.database, now)).toBe(0)
})
