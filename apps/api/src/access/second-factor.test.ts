import { TEST_PASSWORD, testChain, testService, type TestChain, type TestService } from '@evenbore/tests/support'
import { Secret, TOTP } from 'otpauth'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { makeOwnerLink } from './owner.ts'

let service: TestService
let chain: TestChain
beforeAll(async () => {
  service = await testService({ NODE_ENV: 'production' })
  chain = await testChain(service)
})
afterAll(() => service.close())

const signIn = (email: string, more: object = {}) => request(service.server).post('/v1/sign-in?refresh=body').send({ email, password: TEST_PASSWORD, ...more })
const as = (token: string) => ({ authorization: `Bearer ${token}` })
const settings = (token: string) => request(service.server).get(`/v1/garages/${chain.mill.id}/tablets`).set(as(token))
const codeOf = (secret: string) => new TOTP({ secret: Secret.fromBase32(secret) }).generate()

describe('in production', () => {
  test('a manager’s role sleeps until a second factor is set up; then each sign-in asks for its code', async () => {
    const { email } = chain.mill.manager
    const { accessToken } = (await signIn(email).expect(200)).body
    await settings(accessToken).expect(403)
    const { secret, uri } = (await request(service.server).post('/v1/me/second-factor').set(as(accessToken)).expect(200)).body
    expect(uri).toContain('otpauth://totp/')
    await request(service.server).put('/v1/me/second-factor').set(as(accessToken)).send({ secret, oneTimeCode: '000000' }).expect(400)
    await request(service.server).put('/v1/me/second-factor').set(as(accessToken)).send({ secret, oneTimeCode: codeOf(secret) }).expect(204)
    await settings(accessToken).expect(200)

    expect((await signIn(email).expect(401)).body.type).toBe('/docs/problems/second-factor-needed')
    await signIn(email, { oneTimeCode: '000000' }).expect(401)
    await settings((await signIn(email, { oneTimeCode: codeOf(secret) }).expect(200)).body.accessToken).expect(200)
    // A stolen token cannot put another factor in place of this one.
    await request(service.server).post('/v1/me/second-factor').set(as(accessToken)).expect(409)
  })

  test('a technician works without one', async () => {
    const { accessToken } = (await signIn(chain.mill.technician.email).expect(200)).body
    await request(service.server).get(`/v1/garages/${chain.mill.id}/floor`).set(as(accessToken)).expect(200)
  })

  test('a sole owner’s way back in is a link that works once: new password, no second factor, every sign-in ended', async () => {
    await service.database.prisma.person.update({ where: { id: chain.owner.id }, data: { totpSecret: 'A'.repeat(32) } })
    const before = chain.owner.token
    const link = await makeOwnerLink(service.database, chain.owner.id)
    const use = () => request(service.server).post('/v1/owner-setup/way-back-in?refresh=body').send({ link, password: 'quite another password' })
    await use().expect(200)
    await use().expect(401)
    await request(service.server).get('/v1/me').set(as(before)).expect(401)
    await signIn(chain.owner.email).expect(401)
    await signIn(chain.owner.email, { password: 'quite another password' }).expect(200)
  })
})
