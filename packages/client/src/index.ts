/** Typed client of the Evenbore API: tokens, retries, idempotency keys, pages, live events. For Node 24 and browsers. */
export { createClient, type Client, type ClientOptions } from './client.ts'
export { Session, problemOf, type Credentials, type SignedIn } from './tokens.ts'
export { pages, type Page } from './pages.ts'
export { eventStream, StreamRefused, type EventStreamOptions } from './events.ts'
export { transport, type TokenSource, type TransportOptions } from './transport.ts'
export { backoffMs, retryAfterMs, type Patience } from './backoff.ts'
export type { paths, components } from './openapi.ts'
