import { caseSchema, comparisonSchema, evaluationSchema, idSchema, jobEvaluationSchema, newSuggestionDecisionSchema, pairSchema, storedEvaluationSchema, suggestionDecisionSchema } from '@evenbore/contract'
import { z } from 'zod'
import { actorKey } from '../../access/actors.ts'
import type { Routes } from '../../platform/http/app.ts'
import { onceWhereKeyed } from '../../platform/http/idempotency.ts'
import { ProblemError, problem } from '../../platform/problems/problem.ts'
import { keepNoting, type Noting } from './notes.ts'
import { compareCases, evaluateCase, evaluateJob, storedEvaluation } from './service.ts'
import { decideSuggestion, listDecisions } from './suggestions.ts'

const ofJob = z.strictObject({ job: idSchema })
const rankingQuery = z.strictObject({ ranking: z.enum(['true', 'false']).default('true').meta({ description: '`false` leaves out next tests and reasons, and is answered sooner' }) })
const tags = ['evaluations']

/** Opinions: on any case, on a job, and as they were kept; suggested tests taken or declined. */
export const evaluationRoutes: Routes = async (app) => {
  app.post(
    '/v1/evaluations',
    {
      config: { action: 'evaluate' },
      schema: { tags, summary: 'Evaluate a case; nothing is kept', querystring: rankingQuery, body: caseSchema, response: { 200: evaluationSchema }, description: 'The same schemas and the same answers as the command line. A case that is not as the contract asks is answered 422 with every bad field.' },
      attachValidation: true,
    },
    (request) => {
      demandCase(request.validationError)
      return evaluateCase(request.actor, request.body, request.query.ranking === 'true')
    },
  )

  app.post(
    '/v1/comparisons',
    {
      config: { action: 'evaluate' },
      schema: { tags, summary: 'Compare two cases of one engine, before and after work; nothing is kept', body: pairSchema, response: { 200: comparisonSchema }, description: 'A pair that is not as the contract asks is answered 422 with every bad field.' },
      attachValidation: true,
    },
    (request) => {
      demandCase(request.validationError)
      return compareCases(request.actor, request.body)
    },
  )

  app.get(
    '/v1/jobs/:job/evaluation',
    { config: { action: 'sessions.read' }, schema: { tags, summary: 'Evaluate a job as it stands', params: ofJob, querystring: rankingQuery, response: { 200: jobEvaluationSchema } } },
    (request) => evaluateJob(app.database, request.actor, request.params.job, request.query.ranking === 'true'),
  )

  app.get(
    '/v1/evaluations/:evaluation',
    { config: { action: 'sessions.read' }, schema: { tags, summary: 'An evaluation as it was kept when somebody decided on it', params: z.strictObject({ evaluation: idSchema }), response: { 200: storedEvaluationSchema } } },
    (request) => storedEvaluation(app.database.prisma, request.actor, request.params.evaluation),
  )

  app.get(
    '/v1/jobs/:job/suggestions',
    { config: { action: 'sessions.read' }, schema: { tags, summary: 'Suggested tests that were taken or declined', params: ofJob, response: { 200: z.strictObject({ items: z.array(suggestionDecisionSchema), next: z.null() }) } } },
    async (request) => ({ items: await listDecisions(app.database.prisma, request.actor, request.params.job), next: null }),
  )

  app.post(
    '/v1/jobs/:job/suggestions',
    { config: { action: 'suggestions.decide', takesKey: true }, schema: { tags, summary: 'Take a suggested test, or decline it with a reason', params: ofJob, body: newSuggestionDecisionSchema, response: { 201: suggestionDecisionSchema } } },
    async (request, reply) => {
      const decided = await decideSuggestion(app.database, request.actor, request.params.job, request.body, (action) => onceWhereKeyed(app.database, request, actorKey(request.actor), action))
      return reply.code(201).send(decided)
    },
  )

  let noting: Noting | undefined
  app.addHook('onReady', async () => { noting = keepNoting(app.database, app.live, (error) => app.log.error({ err: error }, 'an evaluation was not noted')) })
  app.addHook('onClose', () => noting?.stop())
}

/** A bad case is its own problem (422), the one that the command line answers too; what is wrong with the address stays 400. */
function demandCase(error: (Error & { validationContext?: string }) | undefined): void {
  if (error === undefined) return
  const { validationContext } = error
  if (error instanceof ProblemError && validationContext === 'body') throw problem('invalid-case', undefined, { errors: error.details.errors ?? [] })
  throw error
}
