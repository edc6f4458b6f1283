import autocannon from 'autocannon'
import { v7 } from 'uuid'

/** What one run asks for. It runs in a process of its own: the load must not share the server's event loop. */
export type LoadOrder = {
  readonly url: string
  readonly seconds: number
  readonly connections: number
  readonly token?: string
  /** Paths to take in turn; `{id}` becomes a new identifier each time. None: the url itself. */
  readonly puts?: readonly string[]
}
export type LoadResult = { readonly perSecond: number; readonly p50: number; readonly p99: number; readonly bad: number }

const order = JSON.parse(process.argv[2] ?? '{}') as LoadOrder
const { puts } = order
let turn = 0
const headers = { ...(order.token === undefined ? {} : { authorization: `Bearer ${order.token}` }), ...(puts === undefined ? {} : { 'content-type': 'application/json' }) }
const result = await autocannon({
  url: order.url,
  connections: order.connections,
  duration: order.seconds,
  headers,
  ...(puts === undefined ? {} : { requests: [{ method: 'PUT', setupRequest: (request) => ({ ...request, path: nextPath(puts), body: body() }) }] }),
})
const answer: LoadResult = { perSecond: result['2xx'] / result.duration, p50: result.latency.p50, p99: result.latency.p99, bad: result.non2xx + result.errors + result.timeouts }
process.stdout.write(JSON.stringify(answer))

function nextPath(paths: readonly string[]): string {
  return (paths[turn++ % paths.length] ?? '').replace('{id}', v7())
}

function body(): string {
  return JSON.stringify({ reading: { test: 'compression', cylinder: (turn % 4) + 1, pressure: { value: 150 + (turn % 17), unit: 'psi' } }, takenAt: new Date().toISOString() })
}
