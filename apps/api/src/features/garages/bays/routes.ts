import { bayEditSchema, baySchema, idSchema, newBaySchema, page } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../../platform/http/etag.ts'
import { editBay, listBays, makeBay } from './service.ts'

const inGarage = z.strictObject({ garage: idSchema })
const params = z.strictObject({ bay: idSchema })
const tags = ['garages']

/** Bays: where a car stands while it is worked on. */
export const bayRoutes: Routes = async (app) => {
  const { database } = app

  app.get('/v1/garages/:garage/bays', {
    config: { action: 'garages.read' },
    schema: { tags, summary: 'Bays of a garage', params: inGarage, response: { 200: page(baySchema) } },
  }, async (request) => ({ items: await listBays(database, request.actor, request.params.garage), next: null }))

  app.post('/v1/garages/:garage/bays', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Set up a bay', params: inGarage, body: newBaySchema, response: { 201: baySchema } },
  }, async (request, reply) => {
    const made = await makeBay(database, request.actor, request.params.garage, request.body)
    setVersion(reply, made.version)
    return reply.code(201).header('location', `/v1/bays/${made.id}`).send(made)
  })

  app.patch('/v1/bays/:bay', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Edit or close a bay', params, body: bayEditSchema, response: { 200: baySchema } },
  }, async (request, reply) => {
    const edited = await editBay(database, request.actor, request.params.bay, expectedVersion(request), request.body)
    setVersion(reply, edited.version)
    return edited
  })
}
