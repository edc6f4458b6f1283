import { TEST_PASSWORD, TEST_PIN, testApp, testChain, testService, testTablet, type TestChain, type TestService } from '@evenbore/tests/support'
import { createLocalJWKSet, jwtVerify } from 'jose'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

let service: TestService
let chain: TestChain
beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
})
afterAll(() => service.close())

const bearer = (token: string) => `Bearer ${token}`
const signIn = (email: string, password = TEST_PASSWORD) => request(service.server).post('/v1/sign-in?refresh=body').send({ email, password })
const refresh = (refreshToken: string) => request(service.server).post('/v1/sign-in/refresh').send({ refreshToken })
const me = (token: string) => request(service.server).get('/v1/me').set('authorization', bearer(token))

describe('people', () => {
  test('sign in with e-mail and password, whatever capitals the e-mail has', async () => {
    const { body } = await signIn(chain.mill.technician.email.toUpperCase()).expect(200)
    const answer = await me(body.accessToken).expect(200)
    expect(answer.body).toMatchObject({ kind: 'person', person: { id: chain.mill.technician.id }, roles: [{ garage: chain.mill.id, role: 'technician' }], garages: [{ id: chain.mill.id }] })
  })

  test('a browser gets the refresh token as a cookie that scripts and other sites cannot reach', async () => {
    const answer = await request(service.server).post('/v1/sign-in').send({ email: chain.owner.email, password: TEST_PASSWORD }).expect(200)
    expect(answer.body).not.toHaveProperty('refreshToken')
    const cookie = answer.headers['set-cookie']?.[0] ?? ''
    expect(cookie).toMatch(/HttpOnly; SameSite=Strict/)
    const renewed = await request(service.server).post('/v1/sign-in/refresh').set('cookie', cookie.split(';')[0] ?? '').expect(200)
    await me(renewed.body.accessToken).expect(200)
  })

  test('a wrong password and an unknown e-mail are answered alike', async () => {
    const wrong = await signIn(chain.mill.manager.email, 'not the password').expect(401)
    const unknown = await signIn('nobody@example.test').expect(401)
    expect({ ...wrong.body, instance: '' }).toEqual({ ...unknown.body, instance: '' })
    expect(wrong.body.type).toBe('/docs/problems/wrong-credentials')
  })

  test('five wrong passwords in a row lock the person for a while, the right one too', async () => {
    const { email } = chain.harbour.frontDesk
    for (let attempt = 0; attempt < 5; attempt++) await signIn(email, 'wrong').expect(401)
    const locked = await signIn(email).expect(429)
    expect(locked.body.type).toBe('/docs/problems/locked-out')
    expect(Number(locked.headers['retry-after'])).toBeGreaterThan(0)
  })

  test('who has left cannot sign in, and his tokens end', async () => {
    const { body } = await signIn(chain.harbour.technician.email).expect(200)
    await service.database.prisma.person.update({ where: { id: chain.harbour.technician.id }, data: { leftAt: new Date() } })
    service.app.access.forget(chain.harbour.technician.id)
    await me(body.accessToken).expect(401)
    await signIn(chain.harbour.technician.email).expect(401)
  })
})

describe('refresh tokens', () => {
  test('work once; the second use of one ends the whole family', async () => {
    const first = await signIn(chain.mill.frontDesk.email).expect(200)
    const second = await refresh(first.body.refreshToken).expect(200)
    await refresh(first.body.refreshToken).expect(401)
    await refresh(second.body.refreshToken).expect(401)
    service.app.access.forget(chain.mill.frontDesk.id)
    await me(second.body.accessToken).expect(401)
  })

  test('of ten at the same moment one is renewed', async () => {
    const { body } = await signIn(chain.mill.manager.email).expect(200)
    const answers = await Promise.all(Array.from({ length: 10 }, () => refresh(body.refreshToken)))
    expect(answers.filter(({ status }) => status === 200).length).toBeLessThanOrEqual(1)
    expect(answers.every(({ status }) => status === 200 || status === 401)).toBe(true)
  })

  test('signing out ends access and refresh token', async () => {
    const { body } = await signIn(chain.mill.technician.email).expect(200)
    await request(service.server).post('/v1/sign-out').set('authorization', bearer(body.accessToken)).expect(204)
    await me(body.accessToken).expect(401)
    await refresh(body.refreshToken).expect(401)
  })
})

describe('access tokens', () => {
  test('are signed with EdDSA by a published key', async () => {
    const { body } = await request(service.server).get('/v1/keys').expect(200)
    const { protectedHeader, payload } = await jwtVerify(chain.owner.token, createLocalJWKSet(body))
    expect(protectedHeader.alg).toBe('EdDSA')
    expect((payload.exp ?? 0) - (payload.iat ?? 0)).toBe(600)
    expect(body.keys.every((key: object) => !('d' in key))).toBe(true)
  })

  test('with one changed character are refused', async () => {
    const changed = chain.owner.token.replace(/.(?=.{20}$)/, (sign) => (sign === 'A' ? 'B' : 'A'))
    await me(changed).expect(401)
    await me('nonsense').expect(401)
    await request(service.server).get('/v1/me').expect(401).expect('www-authenticate', /Bearer/)
  })
})

