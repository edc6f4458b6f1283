import { engineEditSchema, engineHistoryEntrySchema, engineSchema, idSchema, newEngineSchema, page, pageQuerySchema } from '@evenbore/contract'
import { z } from 'zod'
import { actorKey } from '../../access/actors.ts'
import type { Routes } from '../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../platform/http/etag.ts'
import { onceWhereKeyed } from '../../platform/http/idempotency.ts'
import { familyRoutes } from './families/routes.ts'
import { fittingRoutes } from './fittings/routes.ts'
import { editEngine, listEngines, makeEngine, readEngine, readHistory, shownEngine } from './service.ts'

const params = z.strictObject({ engine: idSchema })
const listQuery = pageQuerySchema.extend({ q: z.string().trim().max(100).optional().meta({ description: 'words of the description, the stamped number, or the plate of the car' }) })
const tags = ['engines']

/** Engines: things of their own that outlive cars. Readable by the whole chain. */
export const engineRoutes: Routes = async (app) => {
  const { database } = app

  app.get('/v1/engines', {
    config: { action: 'engines.read' },
    schema: { tags, summary: 'Engines by description', querystring: listQuery, response: { 200: page(engineSchema) } },
  }, (request) => listEngines(database, request.actor, request.query))

  app.post('/v1/engines', {
    config: { action: 'engines.write', takesKey: true },
    schema: { tags, summary: 'Add an engine', body: newEngineSchema, response: { 201: engineSchema } },
  }, async (request, reply) => {
    const { actor } = request
    const made = await onceWhereKeyed(database, request, actorKey(actor), async (tx) => shownEngine(await makeEngine(tx, actor, request.body), actor))
    setVersion(reply, made.version)
    return reply.code(201).header('location', `/v1/engines/${made.id}`).send(made)
  })

  app.get('/v1/engines/:engine', {
    config: { action: 'engines.read' },
    schema: { tags, summary: 'One engine', params, response: { 200: engineSchema } },
  }, async (request, reply) => {
    const engine = await readEngine(database, request.actor, request.params.engine)
    setVersion(reply, engine.version)
    return engine
  })

  app.patch('/v1/engines/:engine', {
    config: { action: 'engines.write' },
    schema: { tags, summary: 'Edit an engine', params, body: engineEditSchema, response: { 200: engineSchema } },
  }, async (request, reply) => {
    const engine = await editEngine(database, request.actor, request.params.engine, expectedVersion(request), request.body)
    setVersion(reply, engine.version)
    return engine
  })

  app.get('/v1/engines/:engine/history', {
    config: { action: 'engines.read' },
    schema: { tags, summary: 'An engine over the years', params, response: { 200: page(engineHistoryEntrySchema) } },
  }, async (request) => ({ items: await readHistory(database, request.actor, request.params.engine), next: null }))

  await familyRoutes(app)
  await fittingRoutes(app)
}
