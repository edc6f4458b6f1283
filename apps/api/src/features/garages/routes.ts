import { garageEditSchema, garageSchema, idSchema, newGarageSchema, page } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../platform/http/etag.ts'
import { bayRoutes } from './bays/routes.ts'
import { catalogueRoutes } from './catalogue/routes.ts'
import { gaugeRoutes } from './gauges/routes.ts'
import { editGarage, listGarages, listStaff, makeGarage, readGarage } from './service.ts'

const params = z.strictObject({ garage: idSchema })
const staffSchema = z.strictObject({ id: idSchema, name: z.string(), roles: z.array(z.string()) }).meta({ id: 'StaffMember' })
const tags = ['garages']

/** Garages with what their numbers and prices depend on, their bays, gauges and catalogues. */
export const garageRoutes: Routes = async (app) => {
  const { database } = app

  app.get('/v1/garages', {
    config: { action: 'garages.read' },
    schema: { tags, summary: 'Garages that the caller belongs to', response: { 200: page(garageSchema) } },
  }, async (request) => ({ items: await listGarages(database, request.actor), next: null }))

  app.post('/v1/garages', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Set up a garage', body: newGarageSchema, response: { 201: garageSchema } },
  }, async (request, reply) => {
    const garage = await makeGarage(database, request.actor, request.body)
    setVersion(reply, garage.version)
    return reply.code(201).header('location', `/v1/garages/${garage.id}`).send(garage)
  })

  app.get('/v1/garages/:garage', {
    config: { action: 'garages.read' },
    schema: { tags, summary: 'One garage', params, response: { 200: garageSchema } },
  }, async (request, reply) => {
    const garage = await readGarage(database, request.actor, request.params.garage)
    setVersion(reply, garage.version)
    return garage
  })

  app.patch('/v1/garages/:garage', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Edit a garage', params, body: garageEditSchema, response: { 200: garageSchema } },
  }, async (request, reply) => {
    const garage = await editGarage(database, request.actor, request.params.garage, expectedVersion(request), request.body)
    setVersion(reply, garage.version)
    return garage
  })

  app.get('/v1/garages/:garage/staff', {
    config: { action: 'garages.read' },
    schema: { tags, summary: 'Who works in a garage', params, response: { 200: page(staffSchema) } },
  }, async (request) => ({ items: await listStaff(database, request.actor, request.params.garage), next: null }))

  await bayRoutes(app)
  await gaugeRoutes(app)
  await catalogueRoutes(app)
}
