import type { FastifyReply, FastifyRequest } from 'fastify'
import { problem } from '../problems/problem.ts'

/** Sets the ETag of a record that can be edited: its version (RFC 9110 section 8.8.3). */
export function setVersion(reply: FastifyReply, version: number): void {
  reply.header('etag', `"${version}"`)
}

/**
 * The version that an edit is based on, from `If-Match: "3"`.
 * @throws problem `if-match-needed` (428) without one, `stale` (412) when it is none of ours
 */
export function expectedVersion(request: FastifyRequest): number {
  const header = request.headers['if-match']
  if (header === undefined || header.trim() === '*') {
    throw problem('if-match-needed', 'Send If-Match with the ETag that you read, such as If-Match: "3".')
  }
  const version = /^"(\d{1,9})"$/.exec(header.trim())?.[1]
  if (version === undefined) throw problem('stale', `If-Match holds ${header.slice(0, 40)}, which is not the present version.`)
  return Number(version)
}

/**
 * Stops an edit of a record that somebody changed meanwhile.
 * @throws problem `stale` (412)
 */
export function demandVersion(present: number, expected: number): void {
  if (present !== expected) throw problem('stale', `You edit version ${expected}; it is at version ${present} now. Read it again.`)
}

/**
 * The row that an `UPDATE ... WHERE version = expected` changed; none means that somebody was faster.
 * @throws problem `stale` (412)
 */
export function demandChanged<Row>(rows: readonly Row[]): Row {
  const row = rows[0]
  if (row === undefined) throw problem('stale', 'Somebody else changed this record meanwhile. Read it again.')
  return row
}
