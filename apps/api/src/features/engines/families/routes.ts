import { engineFamilyEditSchema, engineFamilySchema, idSchema, newEngineFamilySchema, page, pageQuerySchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../../platform/http/etag.ts'
import { editFamily, listFamilies, makeFamily, readFamily } from './service.ts'

const params = z.strictObject({ family: idSchema })
const listQuery = pageQuerySchema.extend({ q: z.string().trim().max(100).optional() })
const tags = ['engines']

/** Engine designs: what all engines of a kind have in common, each value with its basis. */
export const familyRoutes: Routes = async (app) => {
  const { database } = app

  app.get('/v1/engine-families', {
    config: { action: 'engines.read' },
    schema: { tags, summary: 'Engine families by name', querystring: listQuery, response: { 200: page(engineFamilySchema) } },
  }, (request) => listFamilies(database, request.actor, request.query))

  app.post('/v1/engine-families', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Add an engine family', body: newEngineFamilySchema, response: { 201: engineFamilySchema } },
  }, async (request, reply) => {
    const family = await makeFamily(database, request.actor, request.body)
    setVersion(reply, family.version)
    return reply.code(201).header('location', `/v1/engine-families/${family.id}`).send(family)
  })

  app.get('/v1/engine-families/:family', {
    config: { action: 'engines.read' },
    schema: { tags, summary: 'One engine family', params, response: { 200: engineFamilySchema } },
  }, async (request, reply) => {
    const family = await readFamily(database, request.actor, request.params.family)
    setVersion(reply, family.version)
    return family
  })

  app.patch('/v1/engine-families/:family', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Edit an engine family', params, body: engineFamilyEditSchema, response: { 200: engineFamilySchema } },
  }, async (request, reply) => {
    const family = await editFamily(database, request.actor, request.params.family, expectedVersion(request), request.body)
    setVersion(reply, family.version)
    return family
  })
}
