import { idSchema, newPersonSchema, page, pageQuerySchema, personEditSchema, personSchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../platform/http/etag.ts'
import { auditRoutes } from './audit/routes.ts'
import { deputyRoutes } from './deputies/routes.ts'
import { editPerson, listPeople, makePerson, readPerson } from './service.ts'

const params = z.strictObject({ person: idSchema })
const tags = ['people']

/** People of the chain, their roles, and who stands in for whom. */
export const peopleRoutes: Routes = async (app) => {
  const { database, access } = app

  app.get('/v1/people', {
    config: { action: 'settings.read' },
    schema: { tags, summary: 'People by name', querystring: pageQuerySchema, response: { 200: page(personSchema) } },
  }, (request) => listPeople(database, request.actor, request.query))

  app.post('/v1/people', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Take somebody on', body: newPersonSchema, response: { 201: personSchema } },
  }, async (request, reply) => {
    const person = await makePerson(database, request.actor, request.body)
    setVersion(reply, person.version)
    return reply.code(201).header('location', `/v1/people/${person.id}`).send(person)
  })

  app.get('/v1/people/:person', {
    config: { action: 'settings.read' },
    schema: { tags, summary: 'One person', params, response: { 200: personSchema } },
  }, async (request, reply) => {
    const person = await readPerson(database, request.actor, request.params.person)
    setVersion(reply, person.version)
    return person
  })

  app.patch('/v1/people/:person', {
    config: { action: 'settings.write' },
    schema: { tags, summary: 'Edit a person, or say that he left', params, body: personEditSchema, response: { 200: personSchema } },
  }, async (request, reply) => {
    const person = await editPerson(database, request.actor, request.params.person, expectedVersion(request), request.body)
    access.forget(person.id)
    setVersion(reply, person.version)
    return person
  })

  await deputyRoutes(app)
  await auditRoutes(app)
}
