import { catalogueItemEditSchema, catalogueItemSchema, idSchema, newCatalogueItemSchema, page } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../../platform/http/etag.ts'
import { editCatalogueItem, listCatalogue, makeCatalogueItem } from './service.ts'

const inGarage = z.strictObject({ garage: idSchema })
const params = z.strictObject({ item: idSchema })
const tags = ['garages']

/** What a garage charges for. */
export const catalogueRoutes: Routes = async (app) => {
  const { database } = app

  app.get('/v1/garages/:garage/catalogue', {
    config: { action: 'quotes.read' },
    schema: { tags, summary: 'Labour and parts of a garage', params: inGarage, response: { 200: page(catalogueItemSchema) } },
  }, async (request) => ({ items: await listCatalogue(database, request.actor, request.params.garage), next: null }))

  app.post('/v1/garages/:garage/catalogue', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Add labour or a part', params: inGarage, body: newCatalogueItemSchema, response: { 201: catalogueItemSchema } },
  }, async (request, reply) => {
    const made = await makeCatalogueItem(database, request.actor, request.params.garage, request.body)
    setVersion(reply, made.version)
    return reply.code(201).header('location', `/v1/catalogue/${made.id}`).send(made)
  })

  app.patch('/v1/catalogue/:item', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Edit or retire an item', params, body: catalogueItemEditSchema, response: { 200: catalogueItemSchema } },
  }, async (request, reply) => {
    const edited = await editCatalogueItem(database, request.actor, request.params.item, expectedVersion(request), request.body)
    setVersion(reply, edited.version)
    return edited
  })
}
