import { idSchema, newRetestDateSchema, newRetestSchema, page, pageQuerySchema, retestComparisonSchema, retestOutcomeSchema, retestSchema, waiverSchema } from '@evenbore/contract'
import { z } from 'zod'
import { actorKey } from '../../access/actors.ts'
import type { Routes } from '../../platform/http/app.ts'
import { onceWhereKeyed } from '../../platform/http/idempotency.ts'
import { readComparison } from './comparison.ts'
import { decideOutcome, waiveRetest } from './outcome.ts'
import { moveRetest, promiseRetest } from './owed.ts'
import { listJobRetests, listRetests } from './service.ts'

const ofJob = z.strictObject({ job: idSchema })
const ofRetest = z.strictObject({ retest: idSchema })
const tags = ['retests']

/** Promises to measure again, and what came of them. */
export const retestRoutes: Routes = async (app) => {
  app.get(
    '/v1/garages/:garage/retests',
    {
      config: { action: 'retests.read' },
      schema: {
        tags, summary: 'Retests of a garage, the earliest due first', params: z.strictObject({ garage: idSchema }), response: { 200: page(retestSchema) },
        querystring: pageQuerySchema.extend({ due: z.enum(['true', 'false']).optional().meta({ description: 'true: only what is still owed' }) }),
      },
    },
    (request) => listRetests(app.database, request.actor, request.params.garage, request.query),
  )

  app.get('/v1/jobs/:job/retests', { config: { action: 'retests.read' }, schema: { tags, summary: 'Retests that a job owes, promised, or was booked in for', params: ofJob, response: { 200: page(retestSchema) } } }, async (request) => ({
    items: await listJobRetests(app.database, request.actor, request.params.job), next: null,
  }))

  app.post(
    '/v1/jobs/:job/retests',
    { config: { action: 'retests.write', takesKey: true }, schema: { tags, summary: 'Promise a follow-up retest', params: ofJob, body: newRetestSchema, response: { 201: retestSchema } } },
    async (request, reply) => reply.code(201).send(await onceWhereKeyed(app.database, request, actorKey(request.actor), (tx) => promiseRetest(tx, request.actor, request.params.job, request.body))),
  )

  app.post(
    '/v1/retests/:retest/dates',
    { config: { action: 'retests.write', takesKey: true }, schema: { tags, summary: 'Book a retest, or give it another date', params: ofRetest, body: newRetestDateSchema, response: { 201: retestSchema } } },
    async (request, reply) => reply.code(201).send(await onceWhereKeyed(app.database, request, actorKey(request.actor), (tx) => moveRetest(tx, request.actor, request.params.retest, request.body))),
  )

  app.get(
    '/v1/retests/:retest/comparison',
    {
      config: { action: 'retests.read' },
      schema: { tags, summary: 'Before and after', params: ofRetest, querystring: z.strictObject({ session: idSchema.optional().meta({ description: 'the session to compare; otherwise the likeliest' }) }), response: { 200: retestComparisonSchema } },
    },
    (request) => readComparison(app.database, request.actor, request.params.retest, request.query.session),
  )

  app.post(
    '/v1/retests/:retest/outcome',
    {
      config: { action: 'retests.decide' },
      schema: { tags, summary: 'Say how a retest went', description: 'A failed release retest ends approval, permission and repair: the job is testing again.', params: ofRetest, body: retestOutcomeSchema, response: { 200: retestSchema } },
    },
    (request) => decideOutcome(app.database, request.actor, request.params.retest, request.body),
  )

  app.post(
    '/v1/retests/:retest/waiver',
    { config: { action: 'retests.waive' }, schema: { tags, summary: 'Waive a retest, with a reason', params: ofRetest, body: waiverSchema, response: { 200: retestSchema } } },
    (request) => waiveRetest(app.database, request.actor, request.params.retest, request.body),
  )
}
