import {
  approvalSchema, approveSchema, authorisationSchema, decisionSchema, idSchema, newAuthorisationSchema, nothingSchema, page, quoteDraftPutSchema, quoteDraftSchema, quoteSchema, quoteVersionSchema, refuseSchema,
  sendBackSchema, suggestedLineSchema, waiverSchema, type Approval, type Authorisation, type QuoteVersion,
} from '@evenbore/contract'
import type { FastifyRequest } from 'fastify'
import { z } from 'zod'
import { actorKey } from '../../access/actors.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import type { Routes } from '../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../platform/http/etag.ts'
import { once, onceWhereKeyed } from '../../platform/http/idempotency.ts'
import { answerVersion, withdrawApproval } from './answer.ts'
import { authorise } from './authorise.ts'
import { dropDraft, putDraft } from './draft.ts'
import { evidenceFor, sendVersion } from './send-version.ts'
import { listDecisions, readQuote } from './service.ts'
import { suggestedLines } from './suggested-lines.ts'

const ofJob = z.strictObject({ job: idSchema })
const ofVersion = z.strictObject({ version: idSchema })
const tags = ['quotes']
const KEYED = 'Needs an Idempotency-Key; the same key and body again are answered as the first time.'

/** Quotes: the draft, versions, the manager's answers and the customer's. */
export const quoteRoutes: Routes = async (app) => {
  app.get('/v1/jobs/:job/quote', { config: { action: 'quotes.read' }, schema: { tags, summary: 'Draft, versions and answers', params: ofJob, response: { 200: quoteSchema } } }, async (request, reply) => {
    const quote = await readQuote(app.database, request.actor, request.params.job)
    if (quote.draft !== null) setVersion(reply, quote.draft.version)
    return quote
  })

  app.put(
    '/v1/jobs/:job/quote/draft',
    {
      config: { action: 'quotes.draft', takesVersion: true },
      schema: { tags, summary: 'Keep the draft', description: 'If-Match with the draft’s ETag, or `If-None-Match: *` to start one.', params: ofJob, body: quoteDraftPutSchema, response: { 200: quoteDraftSchema, 201: quoteDraftSchema } },
    },
    async (request, reply) => {
      const starts = request.headers['if-none-match']?.trim() === '*'
      const draft = await putDraft(app.database, request.actor, request.params.job, starts ? 'none' : expectedVersion(request), request.body)
      setVersion(reply, draft.version)
      return reply.code(starts ? 201 : 200).send(draft)
    },
  )

  app.delete('/v1/jobs/:job/quote/draft', { config: { action: 'quotes.draft', takesVersion: true }, schema: { tags, summary: 'Drop the draft', description: 'Needs If-Match.', params: ofJob, response: { 204: z.null() } } }, async (request, reply) => {
    await dropDraft(app.database, request.actor, request.params.job, expectedVersion(request))
    return reply.code(204).send(null)
  })

  app.get(
    '/v1/jobs/:job/quote/suggested-lines',
    { config: { action: 'quotes.read' }, schema: { tags, summary: 'Lines that the evidence carries, priced from the catalogue', params: ofJob, response: { 200: page(suggestedLineSchema) } } },
    async (request) => ({ items: await suggestedLines(app.database, request.actor, request.params.job), next: null }),
  )

  app.post(
    '/v1/jobs/:job/quote/versions',
    {
      config: { action: 'quotes.send', takesKey: true, takesVersion: true },
      schema: { tags, summary: 'Send the draft to the manager', description: 'The draft becomes a version that is never edited. With If-Match it must still be the draft you saw; an Idempotency-Key is taken.', params: ofJob, body: nothingSchema, response: { 201: quoteVersionSchema } },
    },
    async (request, reply) => {
      const { job } = request.params
      const basis = request.headers['if-match'] === undefined ? undefined : expectedVersion(request)
      const evidence = await evidenceFor(app.database, request.actor, job)
      const version = await onceWhereKeyed<QuoteVersion>(app.database, request, actorKey(request.actor), (tx) => sendVersion(tx, request.actor, job, evidence, basis))
      return reply.code(201).header('location', `/v1/jobs/${job}/quote`).send(version)
    },
  )

  const answers = { config: { action: 'quotes.answer', takesKey: true }, schema: { tags, params: ofVersion, description: KEYED, response: { 201: approvalSchema } } } as const
  app.post('/v1/quote-versions/:version/approval', { ...answers, schema: { ...answers.schema, summary: 'Approve', body: approveSchema } }, async (request, reply) =>
    reply.code(201).send(await keyed<Approval>(app.database, request, (tx) => answerVersion(tx, request.actor, request.params.version, { kind: 'approved', reason: request.body.reason ?? null }))))
  app.post('/v1/quote-versions/:version/send-back', { ...answers, schema: { ...answers.schema, summary: 'Send back with a question or a test to do', body: sendBackSchema } }, async (request, reply) =>
    reply.code(201).send(await keyed<Approval>(app.database, request, (tx) => answerVersion(tx, request.actor, request.params.version, { kind: 'sent-back', reason: request.body.question }))))
  app.post('/v1/quote-versions/:version/refusal', { ...answers, schema: { ...answers.schema, summary: 'Refuse', body: refuseSchema } }, async (request, reply) =>
    reply.code(201).send(await keyed<Approval>(app.database, request, (tx) => answerVersion(tx, request.actor, request.params.version, { kind: 'refused', reason: request.body.reason }))))
  app.post(
    '/v1/quote-versions/:version/withdrawal',
    { config: { action: 'approvals.withdraw', takesKey: true }, schema: { tags, summary: 'Withdraw the approval, until the repair starts', description: KEYED, params: ofVersion, body: waiverSchema, response: { 201: approvalSchema } } },
    async (request, reply) => reply.code(201).send(await keyed<Approval>(app.database, request, (tx) => withdrawApproval(tx, request.actor, request.params.version, request.body.reason))),
  )
  app.post(
    '/v1/quote-versions/:version/authorisations',
    { config: { action: 'authorisations.write', takesKey: true }, schema: { tags, summary: 'Record the customer’s permission, or that he declined', description: KEYED, params: ofVersion, body: newAuthorisationSchema, response: { 201: authorisationSchema } } },
    async (request, reply) => reply.code(201).send(await keyed<Authorisation>(app.database, request, (tx) => authorise(tx, request.actor, request.params.version, request.body))),
  )

  app.get(
    '/v1/garages/:garage/decisions',
    { config: { action: 'quotes.read' }, schema: { tags, summary: 'Quotes that wait for a manager', params: z.strictObject({ garage: idSchema }), response: { 200: page(decisionSchema) } } },
    async (request) => ({ items: await listDecisions(app.database, request.actor, request.params.garage), next: null }),
  )
}

/** An action that needs its Idempotency-Key. */
async function keyed<T>(database: Database, request: FastifyRequest, action: (tx: Transaction) => Promise<T>): Promise<T> {
  return (await once(database, request, actorKey(request.actor), async (tx) => ({ status: 201, body: await action(tx) }))).body as T
}
