import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { caller } from '../../../../../tests/support/caller.ts'
import { testApp, testChain, testService, type TestChain, type TestService } from '../../../../../tests/support/index.ts'

let service: TestService
let chain: TestChain
beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
})
afterAll(() => service.close())

const desk = () => caller(service, chain.mill.frontDesk.token)
const path = () => `/v1/garages/${chain.mill.id}/customers`
const INES = { name: 'Ines Duarte', phone: '+351 912 004-711', email: 'ines@example.test', address: 'Rua do Moinho 4', note: 'rings after six' }
const found = async (q: string) => (await desk().get(`${path()}?q=${encodeURIComponent(q)}`)).body.items.map(({ name }: { name: string }) => name)

describe('customers', () => {
  test('made, read and edited by version', async () => {
    const made = await desk().post(path(), INES)
    expect([made.status, made.headers['location'], made.headers['etag']]).toEqual([201, `/v1/customers/${made.body.id}`, '"1"'])
    expect(made.body).toEqual({ id: made.body.id, garage: chain.mill.id, ...INES, erasedAt: null, version: 1 })
    const edited = await desk().patch(`/v1/customers/${made.body.id}`, 1, { phone: null })
    expect(edited.body).toMatchObject({ phone: null, version: 2 })
    expect((await desk().patch(`/v1/customers/${made.body.id}`, 1, { name: 'x' })).status).toBe(412)
    expect((await desk().patch(`/v1/customers/${made.body.id}`, undefined, { name: 'x' })).status).toBe(428)
    expect((await desk().get(`/v1/customers/${made.body.id}`)).body).toEqual(edited.body)
    const events = await service.database.prisma.outboxEvent.findMany({ where: { kind: 'customer.changed' } })
    expect(events.map(({ body }) => body)).toEqual([{ customer: made.body.id }, { customer: made.body.id }])
  })
  test('found by parts of the name or digits of the phone', async () => {
    await desk().post(path(), { name: 'Jon O’Hara 100%', phone: '555/0199' })
    await desk().post(path(), { name: 'Joan Hart', phone: null })
    expect(await found('har jo')).toEqual(['Joan Hart', 'Jon O’Hara 100%'])
    expect(await found('0199')).toEqual(['Jon O’Hara 100%'])
    expect(await found('0%')).toEqual(['Jon O’Hara 100%'])
    expect(await found('_')).toEqual([])
  })
  test('pages by name', async () => {
    const all = (await desk().get(`${path()}?limit=200`)).body.items
    const first = (await desk().get(`${path()}?limit=1`)).body
    const second = (await desk().get(`${path()}?limit=1&after=${first.next}`)).body
    expect([...first.items, ...second.items]).toEqual(all.slice(0, 2))
  })
  test.each([
    ['/name', { name: 5 }], ['/name', { name: '' }], ['/phone', { phone: 'call me' }], ['/email', { email: 'ines' }], ['/note', { note: '' }], ['/vip', { vip: true }], ['/name', { name: 'x'.repeat(301) }],
  ])('a bad %s is 400 at its path', async (at, more) => {
    expect((await desk().post(path(), { ...INES, ...more })).body).toMatchObject({ status: 400, errors: [{ path: at }] })
  })
  test('belongs to its garage; a technician reads, an app by its scope', async () => {
    const { id } = (await desk().post(path(), INES)).body
    expect((await caller(service, chain.harbour.frontDesk.token).get(`/v1/customers/${id}`)).status).toBe(404)
    expect((await caller(service, chain.mill.technician.token).get(`/v1/customers/${id}`)).status).toBe(200)
    expect((await caller(service, chain.mill.technician.token).patch(`/v1/customers/${id}`, 1, { note: null })).status).toBe(403)
    expect((await caller(service, (await testApp(service, ['engines:read'])).token).get(`/v1/customers/${id}`)).status).toBe(403)
  })
})

describe('erasing a person', () => {
  test('nulls what is known, keeps the job, and says so in the audit without the name', async () => {
    const job = (await desk().post(`/v1/garages/${chain.mill.id}/jobs`, {
      customer: INES, vehicle: { plate: 'ER 1', description: 'blue van' }, complaint: 'smokes',
      engine: { description: 'diesel four', ownValues: { fuel: 'diesel', layout: 'inline', cylinders: 4 } },
    })).body
    const erase = () => desk().post(`/v1/customers/${job.customerRecord.id}/erasure`)
    expect((await erase()).body.detail).toContain(job.code)
    await desk().post(`/v1/jobs/${job.id}/cancellation`, { reason: 'asked to be forgotten' })
    const erased = await erase()
    expect(erased.body).toMatchObject({ name: 'erased', phone: null, email: null, address: null, note: null, erasedAt: expect.any(String) })
    expect((await erase()).body).toEqual(erased.body)
    const after = (await desk().get(`/v1/jobs/${job.id}`)).body
    expect(after).toMatchObject({ id: job.id, customer: 'erased', complaint: 'smokes', engine: job.engine })
    expect(await found('4711')).not.toContain('erased')
    expect((await desk().patch(`/v1/customers/${job.customerRecord.id}`, erased.body.version, { name: 'Ines' })).status).toBe(409)
    expect((await desk().post(`/v1/garages/${chain.mill.id}/vehicles`, { customer: job.customerRecord.id, plate: 'ER 2', description: 'x' })).body.errors).toMatchObject([{ path: '/customer' }])
    const everywhere = await service.database.pool.query(`SELECT string_agg(t::text, ' ') AS text FROM (
      SELECT to_jsonb(trail_entry) AS t FROM trail_entry UNION ALL SELECT to_jsonb(outbox_event) FROM outbox_event UNION ALL SELECT to_jsonb(audit_entry) FROM audit_entry) x`)
    expect(everywhere.rows[0].text).not.toMatch(/Ines|912.?004.?711|Moinho/)
    expect(everywhere.rows[0].text).toContain('customer.erased')
  })
})
