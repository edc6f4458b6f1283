import rateLimit from '@fastify/rate-limit'
import plugin from 'fastify-plugin'
import { problem } from '../problems/problem.ts'

/** What the service takes at most; printed in the documentation at /docs/limits. */
export const LIMITS = { bodyBytes: 1_048_576, jsonDepth: 40, pathParameterCharacters: 200, requestSeconds: 60, headerBytes: 16_384 } as const

/**
 * Limits how often one sign-in, or signed out one address, may ask. In each process for itself: behind several processes the true
 * limit is a multiple; locking out after wrong passwords and PINs is counted in the database instead.
 */
export const rateLimits = plugin<{ requestsPerMinute: number }>(
  async (app, { requestsPerMinute }) => {
    await app.register(rateLimit, {
      global: true,
      max: requestsPerMinute,
      timeWindow: 60_000,
      cache: 10_000,
      keyGenerator: (request) => request.headers.authorization ?? request.ip,
      addHeaders: { 'x-ratelimit-limit': false, 'x-ratelimit-remaining': false, 'x-ratelimit-reset': false, 'retry-after': true },
      addHeadersOnExceeding: { 'x-ratelimit-limit': false, 'x-ratelimit-remaining': false, 'x-ratelimit-reset': false },
      errorResponseBuilder: (_request, { max, ttl }) =>
        problem('too-many-requests', `At most ${max} a minute. Try again in ${Math.max(1, Math.ceil(ttl / 1000))} seconds.`),
    })
  },
  { name: 'rate-limits' },
)
