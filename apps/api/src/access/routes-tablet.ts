import { enrolledSchema, enrolSchema, personRefSchema, takeOverSchema, tokensSchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Config } from '../config.ts'
import type { App } from '../platform/http/app.ts'
import { answerSession } from './cookie.ts'
import { refreshQuerySchema } from './routes-sign-in.ts'
import { enrol, peopleOfTablet, takeOver } from './tablets.ts'

const tags = ['tablets']

/** What a tablet itself asks: to be one, who may sign in on it, and to sign somebody in. */
export async function tabletRoutes(app: App, config: Config): Promise<void> {
  const { database, keys } = app
  const rateLimit = { max: config.signInsPerMinute, timeWindow: 60_000, keyGenerator: (request: { ip: string }) => request.ip }

  app.post('/v1/tablets/enrol', {
    config: { action: 'open', rateLimit },
    schema: { tags, summary: 'Become a tablet, by a one-time code', body: enrolSchema, response: { 201: enrolledSchema } },
  }, async (request, reply) => reply.code(201).send(await enrol(database, request.body.enrolmentCode)))

  app.get('/v1/tablets/people', {
    config: { action: 'me' },
    schema: { tags, summary: 'Who can sign in on this tablet', description: 'Sent with the tabletToken.', response: { 200: z.strictObject({ items: z.array(personRefSchema) }) } },
  }, async (request) => ({ items: await peopleOfTablet(database, request.actor) }))

  app.post('/v1/tablets/take-over', {
    config: { action: 'me', rateLimit },
    schema: { tags, summary: 'Sign a person in on this tablet by PIN', description: 'Sent with the tabletToken.', querystring: refreshQuerySchema, body: takeOverSchema, response: { 200: tokensSchema } },
  }, async (request, reply) => answerSession(request, reply, await takeOver(database, keys, request.actor, request.body), request.query.refresh === 'body'))
}
