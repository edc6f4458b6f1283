import { connect } from 'node:net'
import { PROBLEMS, problemSchema } from '@evenbore/contract'
import { testService, type TestService } from '@evenbore/tests/support'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { PROBLEM_TEXTS } from '../docs/problem-texts.ts'

let service: TestService
beforeAll(async () => { service = await testService() })
afterAll(() => service.close())

const post = (path: string) => request(service.server).post(path)

describe('what a client gets wrong is answered with a problem that says so', () => {
  test('broken JSON is a bad body with the path ""', async () => {
    const { body, headers } = await post('/v1/sign-in').type('json').send('{"email": ').expect(400)
    expect(headers['content-type']).toContain('application/problem+json')
    expect(problemSchema.parse(body)).toMatchObject({ type: '/docs/problems/invalid-request', errors: [{ path: '', expected: 'JSON in UTF-8' }] })
  })

  test('every bad field is listed with its path and what was expected', async () => {
    const { body } = await post('/v1/sign-in').send({ email: 3, oneTimeCode: '12', other: true }).expect(400)
    expect(body.errors.map(({ path }: { path: string }) => path).sort()).toEqual(['/email', '/oneTimeCode', '/other', '/password'])
    expect(body.errors.every(({ expected }: { expected: string }) => expected.length > 0)).toBe(true)
  })

  test('a password or a PIN is not repeated in the answer', async () => {
    const { text } = await post('/v1/sign-in').send({ email: 'a@example.test', password: 12345678 }).expect(400)
    expect(text).not.toContain('12345678')
  })

  test('fields of the address are named as such', async () => {
    const { body } = await post('/v1/sign-in?refresh=yes&more=1').send({ email: 'a@example.test', password: 'x' }).expect(400)
    expect(body.errors.map(({ path }: { path: string }) => path).sort()).toEqual(['/query/more', '/query/refresh'])
  })

  test('an absent body is like an empty one', async () => {
    const { body } = await post('/v1/sign-in').expect(400)
    expect(body.errors.map(({ path }: { path: string }) => path)).toEqual(['/email', '/password'])
  })

  test.each([
    ['a number', '7'], ['null', 'null'], ['a list', '[]'], ['a text', '"x"'], ['deep nesting', `${'['.repeat(100_000)}${']'.repeat(100_000)}`], ['a poisoned prototype', '{"__proto__": {"x": 1}}'],
  ])('a body that is %s is 400', async (_, text) => {
    await post('/v1/sign-in').type('json').send(text).expect(400)
  })

  test('two megabytes are 413', async () => {
    const { body } = await post('/v1/sign-in').send({ email: 'x'.repeat(2_000_000), password: 'x' }).expect(413)
    expect(body.type).toBe('/docs/problems/too-large')
  })

  test('a text or a form is 415 where JSON is read', async () => {
    expect((await post('/v1/sign-in').type('text').send('hello').expect(415)).body.type).toBe('/docs/problems/unsupported-media')
    await post('/v1/sign-in').type('form').send({ email: 'x' }).expect(415)
  })

  test('a character that PostgreSQL cannot keep is 400', async () => {
    const email = await post('/v1/token').send({ grant_type: 'client_credentials', client_id: 'a\u0000b', client_secret: 'x' })
    expect(email.status).toBe(400)
  })

  test('an unknown path is 404, a known one with another method 405 and says which it takes', async () => {
    expect((await request(service.server).get('/v1/nothing').expect(404)).body.type).toBe('/docs/problems/not-found')
    const { headers, body } = await request(service.server).delete('/v1/sign-in').expect(405)
    expect(headers['allow']).toBe('POST')
    expect(body.type).toBe('/docs/problems/method-not-allowed')
  })

  test.each(['/v1/%', '/v1/%zz', '/v1/me/%ff', `/v1/${'x'.repeat(3000)}`])('the address %s is 4xx', async (path) => {
    const { status } = await request(service.server).get(path)
    expect(status).toBeGreaterThanOrEqual(400)
    expect(status).toBeLessThan(500)
  })

  test('what is no HTTP at all is answered 400 too', async () => {
    const { port } = new URL(await service.listen())
    const text = await new Promise<string>((done) => {
      let answer = ''
      const socket = connect(Number(port), '127.0.0.1', () => socket.write('HELLO\r\n\r\n'))
      socket.on('data', (chunk) => { answer += chunk.toString() }).on('close', () => done(answer))
    })
    expect(text).toMatch(/^HTTP\/1\.1 400 /)
    expect(text).toContain('application/problem+json')
  })

  test('the trace of traceparent is the one that the problem names', async () => {
    const trace = '0af7651916cd43dd8448eb211c80319c'
    const { body } = await request(service.server).get('/v1/me').set('traceparent', `00-${trace}-b7ad6b7169203331-01`).expect(401)
    expect(body.instance).toBe(`urn:trace:${trace}`)
  })
})

describe('the list of problem types', () => {
  test('has a text and a page for each, and no text for another', async () => {
    expect(Object.keys(PROBLEM_TEXTS).sort()).toEqual(Object.keys(PROBLEMS).sort())
    for (const [code, { title }] of Object.entries(PROBLEMS)) {
      const { text } = await request(service.server).get(`/docs/problems/${code}`).expect(200)
      expect(text).toContain(title)
    }
    await request(service.server).get('/docs/problems/other').expect(404)
  })
})
