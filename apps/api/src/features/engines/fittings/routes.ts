import { engineEventSchema, fittingSchema, idSchema, newEngineEventSchema, newFittingSchema, removalSchema, sameEngineSchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../../platform/http/app.ts'
import { fitInto, recordEvent, recordSame, removeEngine } from './service.ts'

const engineParams = z.strictObject({ engine: idSchema })
const tags = ['engines']

/** Which car an engine sits in, and what happened to it. */
export const fittingRoutes: Routes = async (app) => {
  const { database } = app

  app.post('/v1/engines/:engine/fittings', {
    config: { action: 'engines.write' },
    schema: { tags, summary: 'Fit an engine into a vehicle', params: engineParams, body: newFittingSchema, response: { 201: fittingSchema } },
  }, async (request, reply) => reply.code(201).send(await fitInto(database, request.actor, request.params.engine, request.body)))

  app.post('/v1/fittings/:fitting/removal', {
    config: { action: 'engines.write' },
    schema: { tags, summary: 'Record that an engine was taken out', params: z.strictObject({ fitting: idSchema }), body: removalSchema, response: { 200: fittingSchema } },
  }, (request) => removeEngine(database, request.actor, request.params.fitting, request.body))

  app.post('/v1/engines/:engine/events', {
    config: { action: 'engines.write' },
    schema: { tags, summary: 'Record what happened to an engine', params: engineParams, body: newEngineEventSchema, response: { 201: engineEventSchema } },
  }, async (request, reply) => reply.code(201).send(await recordEvent(database, request.actor, request.params.engine, request.body)))

  app.post('/v1/engines/:engine/same', {
    config: { action: 'engines.write' },
    schema: { tags, summary: 'Say that two records are one engine', params: engineParams, body: sameEngineSchema, response: { 201: sameEngineSchema.extend({ engine: idSchema }) } },
  }, async (request, reply) => reply.code(201).send(await recordSame(database, request.actor, request.params.engine, request.body)))
}
