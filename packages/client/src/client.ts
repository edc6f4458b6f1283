import type { LiveEvent } from '@evenbore/contract'
import createFetchClient, { type Client as FetchClient } from 'openapi-fetch'
import type { Patience } from './backoff.ts'
import { eventStream, type EventStreamOptions } from './events.ts'
import type { paths } from './openapi.ts'
import { Session, type SessionOptions } from './tokens.ts'
import { transport } from './transport.ts'

export interface ClientOptions {
  /** Scheme, host and port without a slash at the end; the documents' paths begin with /v1. */
  readonly baseUrl: string
  /** Where the refresh token is kept: by the browser in a cookie, or in memory (programs). Default: in memory. */
  readonly refresh?: 'cookie' | 'body'
  readonly fetch?: typeof globalThis.fetch
  readonly patience?: Partial<Patience>
  /** See `SessionOptions.exclusive`. */
  readonly exclusive?: SessionOptions['exclusive']
  /** See `SessionOptions.leaving`. */
  readonly leaving?: SessionOptions['leaving']
}

/** Typed calls of every route (`GET('/v1/jobs/{job}', ...)`), the sign-in they carry, and the live events. */
export interface Client extends FetchClient<paths> {
  readonly session: Session
  /** Live events of every garage the caller may see, resumed across broken connections. */
  readonly events: (options: Pick<EventStreamOptions, 'signal' | 'lastEventId' | 'onConnection' | 'silenceMs'>) => AsyncGenerator<LiveEvent, void, undefined>
  /** A plain request with token and retries, for what is not JSON. */
  readonly send: (request: Request) => Promise<Response>
}

/**
 * A client of one Evenbore server, for Node 24 and browsers. Calls answer `{ data }` or `{ error }` (a problem document), with the
 * `response` beside; a server that cannot be reached throws what `fetch` throws.
 *
 * @example
 * const client = createClient({ baseUrl: 'http://127.0.0.1:4080' })
 * await client.session.signIn({ kind: 'app', clientId, clientSecret })
 * const { data, error } = await client.GET('/v1/jobs/{job}', { params: { path: { job } } })
 */
export function createClient(options: ClientOptions): Client {
  const baseUrl = options.baseUrl.replace(/\/+$/, '')
  const plain = transport({ fetch: options.fetch, patience: options.patience })
  const session = new Session({ baseUrl, send: plain, refresh: options.refresh ?? 'body', exclusive: options.exclusive, leaving: options.leaving })
  const send = transport({ fetch: options.fetch, patience: options.patience, tokens: session })
  const calls = createFetchClient<paths>({ baseUrl, fetch: send, credentials: 'same-origin' })
  return Object.assign(calls, {
    session,
    send,
    events: (given: Parameters<Client['events']>[0]) => eventStream({ ...given, url: `${baseUrl}/v1/events`, send }),
  })
}
