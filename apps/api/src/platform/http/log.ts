import { createWriteStream, existsSync, mkdirSync, renameSync, statSync } from 'node:fs'
import { dirname } from 'node:path'
import type { Writable } from 'node:stream'
import plugin from 'fastify-plugin'

const LARGEST_LOG_BYTES = 20_000_000

/** Where log lines go: a file, put aside at the start when it has grown large, or standard output. */
export function logStream(file: string | undefined): Writable {
  if (file === undefined) return process.stdout
  mkdirSync(dirname(file), { recursive: true })
  if (existsSync(file) && statSync(file).size > LARGEST_LOG_BYTES) renameSync(file, `${file}.1`)
  return createWriteStream(file, { flags: 'a', mode: 0o600 })
}

/**
 * One structured line for each answer: trace, method, route (its pattern, never the address with names or ids in it), status and time.
 * No personal data, no bodies, no addresses of people.
 */
export const requestLog = plugin(
  async (app) => {
    app.addHook('onResponse', (request, reply, done) => {
      const line = { method: request.method, route: request.routeOptions.url ?? 'unknown', status: reply.statusCode, ms: Math.round(reply.elapsedTime * 10) / 10 }
      if (reply.statusCode >= 500) request.log.error(line)
      else request.log.info(line)
      done()
    })
  },
  { name: 'request-log' },
)
