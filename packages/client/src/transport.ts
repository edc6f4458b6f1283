import { backoffMs, pause, PATIENCE, retryAfterMs, type Patience } from './backoff.ts'

/** Where a transport gets its access token, and a new one when the old one has run out. */
export interface TokenSource {
  /** The token to send, or undefined for none. */
  readonly access: () => string | undefined | Promise<string | undefined>
  /** Called after a 401 with the token that was refused; true when there is another one to try. */
  readonly renew: (refused: string | undefined) => Promise<boolean>
}

export interface TransportOptions {
  readonly fetch?: typeof globalThis.fetch
  readonly tokens?: TokenSource
  readonly patience?: Partial<Patience>
  /** For tests: how to wait, and where chance comes from. */
  readonly wait?: (ms: number, signal?: AbortSignal | null) => Promise<void>
  readonly random?: () => number
}

/** Methods that may be sent again without harm (RFC 9110 section 9.2.2). */
const IDEMPOTENT = new Set(['GET', 'HEAD', 'PUT', 'DELETE', 'OPTIONS'])
/** Actions that the server does once for each Idempotency-Key. */
const KEYED = /\/(approval|send-back|refusal|withdrawal|authorisations)$/

/** True when the request may be sent again although nobody knows whether it arrived. */
function repeatable(request: Request): boolean {
  return IDEMPOTENT.has(request.method) || (request.method === 'POST' && KEYED.test(new URL(request.url).pathname))
}

/**
 * A `fetch` that carries the access token and renews it, makes an Idempotency-Key for each POST, and asks again with back-off:
 * after 429 and 503 always (nothing was done), after a broken connection only what may be sent twice.
 * A sign-in (which carries no token) is never renewed. The last answer or error is the caller's.
 */
export function transport(options: TransportOptions = {}): (request: Request) => Promise<Response> {
  const patience = { ...PATIENCE, ...options.patience }
  const wait = options.wait ?? pause
  const random = options.random ?? Math.random
  const send = options.fetch ?? ((request: Request) => globalThis.fetch(request))

  return async (given) => {
    if (given.method === 'POST' && !given.headers.has('idempotency-key')) given.headers.set('idempotency-key', crypto.randomUUID())
    const ownToken = given.headers.has('authorization')
    // a path that opens a sign-in says who asks by itself
    const carries = !ownToken && !isOpenPath(given.url)
    let renewed = false
    for (let attempt = 1; ; attempt += 1) {
      const request = given.clone()
      const token = carries ? await options.tokens?.access() : undefined
      if (token !== undefined) request.headers.set('authorization', `Bearer ${token}`)
      let waitMs: number | undefined
      try {
        const response = await send(request)
        if (response.status === 401 && carries && !renewed && options.tokens) {
          renewed = true
          if (await options.tokens.renew(token)) {
            await response.body?.cancel()
            attempt -= 1
            continue
          }
        }
        if ((response.status !== 429 && response.status !== 503) || attempt >= patience.attempts) return response
        const asked = retryAfterMs(response.headers.get('retry-after'), Date.now())
        if (asked !== undefined && asked > patience.longestWaitMs) return response
        await response.body?.cancel()
        waitMs = asked
      } catch (error) {
        if (given.signal.aborted || attempt >= patience.attempts || !repeatable(given)) throw error
      }
      await wait(waitMs ?? backoffMs(attempt, patience.longestWaitMs, random()), given.signal)
    }
  }
}

const OPEN = ['/v1/sign-in', '/v1/sign-in/refresh', '/v1/token', '/v1/keys', '/v1/owner-setup', '/v1/tablets/enrol', '/v1/openapi.json']
function isOpenPath(url: string): boolean {
  return OPEN.includes(new URL(url).pathname)
}
