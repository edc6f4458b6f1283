import { randomUUID } from 'node:crypto'
import type { IncomingMessage } from 'node:http'

const TRACEPARENT = /^[0-9a-f]{2}-([0-9a-f]{32})-[0-9a-f]{16}-[0-9a-f]{2}(-|$)/

/** The trace that a request belongs to: that of its `traceparent` header (W3C Trace Context), or a new one. Logged, and named in problems. */
export function traceOf(request: { readonly headers: IncomingMessage['headers'] }): string {
  const header = request.headers['traceparent']
  const given = typeof header === 'string' ? TRACEPARENT.exec(header)?.[1] : undefined
  return given !== undefined && !/^0+$/.test(given) ? given : randomUUID().replaceAll('-', '')
}
