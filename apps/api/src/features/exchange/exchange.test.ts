import request from 'supertest'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { testChain, testJob, testService, type TestChain, type TestJob, type TestService } from '../../../../../tests/support/index.ts'
import { appendTrail } from '../trail/service.ts'
import { EXPORTED } from './tables.ts'

let service: TestService
let chain: TestChain
let mine: TestJob
let theirs: TestJob
const get = (path: string, token: string) => request(service.server).get(path).set('authorization', `Bearer ${token}`)
const lines = (text: string) => text.trimEnd().split('\n').map((line) => JSON.parse(line) as { kind: string; record: Record<string, unknown>; lines?: number })

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  mine = await testJob(service, chain.mill)
  theirs = await testJob(service, chain.harbour)
  const actor = { kind: 'person', person: chain.harbour.manager.id, roles: [], deputyFor: [] } as const
  await service.database.transaction((tx) => appendTrail(tx, { engine: mine.engine, job: theirs.id, garage: chain.harbour.id, kind: 'quote-sent', actor, body: { totalMinor: 1 } }))
})
afterAll(() => service.close())

test("a manager takes out his own garage's records and no secrets", async () => {
  const answer = await get(`/v1/export?garage=${chain.mill.id}`, chain.mill.manager.token)
  expect([answer.status, answer.headers['content-type']]).toEqual([200, 'application/x-ndjson; charset=utf-8'])
  const exported = lines(answer.text)
  expect(exported.at(-1)).toEqual({ kind: 'end', lines: exported.length - 1 })
  expect(exported.filter(({ kind }) => kind === 'job').map(({ record }) => record['id'])).toEqual([mine.id])
  expect(exported.some(({ kind }) => kind === 'customer')).toBe(true)
  expect(answer.text).not.toMatch(/(password|pin|secret|code)_hash|totp_secret|argon2/)
})

test('of another garage the trail gives no more than kind, time and hash of a quote', async () => {
  const exported = lines((await get(`/v1/export?garage=${chain.mill.id}`, chain.mill.manager.token)).text)
  const entry = exported.find(({ kind }) => kind === 'trail-entry')!.record
  expect(Object.keys(entry)).not.toContain('body')
  expect(entry).toMatchObject({ kind: 'quote-sent', engine_id: mine.engine })
})

test('the owner takes out every garage, a manager only his own, a technician none', async () => {
  const all = lines((await get('/v1/export', chain.owner.token)).text)
  expect(all.filter(({ kind }) => kind === 'garage')).toHaveLength(2)
  const own = lines((await get('/v1/export', chain.mill.manager.token)).text)
  expect(own.filter(({ kind }) => kind === 'garage').map(({ record }) => record['id'])).toEqual([chain.mill.id])
  expect((await get(`/v1/export?garage=${chain.harbour.id}`, chain.mill.manager.token)).status).toBe(404)
  expect((await get('/v1/export', chain.mill.technician.token)).status).toBe(403)
})

test('every table of the records is exported, or is named here with the reason', async () => {
  const left = new Set(['_prisma_migrations', 'refresh_token', 'one_time_link', 'signing_key', 'outside_app', 'audit_entry', 'idempotency_key', 'outbox_event', 'trail_head'])
  const { rows } = await service.database.pool.query<{ name: string }>("SELECT table_name AS name FROM information_schema.tables WHERE table_schema = 'public' AND table_type = 'BASE TABLE'")
  const exported = new Set(EXPORTED.map(({ kind }) => kind.replaceAll('-', '_')))
  expect(rows.map(({ name }) => name).filter((name) => !exported.has(name) && !left.has(name))).toEqual([])
})
