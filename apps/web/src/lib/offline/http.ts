import type { Refusal } from '#lib/ui/refusal.ts'
import { authorisation } from './authorisation.ts'

/** What the server answered, or why not. Status 0: no answer came, and nobody knows whether the request arrived. */
export type Answer<T> = { readonly ok: true; readonly status: number; readonly value: T; readonly etag: string | undefined } | { readonly ok: false; readonly problem: Refusal; readonly retryAfter?: number }

export interface CallOptions {
  readonly body?: unknown
  /** The version being edited; the record's `ETag`, quotes included, or its version number. */
  readonly ifMatch?: string | number
  /** For actions that create money or permission: the same key again does nothing twice. */
  readonly idempotencyKey?: string
  readonly headers?: Readonly<Record<string, string>>
  readonly signal?: AbortSignal
  /** Whose name the request carries: the person here, else the tablet (default); the tablet alone; nobody. */
  readonly as?: 'whoever' | 'tablet' | 'nobody'
  readonly timeoutMs?: number
}

/** Difference of this device's clock from the server's in ms, seen in the last answer; readings keep both clocks. */
export const clock = { offsetMs: 0 }

/** Called after each attempt: true when the server answered at all. */
export const contact = { heard: (_answered: boolean): void => {} }

/**
 * One request to /v1 and its answer, typed by the contract. An access token that ran out is renewed once.
 * Never throws for what the network or the server did.
 *
 * @example const answer = await call<Floor>('GET', `/v1/garages/${garage}/floor`)
 */
export async function call<T>(method: string, path: string, options: CallOptions = {}): Promise<Answer<T>> {
  const first = await attempt<T>(method, path, options)
  if (first.ok || first.problem.status !== 401 || (options.as ?? 'whoever') !== 'whoever') return first
  return (await authorisation.renew()) === 'renewed' ? attempt<T>(method, path, options) : first
}

async function attempt<T>(method: string, path: string, options: CallOptions): Promise<Answer<T>> {
  const headers: Record<string, string> = { accept: 'application/json', ...options.headers }
  const as = options.as ?? 'whoever'
  const bearer = as === 'nobody' ? undefined : as === 'tablet' ? authorisation.tabletToken() : await authorisation.bearer()
  if (bearer) headers['authorization'] = `Bearer ${bearer}`
  if (options.body !== undefined) headers['content-type'] = 'application/json'
  if (options.ifMatch !== undefined) headers['if-match'] = typeof options.ifMatch === 'number' ? `"${options.ifMatch}"` : options.ifMatch
  if (options.idempotencyKey) headers['idempotency-key'] = options.idempotencyKey
  const limit = AbortSignal.timeout(options.timeoutMs ?? 20_000)
  try {
    const sent = Date.now()
    const response = await fetch(path, {
      method,
      headers,
      body: options.body === undefined ? undefined : JSON.stringify(options.body),
      signal: options.signal ? AbortSignal.any([options.signal, limit]) : limit,
      credentials: 'same-origin',
      cache: 'no-store',
    })
    contact.heard(true)
    noteClock(response, sent)
    return await read<T>(response)
  } catch {
    contact.heard(false)
    return { ok: false, problem: { status: 0 } }
  }
}

async function read<T>(response: Response): Promise<Answer<T>> {
  const type = response.headers.get('content-type') ?? ''
  if (response.ok) {
    const value = (response.status === 204 || !type.includes('json') ? undefined : await response.json()) as T
    return { ok: true, status: response.status, value, etag: response.headers.get('etag') ?? undefined }
  }
  const body: unknown = type.includes('json') ? await response.json().catch(() => undefined) : undefined
  const problem: Refusal = { ...(typeof body === 'object' && body !== null ? (body as Refusal) : {}), status: response.status }
  const wait = Number(response.headers.get('retry-after'))
  return { ok: false, problem, ...(wait > 0 ? { retryAfter: wait } : {}) }
}

function noteClock(response: Response, sent: number): void {
  const date = Date.parse(response.headers.get('date') ?? '')
  if (!Number.isNaN(date)) clock.offsetMs = (sent + Date.now()) / 2 - date
}

/** The last part of a problem's type: "session-closed" of "/docs/problems/session-closed". */
export function problemCode(problem: Refusal): string {
  return problem.type?.split('/').at(-1) ?? ''
}
