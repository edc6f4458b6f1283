import { z } from 'zod'
import type { Case } from './case.ts'
import { caseSchema } from './case.ts'

/** One bad field: where it is, what belongs there, what was there instead. */
export const fieldErrorSchema = z
  .strictObject({
    path: z.string().meta({ description: 'JSON Pointer (RFC 6901) into what was sent; "" is the whole.' }),
    expected: z.string(),
    got: z.string().optional(),
  })
  .meta({ id: 'FieldError' })
export type FieldError = z.infer<typeof fieldErrorSchema>

/** The API's problem document without `status` and `instance`, as the command line answers a bad case. */
export const diagnosisProblemSchema = z
  .strictObject({ type: z.string(), title: z.string(), errors: z.array(fieldErrorSchema) })
  .meta({ id: 'DiagnosisProblem' })
export type DiagnosisProblem = z.infer<typeof diagnosisProblemSchema>

/** The API's problem of a case (or a pair of cases) that is not as the contract asks; a test compares it with the list of problems. */
export const INVALID_INPUT = { type: '/docs/problems/invalid-case', title: 'The case cannot be evaluated' } as const

/** At most so many field errors are listed; a hostile body must not make a huge answer. */
const MOST_ERRORS = 50

/** A JSON Pointer (RFC 6901) from a path of keys. */
export function jsonPointer(path: readonly PropertyKey[]): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}

/** Formats of text by their zod names. */
const FORMATS: Readonly<Record<string, string>> = {
  uuid: 'a UUID', guid: 'a UUID', email: 'an e-mail address', url: 'an address (URL)', datetime: 'an instant such as 2026-05-06T10:20:00Z', date: 'a day such as 2026-05-06',
}

/** What was expected, as a plain phrase, for schemas that do not say it themselves (a zod error map). */
export function expectedPhrase(issue: z.core.$ZodRawIssue): string | undefined {
  const kinds: Record<string, string> = { object: 'an object', array: 'a list', string: 'text', int: 'a whole number', boolean: 'true or false', null: 'null' }
  switch (issue.code) {
    case 'invalid_type':
      return kinds[issue.expected] ?? `a ${issue.expected}`
    case 'invalid_value':
      return issue.values.length === 1 ? JSON.stringify(issue.values[0]) : `one of ${issue.values.map(String).join(', ')}`
    case 'too_small':
    case 'too_big': {
      const limit = issue.code === 'too_small' ? issue.minimum : issue.maximum
      const side = issue.code === 'too_small' ? 'at least' : 'at most'
      const what = issue.origin === 'string' ? ' characters' : issue.origin === 'array' ? ' entries' : ''
      return `${issue.inclusive === false ? (side === 'at least' ? 'more than' : 'less than') : side} ${String(limit)}${what}`
    }
    case 'invalid_union':
      return Array.isArray(issue.options) ? `one of ${issue.options.map(String).join(', ')}` : 'one of the shapes the contract names'
    case 'unrecognized_keys':
      return 'no such field'
    case 'invalid_format':
      return FORMATS[issue.format] ?? (issue.format === 'regex' && typeof issue.pattern === 'string' ? `text of the form ${issue.pattern}` : undefined)
    case 'not_multiple_of':
      return `a multiple of ${String(issue.divisor)}`
    default:
      return undefined
  }
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  let at: unknown = input
  for (const key of path) {
    if (at === null || typeof at !== 'object' || !Object.hasOwn(at, key)) return undefined
    at = (at as Record<PropertyKey, unknown>)[key]
  }
  return at
}

/** How a value is quoted back: JSON, shortened; "nothing" where the field is missing. */
export function quoteValue(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (typeof value === 'number') return String(value)
  if (Array.isArray(value) && value.length > 20) return `a list of ${value.length}`
  const text = JSON.stringify(value) ?? String(value)
  return text.length > 80 ? `${text.slice(0, 77)}...` : text
}

/** Every bad field of an input, from zod's issues: one entry for each unknown key. */
export function fieldErrors(issues: readonly z.core.$ZodIssue[], input: unknown): FieldError[] {
  const errors: FieldError[] = []
  for (const issue of issues) {
    if (issue.code === 'unrecognized_keys') {
      for (const key of issue.keys) {
        const path = [...issue.path, key]
        errors.push({ path: jsonPointer(path), expected: 'no such field', got: quoteValue(valueAt(input, path)) })
      }
    } else if (issue.code === 'invalid_key') {
      const first = issue.issues[0]
      errors.push({ path: jsonPointer(issue.path), expected: first?.message ?? 'another key', got: quoteValue(issue.path.at(-1)) })
    } else {
      errors.push({ path: jsonPointer(issue.path), expected: issue.message, got: quoteValue(valueAt(input, issue.path)) })
    }
  }
  return errors.slice(0, MOST_ERRORS)
}

/** Input checked against a schema: the value, or the problem with every bad field. */
export type Checked<T> = { readonly value: T; readonly error?: undefined } | { readonly error: DiagnosisProblem; readonly value?: undefined }

/** Checks anything against a schema and names each bad field. */
export function checkInput<T>(schema: z.ZodType<T>, input: unknown): Checked<T> {
  const result = schema.safeParse(input, { error: (issue) => expectedPhrase(issue) })
  if (result.success) return { value: result.data }
  return { error: { ...INVALID_INPUT, errors: fieldErrors(result.error.issues, input) } }
}

/**
 * Reads a case from anything.
 * @returns the case, or `{ error }` with type, title and every bad field (JSON Pointer, what was expected, what was got).
 */
export function parseCase(input: unknown): Checked<Case> {
  return checkInput(caseSchema, input)
}

/** Reads JSON text and checks it; broken JSON is a bad input with the path "". */
export function parseJson<T>(text: string, parse: (input: unknown) => Checked<T>): Checked<T> {
  let input: unknown
  try {
    input = JSON.parse(text)
  } catch (error) {
    const got = error instanceof Error ? error.message : 'broken JSON'
    return { error: { ...INVALID_INPUT, errors: [{ path: '', expected: 'JSON', got }] } }
  }
  return parse(input)
}
