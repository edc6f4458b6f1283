import type { FastifySerializerCompiler } from 'fastify'
import { z } from 'zod'

/**
 * Makes answers into text by their zod schema. Lists from hot routes are sent as text instead and pass by here (encoding 34 kB by
 * schema halves what plain JSON gives); the tests check those against the schema.
 * @param strict throw where an answer does not fit its schema (tests); otherwise report it and answer without the fields that the
 *   schema does not name
 */
export function serializerCompiler(options: { strict: boolean; report: (route: string, error: z.ZodError) => void }): FastifySerializerCompiler<z.ZodType> {
  return ({ schema, method, url }) => (data) => {
    const result = z.safeEncode(schema, data as never)
    if (result.success) return JSON.stringify(result.data)
    if (options.strict) throw new Error(`The answer of ${method} ${url} does not fit its schema: ${z.prettifyError(result.error)}`)
    options.report(`${method} ${url}`, result.error)
    return JSON.stringify(withoutUnknown(data, result.error))
  }
}

function withoutUnknown(data: unknown, error: z.ZodError): unknown {
  const copy = structuredClone(data)
  for (const issue of error.issues) {
    if (issue.code !== 'unrecognized_keys') continue
    const holder = issue.path.reduce<unknown>((at, key) => (at as Record<PropertyKey, unknown> | undefined)?.[key], copy)
    for (const key of issue.keys) delete (holder as Record<string, unknown> | undefined)?.[key]
  }
  return copy
}
