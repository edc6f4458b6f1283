import request from 'supertest'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { caller } from '../../../../../tests/support/caller.ts'
import { testChain, testPerson, testService, type TestChain, type TestService } from '../../../../../tests/support/index.ts'

let service: TestService
let chain: TestChain
beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
})
afterAll(() => service.close())

const owner = () => caller(service, chain.owner.token)
const manager = () => caller(service, chain.mill.manager.token)
let made = 0
const somebody = (more: object = {}) => ({ name: 'Vera Lund', email: `vera.${++made}@example.test`, password: 'twelve letters', pin: '2468', roles: [{ garage: chain.mill.id, role: 'technician' }], ...more })
const signIn = (email: string, password: string) => request(service.server).post('/v1/sign-in').send({ email, password })

describe('people', () => {
  test('taken on by an owner: she signs in, and no secret is ever shown', async () => {
    const body = somebody()
    const answer = await owner().post('/v1/people', body)
    expect(answer.status, JSON.stringify(answer.body)).toBe(201)
    expect(answer.body).toMatchObject({ name: 'Vera Lund', email: body.email, hasPin: true, roles: [{ garage: chain.mill.id, role: 'technician' }], version: 1 })
    expect(JSON.stringify(answer.body)).not.toMatch(/twelve|(?<![0-9a-f-])2468(?![0-9a-f-])|argon/)
    const row = await service.database.prisma.person.findUniqueOrThrow({ where: { id: answer.body.id } })
    expect([row.passwordHash, row.pinHash].every((hash) => hash?.startsWith('$argon2id$'))).toBe(true)
    expect((await signIn(body.email, body.password)).status).toBe(200)
    expect((await owner().post('/v1/people', somebody({ email: body.email.toUpperCase() }))).status).toBe(409)
  })
  test.each([
    ['/roles/0/garage', { roles: [{ garage: null, role: 'technician' }] }],
    ['/roles/0/garage', { roles: [{ garage: '019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b', role: 'technician' }] }],
    ['/roles/0/role', { roles: [{ garage: null, role: 'king' }] }],
    ['/roles', { roles: [] }],
    ['/pin', { pin: '12' }],
    ['/password', { password: 'short' }],
    ['/email', { email: 'nobody' }],
    ['/email', { email: undefined }],
    ['/name', { name: '' }],
    ['/admin', { admin: true }],
  ])('a bad %s is 400 at its path', async (path, more) => {
    const answer = await owner().post('/v1/people', somebody(more))
    expect(answer.status).toBe(400)
    expect(answer.body.errors).toMatchObject([{ path }])
    expect(JSON.stringify(answer.body)).not.toMatch(/short|twelve/)
  })
  test('an owner’s role names no garage, a limit is a manager’s, each role once', async () => {
    const { id } = chain.mill
    const errors = async (roles: object[]) => (await owner().post('/v1/people', somebody({ roles }))).body.errors
    expect(await errors([{ garage: id, role: 'owner' }])).toMatchObject([{ path: '/roles/0/garage' }])
    expect(await errors([{ garage: id, role: 'technician', approvalLimitMinor: 5 }])).toMatchObject([{ path: '/roles/0/approvalLimitMinor' }])
    expect(await errors([{ garage: id, role: 'technician' }, { garage: id, role: 'technician' }])).toMatchObject([{ path: '/roles/1' }])
  })
  test('a manager reads the people of his garage and writes nobody', async () => {
    const names = (await manager().get('/v1/people?limit=200')).body.items.map(({ name }: { name: string }) => name)
    expect(names).toContain(chain.mill.technician.name)
    expect(names).not.toContain(chain.harbour.technician.name)
    expect((await manager().get(`/v1/people/${chain.harbour.technician.id}`)).status).toBe(404)
    expect((await manager().post('/v1/people', somebody())).status).toBe(403)
    expect((await caller(service, chain.mill.frontDesk.token).get('/v1/people')).status).toBe(403)
  })
  test('leaving ends every sign-in at once', async () => {
    const person = await testPerson(service, 'Gone Soon', [{ garage: chain.mill.id, role: 'technician' }])
    expect((await caller(service, person.token).get('/v1/me')).status).toBe(200)
    expect((await owner().patch(`/v1/people/${person.id}`, 1, { left: true })).body.leftAt).toEqual(expect.any(String))
    expect((await caller(service, person.token).get('/v1/me')).status).toBe(401)
    expect((await owner().patch(`/v1/people/${person.id}`, 1, { left: false })).status).toBe(412)
  })
  test('other roles are in force at once', async () => {
    const person = await testPerson(service, 'Moved On', [{ garage: chain.mill.id, role: 'technician' }])
    expect((await caller(service, person.token).get(`/v1/garages/${chain.mill.id}`)).status).toBe(200)
    await owner().patch(`/v1/people/${person.id}`, 1, { roles: [{ garage: chain.harbour.id, role: 'front-desk' }] })
    expect((await caller(service, person.token).get(`/v1/garages/${chain.mill.id}`)).status).toBe(404)
  })
  test('the last owner stays', async () => {
    const path = `/v1/people/${chain.owner.id}`
    expect((await owner().patch(path, 1, { left: true })).status).toBe(409)
    expect((await owner().patch(path, 1, { roles: [{ garage: chain.mill.id, role: 'manager' }] })).status).toBe(409)
    expect((await owner().patch(path, 1, { name: 'Odile O.' })).status).toBe(200)
  })
})