describe('tablets', () => {
  const makeTablet = async () => {
    const { body } = await request(service.server).post(`/v1/garages/${chain.mill.id}/tablets`).set('authorization', bearer(chain.owner.token)).send({ bay: chain.mill.bays[0], name: 'Bay 1' }).expect(201)
    return body as { id: string; enrolmentCode: string }
  }
  const enrol = (enrolmentCode: string) => request(service.server).post('/v1/tablets/enrol').send({ enrolmentCode })
  const takeOver = (token: string, person: string, pin: string) => request(service.server).post('/v1/tablets/take-over?refresh=body').set('authorization', bearer(token)).send({ person, pin })

  test('are enrolled by a code that works once, typed in any case and without its dashes', async () => {
    const { enrolmentCode, id } = await makeTablet()
    const { body } = await enrol(enrolmentCode.toLowerCase().replaceAll('-', ' ')).expect(201)
    expect(body).toMatchObject({ tablet: id, garage: chain.mill.id, bay: chain.mill.bays[0] })
    await enrol(enrolmentCode).expect(401)
    expect((await me(body.tabletToken).expect(200)).body).toMatchObject({ kind: 'tablet', person: null, tablet: { id } })
  })

  test('let a technician of their garage sign in by name and PIN, and nobody of another', async () => {
    const { tabletToken } = await testTablet(service, chain.mill)
    const people = await request(service.server).get('/v1/tablets/people').set('authorization', bearer(tabletToken)).expect(200)
    expect(people.body.items).toContainEqual({ id: chain.mill.technician.id, name: chain.mill.technician.name })
    expect(people.body.items.map(({ id }: { id: string }) => id)).not.toContain(chain.harbour.manager.id)
    const { body } = await takeOver(tabletToken, chain.mill.technician.id, TEST_PIN).expect(200)
    expect((await me(body.accessToken).expect(200)).body).toMatchObject({ kind: 'tablet', person: { id: chain.mill.technician.id } })
    await takeOver(tabletToken, chain.harbour.manager.id, TEST_PIN).expect(401)
  })

  test('wrong PINs lock the person, and after twice as many the tablet', async () => {
    const { tabletToken } = await testTablet(service, chain.mill)
    for (let attempt = 0; attempt < 5; attempt++) await takeOver(tabletToken, chain.mill.frontDesk.id, '0000').expect(401)
    await takeOver(tabletToken, chain.mill.frontDesk.id, TEST_PIN).expect(429)
    for (let attempt = 0; attempt < 5; attempt++) await takeOver(tabletToken, chain.mill.manager.id, '0000').expect(401)
    await takeOver(tabletToken, chain.mill.technician.id, TEST_PIN).expect(429)
  })

  test('taken out of use open nothing any more', async () => {
    const { id, tabletToken } = await testTablet(service, chain.mill)
    const { body } = await takeOver(tabletToken, chain.mill.technician.id, TEST_PIN).expect(200)
    await request(service.server).post(`/v1/tablets/${id}/revocation`).set('authorization', bearer(chain.owner.token)).expect(200)
    await me(tabletToken).expect(401)
    await me(body.accessToken).expect(401)
  })
})

describe('outside apps', () => {
  const token = (fields: Record<string, string>) => request(service.server).post('/v1/token').type('form').send({ grant_type: 'client_credentials', ...fields })

  test('get a token by client credentials, in the form or in the header', async () => {
    const { clientId, clientSecret } = await testApp(service, ['jobs:read', 'evaluate'])
    const { body } = await token({ client_id: clientId, client_secret: clientSecret }).expect(200).expect('cache-control', 'no-store')
    expect(body).toMatchObject({ token_type: 'Bearer', expires_in: 600, scope: 'jobs:read evaluate' })
    expect((await me(body.access_token).expect(200)).body).toMatchObject({ kind: 'app', scopes: ['jobs:read', 'evaluate'] })
    const narrow = await request(service.server).post('/v1/token').auth(clientId, clientSecret).type('form').send({ grant_type: 'client_credentials', scope: 'evaluate' }).expect(200)
    expect(narrow.body.scope).toBe('evaluate')
  })

  test('are refused in the words of RFC 6749 section 5.2', async () => {
    const { clientId, clientSecret } = await testApp(service, ['evaluate'])
    expect((await token({ client_id: clientId, client_secret: 'ebapp_wrong' }).expect(401)).body.error).toBe('invalid_client')
    expect((await token({ client_id: clientId, client_secret: clientSecret, scope: 'jobs:write' }).expect(400)).body.error).toBe('invalid_scope')
  })

  test('shut out, their tokens end', async () => {
    const app = await testApp(service, ['evaluate'])
    await me(app.token).expect(200)
    await request(service.server).post(`/v1/apps/${app.id}/revocation`).set('authorization', bearer(chain.owner.token)).expect(200)
    await me(app.token).expect(401)
    await token({ client_id: app.clientId, client_secret: app.clientSecret }).expect(401)
  })
})
