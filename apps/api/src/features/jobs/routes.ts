import { floorSchema, idSchema, jobEditSchema, jobSchema, jobsQuerySchema, jobSummarySchema, newJobSchema, page, searchHitSchema } from '@evenbore/contract'
import { z } from 'zod'
import { actorKey } from '../../access/actors.ts'
import type { Routes } from '../../platform/http/app.ts'
import { expectedVersion, setVersion } from '../../platform/http/etag.ts'
import { onceWhereKeyed } from '../../platform/http/idempotency.ts'
import { bookIn } from './book-in.ts'
import { readFloor } from './floor.ts'
import { besideRoutes } from './routes-beside.ts'
import { moveRoutes } from './routes-moves.ts'
import { editJob, listJobs, readJob, search } from './service.ts'

const inGarage = z.strictObject({ garage: idSchema })
const params = z.strictObject({ job: idSchema })
const tags = ['jobs']

/** Jobs: one visit of one car for one complaint. */
export const jobRoutes: Routes = async (app) => {
  const { database } = app

  app.get('/v1/garages/:garage/jobs', {
    config: { action: 'jobs.read' },
    schema: { tags, summary: 'Jobs of a garage, newest first', params: inGarage, querystring: jobsQuerySchema, response: { 200: page(jobSummarySchema) } },
  }, (request) => listJobs(database, request.actor, request.params.garage, request.query))

  app.post('/v1/garages/:garage/jobs', {
    config: { action: 'jobs.write', takesKey: true },
    schema: {
      tags, summary: 'Book a car in',
      description: 'Customer, vehicle and engine are named by their ids or made along the way. An Idempotency-Key makes a repeated request answer the first job.',
      params: inGarage, body: newJobSchema, response: { 201: jobSchema },
    },
  }, async (request, reply) => {
    const { actor } = request
    const job = await onceWhereKeyed(database, request, actorKey(actor), async (tx) => readJob(tx, actor, await bookIn(tx, actor, request.params.garage, request.body)))
    setVersion(reply, job.version)
    return reply.code(201).header('location', `/v1/jobs/${job.id}`).send(job)
  })

  app.get('/v1/jobs/:job', {
    config: { action: 'jobs.read' },
    schema: { tags, summary: 'One job', params, response: { 200: jobSchema } },
  }, async (request, reply) => {
    const job = await readJob(database.prisma, request.actor, request.params.job)
    setVersion(reply, job.version)
    return job
  })

  app.patch('/v1/jobs/:job', {
    config: { action: 'jobs.write' },
    schema: { tags, summary: 'Edit what was told at book-in', params, body: jobEditSchema, response: { 200: jobSchema } },
  }, async (request, reply) => {
    const job = await editJob(database, request.actor, request.params.job, expectedVersion(request), request.body)
    setVersion(reply, job.version)
    return job
  })

  app.get('/v1/garages/:garage/floor', {
    config: { action: 'jobs.read' },
    schema: { tags, summary: 'The garage seen from above', params: inGarage, response: { 200: floorSchema } },
  }, async (request, reply) => {
    const floor = await readFloor(database, request.actor, request.params.garage)
    // As text, past the schema: encoding a long list by its schema costs as much as all the rest. The tests check it instead.
    return reply.type('application/json; charset=utf-8').send(JSON.stringify(floor) as never)
  })

  app.get('/v1/garages/:garage/search', {
    config: { action: 'jobs.read' },
    schema: {
      tags, summary: 'Find a job by what is typed at the counter', params: inGarage,
      querystring: z.strictObject({ q: z.string().trim().min(1).max(100).meta({ description: 'code, plate, name or phone, typed loosely' }) }),
      response: { 200: page(searchHitSchema) },
    },
  }, async (request) => ({ items: await search(database, request.actor, request.params.garage, request.query.q), next: null }))

  await moveRoutes(app)
  await besideRoutes(app)
}
