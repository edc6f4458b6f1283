import { bayPlacementSchema, cancellationSchema, handOverSchema, idSchema, jobSchema, testingClosedSchema, type Job } from '@evenbore/contract'
import type { FastifyReply } from 'fastify'
import { z } from 'zod'
import type { Routes } from '../../platform/http/app.ts'
import { setVersion } from '../../platform/http/etag.ts'
import { handOver } from './hand-over.ts'
import { cancelJob, closeTesting, placeJob } from './moves.ts'

const params = z.strictObject({ job: idSchema })
const tags = ['jobs']
const response = { 200: jobSchema }

/** What moves a job on. Each answers the job as it stands then. */
export const moveRoutes: Routes = async (app) => {
  const { database } = app

  app.post('/v1/jobs/:job/bay', {
    config: { action: 'jobs.place' },
    schema: { tags, summary: 'Put a job into a bay, or out of it', params, body: bayPlacementSchema, response },
  }, async (request, reply) => versioned(reply, await placeJob(database, request.actor, request.params.job, request.body)))

  app.post('/v1/jobs/:job/testing-closed', {
    config: { action: 'sessions.write' },
    schema: { tags, summary: 'End testing with nothing found', params, body: testingClosedSchema, response },
  }, async (request, reply) => versioned(reply, await closeTesting(database, request.actor, request.params.job, request.body)))

  app.post('/v1/jobs/:job/cancellation', {
    config: { action: 'jobs.cancel' },
    schema: { tags, summary: 'Cancel a job', params, body: cancellationSchema, response },
  }, async (request, reply) => versioned(reply, await cancelJob(database, request.actor, request.params.job, request.body)))

  app.post('/v1/jobs/:job/hand-over', {
    config: { action: 'jobs.hand-over' },
    schema: { tags, summary: 'Hand a ready car over, with the follow-up retests promised', params, body: handOverSchema, response },
  }, async (request, reply) => versioned(reply, await handOver(database, request.actor, request.params.job, request.body)))
}

function versioned(reply: FastifyReply, job: Job): Job {
  setVersion(reply, job.version)
  return job
}
