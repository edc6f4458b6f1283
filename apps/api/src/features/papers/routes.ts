import { idSchema, localeSchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../platform/http/app.ts'
import { preferredLanguage } from './reader.ts'
import type { SheetKind } from './service.ts'

const SUMMARIES: Readonly<Record<SheetKind, string>> = {
  'test-record': 'The test record on paper: readings, conditions, and what they say',
  quote: 'The newest version of the quote on paper, for the customer',
  release: 'The release sheet: what was found and done, what the retest showed, what is promised',
}

/** Sheets of A4 made by the server. */
export const paperRoutes: Routes = async (app) => {
  for (const kind of Object.keys(SUMMARIES) as SheetKind[]) {
    app.get(
      `/v1/jobs/:job/${kind}.pdf`,
      {
        config: { action: 'papers.read' },
        schema: {
          tags: ['papers'], summary: SUMMARIES[kind], produces: ['application/pdf'],
          description: 'PDF, A4. Language: `language`, else Accept-Language, else that of the caller. Unit of pressure: the caller’s, else the garage’s.',
          params: z.strictObject({ job: idSchema }),
          querystring: z.strictObject({ language: localeSchema.optional() }),
          response: { 200: z.string().meta({ description: 'the document', format: 'binary' }) },
        },
      },
      async (request, reply) => {
        // What sets type takes a tenth of a second to load: the first sheet waits for that, not every start.
        const { makeSheet } = await import('./service.ts')
        const { document, name, language } = await makeSheet(app.database, request.actor, request.params.job, kind, request.query.language ?? preferredLanguage(request.headers['accept-language']))
        return reply.type('application/pdf').header('content-language', language).header('vary', 'accept-language').header('content-disposition', `inline; filename="${name}"`).send(document as never)
      },
    )
  }
}
