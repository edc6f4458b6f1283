import { customerEditSchema, customerSchema, idSchema, newCustomerSchema, page, pageQuerySchema } from '@evenbore/contract'
import { z } from 'zod'
import { actorKey } from '../../access/actors.ts'
import type { Routes } from '../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../platform/http/etag.ts'
import { onceWhereKeyed } from '../../platform/http/idempotency.ts'
import { editCustomer, eraseCustomer, listCustomers, makeCustomer, readCustomer, shownCustomer } from './service.ts'

const inGarage = z.strictObject({ garage: idSchema })
const params = z.strictObject({ customer: idSchema })
const listQuery = pageQuerySchema.extend({ q: z.string().trim().max(100).optional().meta({ description: 'parts of the name, or digits of the phone number' }) })
const tags = ['customers']

/** The people who bring the cars; each belongs to one garage. */
export const customerRoutes: Routes = async (app) => {
  const { database } = app

  app.get('/v1/garages/:garage/customers', {
    config: { action: 'customers.read' },
    schema: { tags, summary: 'Customers of a garage by name', params: inGarage, querystring: listQuery, response: { 200: page(customerSchema) } },
  }, (request) => listCustomers(database, request.actor, request.params.garage, request.query))

  app.post('/v1/garages/:garage/customers', {
    config: { action: 'customers.write', takesKey: true },
    schema: { tags, summary: 'Add a customer', params: inGarage, body: newCustomerSchema, response: { 201: customerSchema } },
  }, async (request, reply) => {
    const { actor } = request
    const made = await onceWhereKeyed(database, request, actorKey(actor), async (tx) => shownCustomer(await makeCustomer(tx, actor, request.params.garage, request.body)))
    setVersion(reply, made.version)
    return reply.code(201).header('location', `/v1/customers/${made.id}`).send(made)
  })

  app.get('/v1/customers/:customer', {
    config: { action: 'customers.read' },
    schema: { tags, summary: 'One customer', params, response: { 200: customerSchema } },
  }, async (request, reply) => {
    const customer = await readCustomer(database, request.actor, request.params.customer)
    setVersion(reply, customer.version)
    return customer
  })

  app.patch('/v1/customers/:customer', {
    config: { action: 'customers.write' },
    schema: { tags, summary: 'Edit a customer', params, body: customerEditSchema, response: { 200: customerSchema } },
  }, async (request, reply) => {
    const customer = await editCustomer(database, request.actor, request.params.customer, expectedVersion(request), request.body)
    setVersion(reply, customer.version)
    return customer
  })

  app.post('/v1/customers/:customer/erasure', {
    config: { action: 'customers.write' },
    schema: { tags, summary: 'Erase what is known of a person; the records stay whole', params, response: { 200: customerSchema } },
  }, async (request, reply) => {
    const customer = await eraseCustomer(database, request.actor, request.params.customer)
    setVersion(reply, customer.version)
    return customer
  })
}
