import { PROBLEMS, type ProblemCode } from '@evenbore/contract'
import type { FastifyReply, FastifyRequest } from 'fastify'
import { databaseProblem } from './database-problems.ts'
import { ProblemError, problem, problemDocument } from './problem.ts'

/** What the framework's own errors mean, by code where the status alone would not tell. */
const FRAMEWORK_CODES: Readonly<Record<string, ProblemCode>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: 'too-large',
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'unsupported-media',
  FST_ERR_NOT_FOUND: 'not-found',
}
const BY_STATUS: Readonly<Record<number, ProblemCode>> = { 404: 'not-found', 413: 'too-large', 415: 'unsupported-media', 429: 'too-many-requests', 503: 'unavailable' }

/** Answers any error as problem details (RFC 9457). Faults of ours are logged with their stack and answered without it. */
export function answerProblem(error: unknown, request: FastifyRequest, reply: FastifyReply): void {
  const known = asProblem(error)
  if (PROBLEMS[known.code].status >= 500) request.log.error({ err: error, route: request.routeOptions?.url }, 'request failed')
  sendProblem(known, request, reply)
}

/** Sends one problem as the answer. */
export function sendProblem(known: ProblemError, request: FastifyRequest, reply: FastifyReply): void {
  const { status } = PROBLEMS[known.code]
  for (const [name, value] of Object.entries(known.details.headers ?? {})) reply.header(name, value)
  if (status === 401 && !reply.hasHeader('www-authenticate')) reply.header('www-authenticate', 'Bearer realm="evenbore"')
  // As text, past the route's schema for this status: a problem has one form everywhere.
  reply.code(status).type('application/problem+json').send(JSON.stringify(problemDocument(known.code, known.details, request.id)))
}

/** Which problem an error amounts to. */
export function asProblem(error: unknown): ProblemError {
  if (error instanceof ProblemError) return error
  const database = databaseProblem(error)
  if (database !== undefined) return database
  const { code, statusCode, message } = error as { code?: string; statusCode?: number; message?: string }
  if (code !== undefined && FRAMEWORK_CODES[code] !== undefined) return problem(FRAMEWORK_CODES[code], message)
  if (statusCode !== undefined && statusCode >= 400 && statusCode < 500) {
    const named = BY_STATUS[statusCode]
    if (named !== undefined) return problem(named, message)
    // What is left under 400: a body that is no JSON, a length that is wrong, an address that cannot be decoded.
    return problem('invalid-request', undefined, { errors: [{ path: '', expected: 'JSON in UTF-8', got: shortened(message) }] })
  }
  if (statusCode === 503) return problem('unavailable', message)
  return problem('internal')
}

function shortened(message: string | undefined): string {
  return (message ?? 'something else').slice(0, 120)
}
