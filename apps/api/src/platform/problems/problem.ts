import { PROBLEMS, quoteValue, type FieldError, type Problem, type ProblemCode } from '@evenbore/contract'

/** What a problem may say beyond its code. */
export type ProblemDetails = {
  /** What was got, what was expected, what to do; one or two plain sentences. */
  readonly detail?: string
  readonly errors?: readonly FieldError[]
  readonly headers?: Readonly<Record<string, string>>
}

/** An expected failure on its way to the problem handler, which answers it. Thrown by services and doors, never caught by them. */
export class ProblemError extends Error {
  readonly code: ProblemCode
  readonly statusCode: number
  readonly details: ProblemDetails

  constructor(code: ProblemCode, details: ProblemDetails = {}) {
    super(details.detail ?? PROBLEMS[code].title)
    this.code = code
    this.statusCode = PROBLEMS[code].status
    this.details = details
  }
}

/** `throw problem('conflict', 'Bay 2 holds job K 27.')` */
export function problem(code: ProblemCode, detail?: string, more: Omit<ProblemDetails, 'detail'> = {}): ProblemError {
  return new ProblemError(code, detail === undefined ? more : { ...more, detail })
}

/** A field whose value is well formed but cannot be: answered 400 with its path, as if the schema had refused it. */
export function badField(path: string, expected: string, got?: unknown): ProblemError {
  return new ProblemError('invalid-request', { errors: [got === undefined ? { path, expected } : { path, expected, got: quoteValue(got) }] })
}

/** The document of RFC 9457 that goes on the wire. `instance` names this one occurrence; the log holds it too. */
export function problemDocument(code: ProblemCode, details: ProblemDetails, trace: string): Problem {
  const { status, title } = PROBLEMS[code]
  return {
    type: `/docs/problems/${code}`,
    title,
    status,
    ...(details.detail === undefined ? {} : { detail: details.detail }),
    instance: `urn:trace:${trace}`,
    ...(details.errors === undefined ? {} : { errors: [...details.errors] }),
  }
}
