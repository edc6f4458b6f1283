import { idSchema, reliabilitySchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../platform/http/app.ts'
import { reliability } from './service.ts'

/** What the chain learns about itself. */
export const reportRoutes: Routes = async (app) => {
  app.get(
    '/v1/garages/:garage/reliability',
    {
      config: { action: 'reports.read' },
      schema: {
        tags: ['reports'], summary: 'How often the diagnosis was right', params: z.strictObject({ garage: idSchema }), response: { 200: reliabilitySchema },
        description: 'Counted over cylinders (or the engine) that findings name, against the evaluation that opened the engine. A declined suggestion turned out right where its test was not done, strip-down found a fault, and the release retest passed.',
      },
    },
    (request) => reliability(app.database, request.actor, request.params.garage),
  )
}
