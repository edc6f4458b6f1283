import { contactSchema, idSchema, newContactSchema, newPartsOrderSchema, page, partsOrderSchema } from '@evenbore/contract'
import { z } from 'zod'
import { actorKey } from '../../access/actors.ts'
import type { Routes } from '../../platform/http/app.ts'
import { onceWhereKeyed } from '../../platform/http/idempotency.ts'
import { listParts, noteContact, orderPart, partArrived } from './beside.ts'

const params = z.strictObject({ job: idSchema })
const tags = ['jobs']

/** What is noted beside a job: talks with the customer, parts ordered and arrived. */
export const besideRoutes: Routes = async (app) => {
  const { database } = app

  app.post('/v1/jobs/:job/contacts', {
    config: { action: 'jobs.note', takesKey: true },
    schema: { tags, summary: 'Note a talk with the customer', params, body: newContactSchema, response: { 201: contactSchema } },
  }, async (request, reply) => {
    const { actor, params: { job }, body } = request
    return reply.code(201).send(await onceWhereKeyed(database, request, actorKey(actor), (tx) => noteContact(tx, actor, job, body)))
  })

  app.get('/v1/jobs/:job/parts', {
    config: { action: 'jobs.read' },
    schema: { tags, summary: 'Parts ordered for a job', params, response: { 200: page(partsOrderSchema) } },
  }, async (request) => ({ items: await listParts(database, request.actor, request.params.job), next: null }))

  app.post('/v1/jobs/:job/parts', {
    config: { action: 'parts.write', takesKey: true },
    schema: { tags, summary: 'Record that parts were ordered', params, body: newPartsOrderSchema, response: { 201: partsOrderSchema } },
  }, async (request, reply) => {
    const { actor, params: { job }, body } = request
    return reply.code(201).send(await onceWhereKeyed(database, request, actorKey(actor), (tx) => orderPart(tx, actor, job, body)))
  })

  app.post('/v1/parts/:part/arrival', {
    config: { action: 'parts.write' },
    schema: { tags, summary: 'Record that parts have come', params: z.strictObject({ part: idSchema }), response: { 200: partsOrderSchema } },
  }, (request) => partArrived(database, request.actor, request.params.part))
}
