import { expectedPhrase, fieldErrors, type FieldError } from '@evenbore/contract'
import type { FastifySchemaCompiler } from 'fastify'
import type { z } from 'zod'
import { ProblemError } from './problem.ts'

/** Where the field errors of a part of the request point: the body's paths stand alone, the others say which part they mean. */
const PREFIX: Readonly<Record<string, string>> = { body: '', querystring: '/query', params: '/params', headers: '/headers' }
/** A field with such a name is never repeated in an answer or a log. */
const SECRET = /(password|pin|secret|token|link|code)$/i

/** Checks each part of a request by its zod schema; every bad field is answered with its path and what was expected. */
export const validatorCompiler: FastifySchemaCompiler<z.ZodType> = ({ schema, httpPart }) => {
  const prefix = PREFIX[httpPart ?? 'body'] ?? ''
  return (sent: unknown) => {
    // No body at all counts as an empty one, unless the schema makes a difference: its missing fields are then named one by one.
    const data = httpPart === 'body' && sent == null ? (schema.safeParse(undefined).success ? undefined : {}) : sent
    const result = schema.safeParse(data, { error: expectedPhrase })
    if (result.success) return { value: result.data }
    return { error: new ProblemError('invalid-request', { errors: fieldErrors(result.error.issues, data).map((error) => prepared(error, prefix)) }) }
  }
}

function prepared(error: FieldError, prefix: string): FieldError {
  return { ...error, path: `${prefix}${error.path}`, ...(SECRET.test(error.path) && error.got !== 'nothing' ? { got: 'not shown' } : {}) }
}
