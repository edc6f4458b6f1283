import { type Actor, meSchema, myPreferencesSchema, ownerSetupSchema, passwordSchema, refreshSchema, signInSchema, tokensSchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Config } from '../config.ts'
import type { App } from '../platform/http/app.ts'
import { answerSession, clearSession, refreshTokenOf } from './cookie.ts'
import { readMe, setPreferences } from './me.ts'
import { setUpOwner, wayBackIn } from './owner.ts'
import { signIn } from './people.ts'
import { wrongCredentials } from './problems.ts'
import { keepSecondFactor, offerSecondFactor } from './second-factor.ts'
import { beginSession, endSession, renewSession } from './sessions.ts'
import { problem } from '../platform/problems/problem.ts'

export const refreshQuerySchema = z.strictObject({ refresh: z.enum(['body', 'cookie']).default('cookie').meta({ description: 'where the refresh token is answered' }) })
const tags = ['sign-in']
const offeredSchema = z.strictObject({ secret: z.string(), uri: z.string() }).meta({ id: 'SecondFactor' })
const keptSchema = z.strictObject({ secret: z.string().regex(/^[A-Z2-7]{32}$/), oneTimeCode: z.string().regex(/^\d{6}$/) }).meta({ id: 'SecondFactorKept' })
const wayBackInSchema = z.strictObject({ link: z.string().min(1).max(200), password: passwordSchema }).meta({ id: 'WayBackIn' })

/** Sign-in of people, and what they do about their own. */
export async function signInRoutes(app: App, config: Config): Promise<void> {
  const { database, keys } = app
  const limited = { action: 'open', rateLimit: { max: config.signInsPerMinute, timeWindow: 60_000, keyGenerator: (request: { ip: string }) => request.ip } } as const

  app.post('/v1/sign-in', {
    config: limited,
    schema: { tags, summary: 'Sign in with e-mail and password', querystring: refreshQuerySchema, body: signInSchema, response: { 200: tokensSchema } },
  }, async (request, reply) => answerSession(request, reply, await signIn(database, keys, request.body, config.production), request.query.refresh === 'body'))

  app.post('/v1/sign-in/refresh', {
    config: limited,
    schema: { tags, summary: 'Renew the access token', description: 'By the cookie, or by refreshToken in the body. A refresh token works once.', querystring: refreshQuerySchema, body: refreshSchema.optional(), response: { 200: tokensSchema } },
  }, async (request, reply) => {
    const token = request.body?.refreshToken ?? refreshTokenOf(request)
    if (token === undefined) throw wrongCredentials()
    const inBody = request.query.refresh === 'body' || request.body?.refreshToken !== undefined
    return answerSession(request, reply, await renewSession(database, keys, token), inBody)
  })

  app.post('/v1/sign-out', {
    config: { action: 'me' },
    schema: { tags, summary: 'End this sign-in and every token of it', response: { 204: z.undefined() } },
  }, async (request, reply) => {
    const { claims } = request.signedIn
    if (claims !== undefined && claims.kind !== 'app') {
      await endSession(database, claims.family)
      app.access.forget(claims.sub)
    }
    clearSession(request, reply)
    return reply.code(204).send()
  })

  app.get('/v1/me', {
    config: { action: 'me' },
    schema: { tags, summary: 'Who I am and what I may do', response: { 200: meSchema } },
  }, (request) => readMe(database, request.actor))

  app.patch('/v1/me', {
    config: { action: 'me' },
    schema: { tags, summary: 'My language and pressure unit', body: myPreferencesSchema, response: { 200: meSchema } },
  }, (request) => setPreferences(database, request.actor, request.body))

  app.post('/v1/me/second-factor', {
    config: { action: 'me' },
    schema: { tags, summary: 'A new second factor, kept once a code of it is sent', response: { 200: offeredSchema } },
  }, (request) => offerSecondFactor(database, demandPerson(request.actor)))

  app.put('/v1/me/second-factor', {
    config: { action: 'me' },
    schema: { tags, summary: 'Keep the second factor', body: keptSchema, response: { 204: z.undefined() } },
  }, async (request, reply) => {
    const person = demandPerson(request.actor)
    await keepSecondFactor(database, person, request.body.secret, request.body.oneTimeCode)
    app.access.forget(person)
    return reply.code(204).send()
  })

  app.post('/v1/owner-setup', {
    config: limited,
    schema: { tags, summary: 'Make the first owner, by the one-time link of the server’s console', querystring: refreshQuerySchema, body: ownerSetupSchema, response: { 201: tokensSchema } },
  }, async (request, reply) => {
    const person = await setUpOwner(database, request.body)
    return reply.code(201).send(answerSession(request, reply, await beginSession(database, keys, person, null), request.query.refresh === 'body'))
  })

  app.post('/v1/owner-setup/way-back-in', {
    config: limited,
    schema: { tags, summary: 'A new password, by the one-time link of the server’s console', querystring: refreshQuerySchema, body: wayBackInSchema, response: { 200: tokensSchema } },
  }, async (request, reply) => {
    const person = await wayBackIn(database, request.body.link, request.body.password)
    app.access.forget(person)
    return answerSession(request, reply, await beginSession(database, keys, person, null), request.query.refresh === 'body')
  })
}

function demandPerson(actor: Actor): string {
  if (actor.kind !== 'person') throw problem('not-allowed', 'This is for people who signed in with e-mail and password.')
  return actor.person
}

