import { tokenAnswerSchema, tokenRequestSchema } from '@evenbore/contract'
import type { FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Config } from '../config.ts'
import type { App } from '../platform/http/app.ts'
import { problem, problemDocument } from '../platform/problems/problem.ts'
import { tokenForApp, type TokenRefusal } from './outside-apps.ts'

const keySetSchema = z.strictObject({ keys: z.array(z.record(z.string(), z.unknown())) }).meta({ id: 'KeySet' })

/** Tokens for outside apps, and the keys to check any access token with. */
export async function tokenRoutes(app: App, { config }: { readonly config: Config }): Promise<void> {
  const { database, keys } = app
  // RFC 6749 asks for a form; only here is one read.
  app.addContentTypeParser('application/x-www-form-urlencoded', { parseAs: 'string', bodyLimit: 10_000 }, (_request, body, done) => {
    const fields = new URLSearchParams(String(body))
    const repeated = [...fields.keys()].find((name, at, all) => all.indexOf(name) !== at)
    if (repeated !== undefined) return done(problem('invalid-request', `The field ${repeated} stands more than once.`))
    done(null, Object.fromEntries(fields))
  })

  app.post('/v1/token', {
    config: { action: 'open', rateLimit: { max: config.signInsPerMinute, timeWindow: 60_000, keyGenerator: (request: { ip: string }) => request.ip } },
    schema: {
      tags: ['outside apps'],
      summary: 'An access token for an outside app (OAuth 2.0 client credentials, RFC 6749)',
      description: 'Client id and secret in the header (Basic) or in the form. Refusals also carry `error` as RFC 6749 section 5.2 names it.',
      consumes: ['application/x-www-form-urlencoded', 'application/json'],
      body: tokenRequestSchema,
      response: { 200: tokenAnswerSchema },
    },
  }, async (request, reply) => {
    const { client_id, client_secret, scope } = request.body
    const basic = basicCredentials(request)
    const [id, secret] = basic ?? [client_id, client_secret]
    const answer = id === undefined || secret === undefined ? 'invalid_client' : await tokenForApp(database, keys, id, secret, scope)
    if (typeof answer === 'string') return refuse(request, reply, answer)
    return reply.header('cache-control', 'no-store').send(answer)
  })

  app.get('/v1/keys', {
    config: { action: 'open' },
    schema: { tags: ['sign-in'], summary: 'Public keys of access tokens (JWK set, RFC 7517)', response: { 200: keySetSchema } },
  }, async (_request, reply) => reply.header('cache-control', 'public, max-age=300').send((await keys.published()) as z.infer<typeof keySetSchema>))
}

/** RFC 6749 section 2.3.1: both parts are form-encoded before they are joined. */
function basicCredentials(request: FastifyRequest): readonly [string, string] | undefined {
  const encoded = /^Basic ([\w+/=-]+)$/i.exec(request.headers.authorization ?? '')?.[1]
  if (encoded === undefined) return undefined
  const [id, ...rest] = Buffer.from(encoded, 'base64').toString('utf8').split(':')
  const plain = (text: string) => new URLSearchParams(`x=${text}`).get('x') ?? ''
  return [plain(id ?? ''), plain(rest.join(':'))]
}

function refuse(request: FastifyRequest, reply: FastifyReply, error: TokenRefusal): FastifyReply {
  const document = error === 'invalid_client' ? problemDocument('wrong-credentials', {}, request.id) : problemDocument('invalid-request', { detail: 'The app does not have every scope that was asked for.' }, request.id)
  if (error === 'invalid_client') reply.header('www-authenticate', 'Basic realm="evenbore"')
  return reply.code(document.status).type('application/problem+json').header('cache-control', 'no-store').send(JSON.stringify({ ...document, error }))
}
