import { whyNot, type Action, type Actor, type Subject } from '@evenbore/contract'
import type { FastifyRequest } from 'fastify'
import plugin from 'fastify-plugin'
import { problem } from '../platform/problems/problem.ts'
import type { Verified, VerifiedTokens } from './verified.ts'

/** What a route asks for: a permission of the one table, or `open` for what is done before one is signed in. */
export type RouteAction = Action | 'open'

declare module 'fastify' {
  interface FastifyContextConfig {
    action?: RouteAction
  }
  interface FastifyRequest {
    /** Who asks. Not set on `open` routes. */
    actor: Actor
    signedIn: Verified
  }
  interface FastifyInstance {
    access: VerifiedTokens
  }
}

/**
 * The door of every route: nobody comes in without a token, and nobody whose role could not do the route's action on anything at all.
 * What depends on the record (its garage, its author) is asked by the service with `demand`.
 * A route under /v1 that names no action fails when it is registered: nothing named means refused.
 */
export const door = plugin<{ tokens: VerifiedTokens }>(
  async (app, { tokens }) => {
    app.decorate('access', tokens)
    app.decorateRequest('actor', null as never)
    app.decorateRequest('signedIn', null as never)
    app.addHook('onRoute', (route) => {
      if (!route.url.startsWith('/v1')) {
        if (!isPublicPage(route.url)) throw new Error(`The route ${route.url} stands neither under /v1 nor among the pages.`)
        return
      }
      const action = route.config?.action
      if (action === undefined) throw new Error(`The route ${String(route.method)} ${route.url} names no action: nobody may use it.`)
      if (action === 'open') return
      // Behind the rate limit, which stands first among the route's hooks: guessing tokens is limited too.
      route.onRequest = [...[route.onRequest ?? []].flat(), (request, _reply, done) => enter(tokens, action, request, done)]
    })
  },
  { name: 'door', dependencies: ['problems', 'rate-limits'] },
)

function enter(tokens: VerifiedTokens, action: Action, request: FastifyRequest, done: (error?: Error) => void): void {
  const token = /^Bearer ([\w.~+/=-]{1,4096})$/i.exec(request.headers.authorization ?? '')?.[1]
  if (token === undefined) return done(problem('not-signed-in', 'Send an access token in the header Authorization: Bearer ...'))
  const known = tokens.recall(token)
  if (known !== undefined) return done(admit(request, known, action))
  tokens.verify(token).then(
    (verified) => done(verified === undefined ? problem('not-signed-in', 'This access token has run out or was ended.') : admit(request, verified, action)),
    done,
  )
}

function admit(request: FastifyRequest, verified: Verified, action: Action): Error | undefined {
  request.signedIn = verified
  request.actor = verified.actor
  // Everybody is himself, also a manager whose roles sleep until his second factor is set up.
  if (action === 'me') return undefined
  const refusal = whyNot(verified.actor, action)
  // Without a record there is no author and no total: what is asked here is whether the role does such things at all.
  return refusal === null || refusal === 'own-quote' || refusal === 'above-limit' ? undefined : problem('not-allowed', `This takes the permission ${action}.`)
}

/**
 * Asks the permission table about one record; every service function does so first.
 * @throws problem `not-allowed`, `own-quote`, `above-limit`, or `not-found` for what belongs to a garage that is not the actor's
 */
export function demand(actor: Actor, action: Action, subject: Subject): void {
  const refusal = whyNot(actor, action, subject)
  if (refusal === 'not-found') throw problem('not-found')
  if (refusal === 'not-allowed') throw problem('not-allowed', `This takes the permission ${action}.`)
  if (refusal !== null) throw problem(refusal)
}

/** The documentation and the web itself, which hold nothing of anybody. */
function isPublicPage(url: string): boolean {
  return url === '*' || url === '/' || url === '/*' || url === '/docs' || url.startsWith('/docs/')
}

