import { clientIdSchema, idSchema, newSessionSchema, readingKeptSchema, readingPutSchema, sessionSchema, storedReadingSchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../platform/http/app.ts'
import { setVersion } from '../../platform/http/etag.ts'
import { keepReading } from './keep-reading.ts'
import { closeSession, listSessions, listUnplaced, openSession, readSession } from './service.ts'

const ofJob = z.strictObject({ job: idSchema })
const ofSession = z.strictObject({ session: idSchema })
const ofReading = z.strictObject({ session: idSchema, reading: clientIdSchema })
const tags = ['sessions']

/** Sessions and their readings. */
export const sessionRoutes: Routes = async (app) => {
  app.get(
    '/v1/jobs/:job/sessions',
    { config: { action: 'sessions.read' }, schema: { tags, summary: 'The sessions of a job with their readings', params: ofJob, response: { 200: z.strictObject({ items: z.array(sessionSchema), next: z.null() }) } } },
    async (request) => ({ items: await listSessions(app.database, request.actor, request.params.job), next: null }),
  )

  app.post(
    '/v1/jobs/:job/sessions',
    {
      config: { action: 'sessions.write' },
      schema: {
        tags, summary: 'Open a session', params: ofJob, body: newSessionSchema, response: { 200: sessionSchema, 201: sessionSchema },
        description: 'Conditions and instruments hold for every reading in it. Other ones open another session; several may be open. The same `id` again answers 200 with the session that is there.',
      },
    },
    async (request, reply) => {
      const { id, isNew } = await openSession(app.database, request.actor, request.params.job, request.body)
      const session = await readSession(app.database, request.actor, id)
      if (isNew) reply.code(201).header('location', `/v1/sessions/${id}`)
      setVersion(reply, session.version)
      return session
    },
  )

  app.get(
    '/v1/sessions/:session',
    { config: { action: 'sessions.read' }, schema: { tags, summary: 'One session with its readings', params: ofSession, response: { 200: sessionSchema } } },
    async (request, reply) => {
      const session = await readSession(app.database, request.actor, request.params.session)
      setVersion(reply, session.version)
      return session
    },
  )

  app.post(
    '/v1/sessions/:session/close',
    { config: { action: 'sessions.write' }, schema: { tags, summary: 'Close a session', description: 'Closing a closed session changes nothing.', params: ofSession, response: { 200: sessionSchema } } },
    async (request, reply) => {
      const session = await closeSession(app.database, request.actor, request.params.session)
      setVersion(reply, session.version)
      return session
    },
  )

  app.put(
    '/v1/sessions/:session/readings/:reading',
    {
      config: { action: 'readings.write' },
      schema: {
        tags, summary: 'Keep a reading, a correction or a withdrawal', params: ofReading, body: readingPutSchema, response: { 200: readingKeptSchema, 201: readingKeptSchema },
        description:
          'The id is made by the client (UUID version 7). The same body again answers 200 as the first time, another body 409. Corrections, moves to another cylinder, session or job, and placing a late reading are new readings that name the one they replace, with a reason. Into a closed session: 409, or with `offline` kept unplaced.',
      },
    },
    async (request, reply) => {
      const { session, reading } = request.params
      const { isNew, kept } = await keepReading(app.database, request.actor, session, reading, request.body)
      return reply.code(isNew ? 201 : 200).send(kept)
    },
  )

  app.get(
    '/v1/jobs/:job/unplaced-readings',
    {
      config: { action: 'sessions.read' },
      schema: { tags, summary: 'Late readings that wait to be placed', params: ofJob, response: { 200: z.strictObject({ items: z.array(storedReadingSchema), next: z.null() }) } },
    },
    async (request) => ({ items: await listUnplaced(app.database, request.actor, request.params.job), next: null }),
  )
}
