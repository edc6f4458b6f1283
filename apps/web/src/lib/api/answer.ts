import type { Problem } from '@evenbore/contract'
import type { Refusal } from '#lib/ui/refusal.ts'

/** What a call came to: a value, or why not. `etag` is what If-Match asks for when the record is edited. */
export type Answer<Value> =
  | { readonly value: Value; readonly etag: string | undefined; readonly refusal?: undefined }
  | { readonly refusal: Refusal; readonly value?: undefined; readonly etag?: undefined }

/** Path, query and body of a call are checked against the published document; its answer is what the contract says, as the API's own tests demand. */
interface Called {
  readonly data?: unknown
  readonly error?: unknown
  readonly response: Response
}

/** Waits for a call and puts its end into one shape; a call without answer (no network) is refused with status 0. */
export async function answer<Value>(call: Promise<Called>): Promise<Answer<Value>> {
  let called: Called
  try {
    called = await call
  } catch {
    return { refusal: { status: 0 } }
  }
  const { data, error, response } = called
  if (response.ok) return { value: data as Value, etag: response.headers.get('etag') ?? undefined }
  return { refusal: asRefusal(error, response.status) }
}

export function asRefusal(error: unknown, status: number): Refusal {
  if (typeof error !== 'object' || error === null) return { status }
  const { type, title, detail, errors } = error as Partial<Problem>
  // a body's field is named /body/plate where the whole request was looked at, and /plate where only the body was
  return { status, type, title, detail, errors: errors?.map((field) => ({ ...field, path: field.path.replace(/^\/body(?=\/|$)/, '') })) }
}

/** The last part of a problem's type: `stale`, `wrong-state`. */
export function problemCode(refusal: Refusal | undefined): string | undefined {
  return refusal?.type?.split('/').at(-1)
}
