import { idSchema, newVehicleSchema, page, pageQuerySchema, vehicleEditSchema, vehicleSchema } from '@evenbore/contract'
import { z } from 'zod'
import { actorKey } from '../../access/actors.ts'
import type { Routes } from '../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../platform/http/etag.ts'
import { onceWhereKeyed } from '../../platform/http/idempotency.ts'
import { editVehicle, listVehicles, makeVehicle, readVehicle, shownVehicle } from './service.ts'

const inGarage = z.strictObject({ garage: idSchema })
const params = z.strictObject({ vehicle: idSchema })
const listQuery = pageQuerySchema.extend({ q: z.string().trim().max(100).optional().meta({ description: 'the plate, however spaced, or words of the description' }) })
const tags = ['vehicles']

/** Cars; the engine in one is a record of its own. */
export const vehicleRoutes: Routes = async (app) => {
  const { database } = app

  app.get('/v1/garages/:garage/vehicles', {
    config: { action: 'vehicles.read' },
    schema: { tags, summary: 'Vehicles of a garage by plate', params: inGarage, querystring: listQuery, response: { 200: page(vehicleSchema) } },
  }, (request) => listVehicles(database, request.actor, request.params.garage, request.query))

  app.post('/v1/garages/:garage/vehicles', {
    config: { action: 'vehicles.write', takesKey: true },
    schema: { tags, summary: 'Add a vehicle', params: inGarage, body: newVehicleSchema, response: { 201: vehicleSchema } },
  }, async (request, reply) => {
    const { actor } = request
    const made = await onceWhereKeyed(database, request, actorKey(actor), async (tx) => shownVehicle(await makeVehicle(tx, actor, request.params.garage, request.body)))
    setVersion(reply, made.version)
    return reply.code(201).header('location', `/v1/vehicles/${made.id}`).send(made)
  })

  app.get('/v1/vehicles/:vehicle', {
    config: { action: 'vehicles.read' },
    schema: { tags, summary: 'One vehicle', params, response: { 200: vehicleSchema } },
  }, async (request, reply) => {
    const vehicle = await readVehicle(database, request.actor, request.params.vehicle)
    setVersion(reply, vehicle.version)
    return vehicle
  })

  app.patch('/v1/vehicles/:vehicle', {
    config: { action: 'vehicles.write' },
    schema: { tags, summary: 'Edit a vehicle', params, body: vehicleEditSchema, response: { 200: vehicleSchema } },
  }, async (request, reply) => {
    const vehicle = await editVehicle(database, request.actor, request.params.vehicle, expectedVersion(request), request.body)
    setVersion(reply, vehicle.version)
    return vehicle
  })
}
