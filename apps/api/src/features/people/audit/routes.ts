import { auditEntrySchema, page, pageQuerySchema } from '@evenbore/contract'
import type { Routes } from '../../../platform/http/app.ts'
import { readAudit } from './service.ts'

/** Who changed settings, people, instruments and apps. */
export const auditRoutes: Routes = async (app) => {
  app.get('/v1/audit', {
    config: { action: 'settings.read' },
    schema: { tags: ['people'], summary: 'Changes of settings, newest first', querystring: pageQuerySchema, response: { 200: page(auditEntrySchema) } },
  }, (request) => readAudit(app.database, request.actor, request.query))
}
