import { findingSchema, finishRepairSchema, idSchema, newFindingSchema, nothingSchema, page, repairRecordSchema } from '@evenbore/contract'
import { z } from 'zod'
import { actorKey } from '../../access/actors.ts'
import type { Routes } from '../../platform/http/app.ts'
import { onceWhereKeyed } from '../../platform/http/idempotency.ts'
import { listFindings, recordFinding } from './findings.ts'
import { finishRepair, listRepairs, startRepair } from './service.ts'

const params = z.strictObject({ job: idSchema })
const tags = ['repairs']

/** Work done, and what strip-down showed. */
export const repairRoutes: Routes = async (app) => {
  app.get('/v1/jobs/:job/repairs', { config: { action: 'quotes.read' }, schema: { tags, summary: 'Repairs of a job', params, response: { 200: page(repairRecordSchema) } } }, async (request) => ({
    items: await listRepairs(app.database.prisma, request.actor, request.params.job), next: null,
  }))

  app.post(
    '/v1/jobs/:job/repair',
    {
      config: { action: 'repairs.write' },
      schema: { tags, summary: 'Start the repair', description: 'Needs a version that the manager approved and the customer permitted, within the garage’s tolerance.', params, body: nothingSchema, response: { 201: repairRecordSchema } },
    },
    async (request, reply) => reply.code(201).send(await startRepair(app.database, request.actor, request.params.job)),
  )

  app.post(
    '/v1/jobs/:job/repair/finish',
    { config: { action: 'repairs.write' }, schema: { tags, summary: 'Finish the repair; its release retest is owed from now on', params, body: finishRepairSchema, response: { 200: repairRecordSchema } } },
    (request) => finishRepair(app.database, request.actor, request.params.job, request.body),
  )

  app.get('/v1/jobs/:job/findings', { config: { action: 'sessions.read' }, schema: { tags, summary: 'What strip-down showed, against what had been believed', params, response: { 200: page(findingSchema) } } }, async (request) => ({
    items: await listFindings(app.database.prisma, request.actor, request.params.job), next: null,
  }))

  app.post(
    '/v1/jobs/:job/findings',
    { config: { action: 'findings.write', takesKey: true }, schema: { tags, summary: 'Record a finding', params, body: newFindingSchema, response: { 201: findingSchema } } },
    async (request, reply) => reply.code(201).send(await onceWhereKeyed(app.database, request, actorKey(request.actor), (tx) => recordFinding(tx, request.actor, request.params.job, request.body))),
  )
}
