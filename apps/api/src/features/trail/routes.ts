import { idSchema, page, pageQuerySchema, trailCheckSchema, trailEntrySchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../platform/http/app.ts'
import { exportHeads } from './heads.ts'
import { checkTrail, engineTrail, jobTrail } from './read-trail.ts'

const tags = ['trail']
const HOUR_MS = 3_600_000
/** A process that is restarted more often than every hour still tells them. */
const FIRST_LOOK_MS = 60_000

/** The trail of an engine, read and checked. Nothing writes to it by itself: entries come with what they tell. */
export const trailRoutes: Routes = async (app) => {
  app.get(
    '/v1/engines/:engine/trail',
    {
      config: { action: 'trail.read' },
      schema: {
        tags, summary: 'The trail of an engine, oldest first', params: z.strictObject({ engine: idSchema }), querystring: pageQuerySchema, response: { 200: page(trailEntrySchema) },
        description: 'Entries about quotes, approvals and authorisations show another garage only kind, time and hash.',
      },
    },
    (request) => engineTrail(app.database, request.actor, request.params.engine, request.query),
  )

  app.get(
    '/v1/jobs/:job/trail',
    { config: { action: 'trail.read' }, schema: { tags, summary: 'What a job wrote into the trail, oldest first', params: z.strictObject({ job: idSchema }), querystring: pageQuerySchema, response: { 200: page(trailEntrySchema) } } },
    (request) => jobTrail(app.database, request.actor, request.params.job, request.query),
  )

  app.get(
    '/v1/engines/:engine/trail/check',
    { config: { action: 'trail.read' }, schema: { tags, summary: 'Check the trail of an engine: every hash is computed anew', params: z.strictObject({ engine: idSchema }), response: { 200: trailCheckSchema } } },
    (request) => checkTrail(app.database, request.actor, request.params.engine),
  )

  // Each process looks once an hour whether today's heads were told; the database lets one of them do it.
  const tell = () => void exportHeads(app.database, new Date()).catch((error: unknown) => app.log.error({ err: error }, 'heads of trails were not told'))
  const timers = [setTimeout(tell, FIRST_LOOK_MS).unref(), setInterval(tell, HOUR_MS).unref()]
  app.addHook('onClose', (_app, done) => {
    timers.forEach(clearTimeout)
    done()
  })
}
