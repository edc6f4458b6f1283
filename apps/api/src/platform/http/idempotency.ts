import { createHash } from 'node:crypto'
import canonicalize from 'canonicalize'
import type { FastifyRequest } from 'fastify'
import type { Database, Transaction } from '../database/database.ts'
import { newId } from '../ids.ts'
import { problem } from '../problems/problem.ts'

/** The answer of an action, kept with its key. */
export type KeptAnswer = { readonly status: number; readonly body: unknown }

/**
 * Runs an action that makes money or permission once for each key: the same request again gets the first answer word for word, also
 * when both come at the same moment. Key, records and events commit together; an action that fails leaves no key behind.
 * @param actorKey who asks, such as `person:<id>`: keys of different callers never meet
 * @throws problem `idempotency-key-needed` (400), `id-reused` (409) when the key came with another request
 */
export async function once(
  database: Database,
  request: FastifyRequest,
  actorKey: string,
  action: (tx: Transaction) => Promise<KeptAnswer>,
): Promise<KeptAnswer> {
  const key = keyOf(request)
  const requestHash = hashOf([request.method, request.url, request.body ?? null])
  return database.transaction(async (tx) => {
    // A second request with the key waits here until the first has committed or failed.
    const claimed = await tx.$executeRaw`
      INSERT INTO idempotency_key (id, actor_key, key, request_hash, status, body) VALUES (${newId()}::uuid, ${actorKey}, ${key}, ${requestHash}, 0, '')
      ON CONFLICT (actor_key, key) DO NOTHING`
    if (claimed === 0) {
      const kept = await tx.idempotencyKey.findUniqueOrThrow({ where: { actorKey_key: { actorKey, key } } })
      if (kept.requestHash !== requestHash) throw problem('id-reused', 'This Idempotency-Key was sent before with another request.')
      return { status: kept.status, body: JSON.parse(kept.body) as unknown }
    }
    const answer = await action(tx)
    await tx.idempotencyKey.update({ where: { actorKey_key: { actorKey, key } }, data: { status: answer.status, body: JSON.stringify(answer.body ?? null) } })
    return answer
  })
}

/** The same for an action that takes a key where one is sent and runs without one, such as making a customer over a weak network. */
export async function onceWhereKeyed<T>(database: Database, request: FastifyRequest, actorKey: string, action: (tx: Transaction) => Promise<T>): Promise<T> {
  if (request.headers['idempotency-key'] === undefined) return database.transaction(action)
  return (await once(database, request, actorKey, async (tx) => ({ status: 201, body: await action(tx) }))).body as T
}

function keyOf(request: FastifyRequest): string {
  const key = request.headers['idempotency-key']
  if (typeof key !== 'string' || key.length < 8 || key.length > 200) {
    throw problem('idempotency-key-needed', 'Send an Idempotency-Key of 8 to 200 characters that you use for this one action, such as a UUID.')
  }
  return key
}

/** Equal for bodies that differ in spacing or order of fields only (RFC 8785). */
export function hashOf(value: unknown): string {
  return createHash('sha256').update(canonicalize(value) ?? '').digest('hex')
}