describe('deputies', () => {
  const path = () => `/v1/garages/${chain.mill.id}/deputies`
  const until = new Date(Date.now() + 7 * 86_400_000).toISOString()
  test('a manager names one for himself, and ends it', async () => {
    const answer = await manager().post(path(), { deputy: chain.mill.technician.id, until })
    expect(answer.body).toMatchObject({ manager: { id: chain.mill.manager.id }, deputy: { name: chain.mill.technician.name }, until, revokedAt: null })
    expect((await caller(service, chain.mill.technician.token).get('/v1/me')).body.deputyFor).toMatchObject([{ manager: { id: chain.mill.manager.id } }])
    expect((await caller(service, chain.harbour.manager.token).post(`/v1/deputies/${answer.body.id}/revocation`)).status).toBe(404)
    const ended = await manager().post(`/v1/deputies/${answer.body.id}/revocation`)
    expect(ended.body.revokedAt).toEqual(expect.any(String))
    expect((await manager().post(`/v1/deputies/${answer.body.id}/revocation`)).body).toEqual(ended.body)
    expect((await caller(service, chain.mill.technician.token).get('/v1/me')).body.deputyFor).toEqual([])
    expect((await manager().get(path())).body.items).toEqual([ended.body])
  })
  test('not himself, nobody from elsewhere, not for another manager, not for ever', async () => {
    const post = async (body: object) => (await manager().post(path(), { deputy: chain.mill.technician.id, until, ...body })).body
    expect((await post({ deputy: chain.mill.manager.id })).errors).toMatchObject([{ path: '/deputy' }])
    expect((await post({ deputy: chain.harbour.technician.id })).errors).toMatchObject([{ path: '/deputy' }])
    expect((await post({ until: '2020-01-01T00:00:00Z' })).errors).toMatchObject([{ path: '/until' }])
    expect((await post({ until: '2999-01-01T00:00:00Z' })).errors).toMatchObject([{ path: '/until' }])
    expect((await post({ manager: chain.harbour.manager.id })).status).toBe(403)
    expect((await owner().post(path(), { manager: chain.mill.technician.id, deputy: chain.mill.frontDesk.id, until })).body.errors).toMatchObject([{ path: '/manager' }])
  })
})

test('a manager reads the audit of his garage, an owner all of it, in pages', async () => {
  const all = (await owner().get('/v1/audit?limit=200')).body.items
  expect(all.some(({ garage }: { garage: string | null }) => garage === null)).toBe(true)
  const first = (await owner().get('/v1/audit?limit=2')).body
  expect([...first.items, ...(await owner().get(`/v1/audit?limit=2&after=${first.next}`)).body.items]).toEqual(all.slice(0, 4))
  const own = (await manager().get('/v1/audit?limit=200')).body.items
  expect(own.length).toBeGreaterThan(0)
  expect(own.every(({ garage }: { garage: string }) => garage === chain.mill.id)).toBe(true)
  expect((await caller(service, chain.mill.technician.token).get('/v1/audit')).status).toBe(403)
})
