import { garageGaugeSchema, gaugeEditSchema, idSchema, newGaugeSchema, page } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../../platform/http/etag.ts'
import { editGauge, listGauges, makeGauge } from './service.ts'

const inGarage = z.strictObject({ garage: idSchema })
const params = z.strictObject({ gauge: idSchema })
const tags = ['garages']

/** Instruments whose errors matter. */
export const gaugeRoutes: Routes = async (app) => {
  const { database } = app

  app.get('/v1/garages/:garage/gauges', {
    config: { action: 'garages.read' },
    schema: { tags, summary: 'Gauges and testers of a garage', params: inGarage, response: { 200: page(garageGaugeSchema) } },
  }, async (request) => ({ items: await listGauges(database, request.actor, request.params.garage), next: null }))

  app.post('/v1/garages/:garage/gauges', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Add an instrument', params: inGarage, body: newGaugeSchema, response: { 201: garageGaugeSchema } },
  }, async (request, reply) => {
    const made = await makeGauge(database, request.actor, request.params.garage, request.body)
    setVersion(reply, made.version)
    return reply.code(201).header('location', `/v1/gauges/${made.id}`).send(made)
  })

  app.patch('/v1/gauges/:gauge', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Edit or retire an instrument', params, body: gaugeEditSchema, response: { 200: garageGaugeSchema } },
  }, async (request, reply) => {
    const edited = await editGauge(database, request.actor, request.params.gauge, expectedVersion(request), request.body)
    setVersion(reply, edited.version)
    return edited
  })
}
