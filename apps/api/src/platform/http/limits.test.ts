import { testService, type TestService } from '@evenbore/tests/support'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

let service: TestService
beforeAll(async () => { service = await testService({ REQUESTS_PER_MINUTE: '5', SIGN_INS_PER_MINUTE: '3' }) })
afterAll(() => service.close())

describe('too many requests', () => {
  test('of one token are 429 and say when to come back; another token is served', async () => {
    const ask = (token: string) => request(service.server).get('/v1/me').set('authorization', `Bearer ${token}`)
    for (let count = 0; count < 5; count++) await ask('one').expect(401)
    const { body, headers } = await ask('one').expect(429)
    expect(body.type).toBe('/docs/problems/too-many-requests')
    expect(Number(headers['retry-after'])).toBeGreaterThan(0)
    await ask('another').expect(401)
  })

  test('attempts to sign in are fewer', async () => {
    const attempt = () => request(service.server).post('/v1/sign-in').send({ email: 'a@example.test', password: 'x' })
    for (let count = 0; count < 3; count++) await attempt().expect(401)
    await attempt().expect(429)
  })
})

describe('security headers', () => {
  test('stand on every answer, of the API and of the documentation', async () => {
    for (const path of ['/v1/keys', '/docs', '/v1/nothing']) {
      const { headers } = await request(service.server).get(path).set('authorization', 'Bearer other')
      expect(headers['content-security-policy'], path).toContain("default-src 'none'")
      expect(headers['content-security-policy'], path).not.toMatch(/script-src[^;]*unsafe/)
      expect(headers['x-content-type-options'], path).toBe('nosniff')
      expect(headers['referrer-policy'], path).toBe('no-referrer')
    }
  })
})
