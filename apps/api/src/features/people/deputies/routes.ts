import { deputySchema, idSchema, newDeputySchema, page } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../../platform/http/app.ts'
import { endDeputy, listDeputies, nameDeputy } from './service.ts'

const inGarage = z.strictObject({ garage: idSchema })
const tags = ['people']

/** Who may approve in a manager's place. */
export const deputyRoutes: Routes = async (app) => {
  const { database, access } = app

  app.get('/v1/garages/:garage/deputies', {
    config: { action: 'settings.read' },
    schema: { tags, summary: 'Who stands in for whom', params: inGarage, response: { 200: page(deputySchema) } },
  }, async (request) => ({ items: await listDeputies(database, request.actor, request.params.garage), next: null }))

  app.post('/v1/garages/:garage/deputies', {
    config: { action: 'deputies.write' },
    schema: { tags, summary: 'Name a deputy for a time', params: inGarage, body: newDeputySchema, response: { 201: deputySchema } },
  }, async (request, reply) => {
    const made = await nameDeputy(database, request.actor, request.params.garage, request.body)
    access.forget(made.deputy.id)
    return reply.code(201).send(made)
  })

  app.post('/v1/deputies/:deputy/revocation', {
    config: { action: 'deputies.write' },
    schema: { tags, summary: 'End a deputy early', params: z.strictObject({ deputy: idSchema }), response: { 200: deputySchema } },
  }, async (request) => {
    const ended = await endDeputy(database, request.actor, request.params.deputy)
    access.forget(ended.deputy.id)
    return ended
  })
}
