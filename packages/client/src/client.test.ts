import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterEach, expect, test } from 'vitest'
import { createClient, pages } from './index.ts'

type Handler = (request: IncomingMessage, body: string, response: ServerResponse) => void
let server: Server | undefined
afterEach(() => new Promise<void>((done) => (server ? server.close(() => done()) : done())))

/** A real server on a free port that answers by `handler`. */
async function serve(handler: Handler): Promise<string> {
  server = createServer((request, response) => {
    let body = ''
    request.on('data', (chunk: Buffer) => (body += chunk.toString()))
    request.on('end', () => handler(request, body, response))
  })
  server.keepAliveTimeout = 1
  await new Promise<void>((done) => server!.listen(0, '127.0.0.1', done))
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}`
}
const json = (response: ServerResponse, status: number, body: unknown, headers: Record<string, string> = {}) =>
  response.writeHead(status, { 'content-type': status < 400 ? 'application/json' : 'application/problem+json', ...headers }).end(JSON.stringify(body))
const fast = { attempts: 3, longestWaitMs: 20 }

test('a 503 is asked again and the answer after it is the answer', async () => {
  let asked = 0
  const baseUrl = await serve((_request, _body, response) => (++asked < 3 ? json(response, 503, {}, { 'retry-after': '0' }) : json(response, 200, { ok: true })))
  const { data } = await createClient({ baseUrl, patience: fast }).GET('/v1/me', {})
  expect(data).toEqual({ ok: true })
  expect(asked).toBe(3)
})

test('a server that asks for a longer wait than we have is not waited for', async () => {
  let asked = 0
  const baseUrl = await serve((_request, _body, response) => {
    asked += 1
    json(response, 429, { type: '/docs/problems/locked-out', title: 'Too many wrong attempts', status: 429 }, { 'retry-after': '600' })
  })
  const { error } = await createClient({ baseUrl, patience: fast }).GET('/v1/me', {})
  expect(error).toMatchObject({ status: 429, title: 'Too many wrong attempts' })
  expect(asked).toBe(1)
})

test('a broken connection repeats a PUT but never a plain POST', async () => {
  const asked: string[] = []
  const baseUrl = await serve((request, _body, response) => {
    asked.push(request.method!)
    if (asked.length === 1) return void request.socket.destroy()
    json(response, 200, {})
  })
  const client = createClient({ baseUrl, patience: fast })
  await client.PUT('/v1/sessions/{session}/readings/{reading}', { params: { path: { session: 'a', reading: 'b' } }, body: {} as never })
  expect(asked).toEqual(['PUT', 'PUT'])
  asked.length = 0
  await expect(client.POST('/v1/jobs/{job}/contacts', { params: { path: { job: 'a' } }, body: {} as never })).rejects.toThrow()
  expect(asked).toEqual(['POST'])
})

test('an approval whose answer was lost is sent again under the same key', async () => {
  const keys: (string | undefined)[] = []
  const baseUrl = await serve((request, _body, response) => {
    keys.push(request.headers['idempotency-key'] as string | undefined)
    if (keys.length === 1) return void request.socket.destroy()
    json(response, 201, {})
  })
  await createClient({ baseUrl, patience: fast }).POST('/v1/quote-versions/{version}/approval', { params: { path: { version: 'v' } }, body: {} as never })
  expect(keys).toHaveLength(2)
  expect(keys[0]).toMatch(/^[0-9a-f-]{36}$/)
  expect(keys[1]).toBe(keys[0])
})

test('an access token that ran out is renewed once for all calls that wait for it', async () => {
  const seen: string[] = []
  let refreshes = 0
  const baseUrl = await serve((request, body, response) => {
    if (request.url!.startsWith('/v1/sign-in/refresh')) {
      refreshes += 1
      expect(JSON.parse(body)).toEqual({ refreshToken: 'r1' })
      return json(response, 200, { accessToken: 'second', tokenType: 'Bearer', expiresInSeconds: 600, refreshToken: 'r2' })
    }
    if (request.url!.startsWith('/v1/sign-in')) return json(response, 200, { accessToken: 'first', tokenType: 'Bearer', expiresInSeconds: 600, refreshToken: 'r1' })
    seen.push(request.headers.authorization ?? '')
    if (request.headers.authorization === 'Bearer second') return json(response, 200, { kind: 'person' })
    json(response, 401, { type: '/docs/problems/not-signed-in', title: 'Sign in first', status: 401 })
  })
  const client = createClient({ baseUrl, patience: fast })
  expect(await client.session.signIn({ kind: 'person', email: 'a@example.org', password: 'x' })).toEqual({ ok: true })
  const answers = await Promise.all([client.GET('/v1/me', {}), client.GET('/v1/me', {}), client.GET('/v1/me', {})])
  expect(answers.map(({ data }) => data)).toEqual([{ kind: 'person' }, { kind: 'person' }, { kind: 'person' }])
  expect(refreshes).toBe(1)
  expect(seen.filter((header) => header === 'Bearer second')).toHaveLength(3)
})

test('a sign-out that met a renewal under way wins, and tells the server what the renewal brought', async () => {
  const left: (string | undefined)[] = []
  let answer: (() => void) | undefined
  const baseUrl = await serve((request, _body, response) => {
    if (request.url === '/v1/sign-out') {
      left.push(request.headers.authorization)
      return void response.writeHead(204).end()
    }
    const tokens = (accessToken: string) => json(response, 200, { accessToken, tokenType: 'Bearer', expiresInSeconds: 600 })
    if (request.url === '/v1/sign-in/refresh') answer = () => tokens('second')
    else tokens('first')
  })
  let leaving = false
  const { session } = createClient({ baseUrl, refresh: 'cookie', patience: fast, leaving: { get: () => leaving, set: (now) => (leaving = now) } })
  await session.signIn({ kind: 'person', email: 'a@example.org', password: 'x' })
  const renewed = session.renew()
  await expect.poll(() => answer, { timeout: 30_000 }).toBeDefined()
  await session.signOut()
  answer!()
  expect(await renewed).toBe(false)
  expect([session.present, leaving, left]).toEqual([false, false, ['Bearer first', 'Bearer second']])
})

test('a sign-out without network is not undone by the cookie when the network is back, and then reaches the server', async () => {
  let network = true
  const left: (string | undefined)[] = []
  const baseUrl = await serve((request, _body, response) => {
    if (!network) return void request.socket.destroy()
    if (request.url !== '/v1/sign-out') return json(response, 200, { accessToken: 'token', tokenType: 'Bearer', expiresInSeconds: 600 })
    left.push(request.headers.authorization)
    response.writeHead(204).end()
  })
  let leaving = false
  const options = { baseUrl, refresh: 'cookie', patience: fast, leaving: { get: () => leaving, set: (now: boolean) => (leaving = now) } } as const
  const { session } = createClient(options)
  await session.signIn({ kind: 'person', email: 'a@example.org', password: 'x' })
  network = false
  await session.signOut()
  expect([session.present, leaving, left]).toEqual([false, true, []])
  network = true
  // another page load: only the mark and the cookie are left
  const { session: next } = createClient(options)
  expect(await next.renew()).toBe(false)
  expect([next.present, leaving, left]).toEqual([false, false, ['Bearer token']])
  expect((await next.signIn({ kind: 'person', email: 'a@example.org', password: 'x' })).ok).toBe(true)
  expect(await next.renew()).toBe(true)
})

test('wrong credentials come back as their problem, not as an exception', async () => {
  const baseUrl = await serve((_request, _body, response) => json(response, 401, { type: '/docs/problems/wrong-credentials', title: 'These credentials are not right', status: 401 }))
  const answer = await createClient({ baseUrl, patience: fast }).session.signIn({ kind: 'person', email: 'a@example.org', password: 'no' })
  expect(answer).toMatchObject({ ok: false, error: { type: '/docs/problems/wrong-credentials' } })
})

test('pages are read until there is no next one', async () => {
  const asked: (string | undefined)[] = []
  const items = pages(async (after) => {
    asked.push(after)
    return after === undefined ? { items: [1, 2], next: 'c' } : { items: [3], next: null }
  })
  const read: number[] = []
  for await (const item of items) read.push(item)
  expect(read).toEqual([1, 2, 3])
  expect(asked).toEqual([undefined, 'c'])
})

test('live events go on after the last one seen when the connection breaks', async () => {
  const from: (string | undefined)[] = []
  const event = (id: string) => `id: ${id}\ndata: ${JSON.stringify({ id, kind: 'job.changed', at: '2026-05-06T10:00:00Z', garage: null, job: null, engine: null, body: {} })}\n\n`
  const baseUrl = await serve((request, _body, response) => {
    from.push(request.headers['last-event-id'] as string | undefined)
    response.writeHead(200, { 'content-type': 'text/event-stream' })
    if (from.length === 1) {
      response.write(event('1'))
      // half an event, then the line is cut
      response.write('id: 2\ndata: {"id"', () => request.socket.destroy())
    } else response.write(event('2'))
  })
  const stop = new AbortController()
  const seen: string[] = []
  for await (const { id } of createClient({ baseUrl, patience: fast }).events({ signal: stop.signal })) {
    seen.push(id)
    if (id === '2') stop.abort()
  }
  expect(seen).toEqual(['1', '2'])
  expect(from).toEqual([undefined, '1'])
})

test('a stream that is refused says so instead of asking for ever', async () => {
  const baseUrl = await serve((_request, _body, response) => json(response, 403, {}))
  const events = createClient({ baseUrl, patience: fast }).events({ signal: new AbortController().signal })
  await expect(events.next()).rejects.toMatchObject({ status: 403 })
})
