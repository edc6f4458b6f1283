import type { FastifyBaseLogger, FastifyInstance, RawServerDefault, RawReplyDefaultExpression, RawRequestDefaultExpression } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import type { Database } from '../database/database.ts'
import type { KeptFiles } from '../files/kept-files.ts'
import type { LiveEvents } from '../live/live-events.ts'

/** The instance that routes are added to: their schemas are zod's, and give the types of body, parameters and answers. */
export type App = FastifyInstance<RawServerDefault, RawRequestDefaultExpression, RawReplyDefaultExpression, FastifyBaseLogger, ZodTypeProvider>

/** What a feature exports from its `routes.ts`. */
export type Routes = (app: App) => Promise<void>

declare module 'fastify' {
  interface FastifyInstance {
    database: Database
    live: LiveEvents
    files: KeptFiles
  }
}
