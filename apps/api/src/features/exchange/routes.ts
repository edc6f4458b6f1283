import { idSchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../platform/http/app.ts'
import { exportRecords } from './service.ts'

/** Taking the data out. */
export const exchangeRoutes: Routes = async (app) => {
  app.get(
    '/v1/export',
    {
      config: { action: 'export' },
      schema: {
        tags: ['exchange'], summary: 'All records as JSON lines', querystring: z.strictObject({ garage: idSchema.optional().meta({ description: 'one garage; otherwise every one you may export' }) }),
        response: { 200: z.string().meta({ description: 'JSON lines, each {"kind", "record"}; the last one is {"kind":"end","lines":n}' }) },
      },
    },
    async (request, reply) => {
      const lines = await exportRecords(app.database, request.actor, request.query.garage)
      return reply.type('application/x-ndjson; charset=utf-8').header('content-disposition', 'attachment; filename="evenbore.jsonl"').send(lines as never)
    },
  )
}
