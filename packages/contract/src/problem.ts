import { z } from 'zod'
import { fieldErrorSchema } from './diagnosis-problem.ts'

/**
 * Every problem type the API can answer with (RFC 9457). `type` on the wire is `/docs/problems/<code>`.
 * A test compares this list with the documentation and with what the routes declare.
 */
export const PROBLEMS = {
  'invalid-request': { status: 400, title: 'The request is not well formed' },
  'invalid-case': { status: 422, title: 'The case cannot be evaluated' },
  'not-signed-in': { status: 401, title: 'Sign in first' },
  'wrong-credentials': { status: 401, title: 'These credentials are not right' },
  'second-factor-needed': { status: 401, title: 'A one-time code is needed' },
  'locked-out': { status: 429, title: 'Too many wrong attempts' },
  'not-allowed': { status: 403, title: 'Your role does not allow this' },
  'own-quote': { status: 403, title: 'A quote is approved by somebody other than its author' },
  'above-limit': { status: 403, title: 'The total is above your approval limit' },
  'not-found': { status: 404, title: 'There is no such record' },
  'method-not-allowed': { status: 405, title: 'This path does not take that method' },
  'conflict': { status: 409, title: 'Another record stands in the way' },
  'session-closed': { status: 409, title: 'The session is closed' },
  'id-reused': { status: 409, title: 'This identifier was used with another body' },
  'already-replaced': { status: 409, title: 'This record has been replaced already' },
  'wrong-state': { status: 409, title: 'The job does not stand where this is possible' },
  'stale': { status: 412, title: 'The record was changed by somebody else' },
  'too-large': { status: 413, title: 'The body is too large' },
  'unsupported-media': { status: 415, title: 'This media type is not read here' },
  'if-match-needed': { status: 428, title: 'Say which version you edit (If-Match)' },
  'idempotency-key-needed': { status: 400, title: 'Send an Idempotency-Key' },
  'too-many-requests': { status: 429, title: 'Too many requests' },
  'unavailable': { status: 503, title: 'The service is starting or stopping' },
  'internal': { status: 500, title: 'Something broke on our side' },
} as const satisfies Record<string, { status: number; title: string }>

export type ProblemCode = keyof typeof PROBLEMS


/** Problem details for HTTP APIs, RFC 9457. */
export const problemSchema = z
  .strictObject({
    type: z.string().meta({ examples: ['/docs/problems/invalid-request'] }),
    title: z.string(),
    status: z.int(),
    detail: z.string().optional(),
    instance: z.string().optional(),
    errors: z.array(fieldErrorSchema).optional(),
  })
  .meta({ id: 'Problem' })
export type Problem = z.infer<typeof problemSchema>
