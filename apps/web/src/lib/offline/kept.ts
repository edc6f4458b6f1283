import type { Answer } from '#lib/api/answer.ts'
import { database } from './database.ts'
import { request } from './request.ts'

/** An answer with its age: `keptAt` is set when it comes from this device and not from the server just now. */
export type Kept<T> = Answer<T> & { readonly keptAt?: number }

/** How long an answer stays good for working without network: a day and a bit, since a day must not end at its last minute. */
const KEEP_MS = 48 * 3_600_000

/** GET that also works without network: asks the server first, and falls back on what it answered last. A refusal (403, 404) is not papered over. */
export async function getKept<T>(path: string, options: { readonly timeoutMs?: number } = {}): Promise<Kept<T>> {
  const answer = await request<T>('GET', path, undefined, options)
  if (answer.refusal === undefined) {
    await keep(path, answer.value)
    return answer
  }
  if (answer.refusal.status !== 0 && answer.refusal.status !== 401 && answer.refusal.status < 500) return answer
  const kept = await recall<T>(path)
  return kept ? { value: kept.value, etag: undefined, keptAt: kept.keptAt } : answer
}

/** What is kept for a path, without asking the server. */
export async function recall<T>(path: string): Promise<{ value: T; keptAt: number } | undefined> {
  try {
    const kept = await (await database()).get('kept', path)
    return kept && { value: kept.value as T, keptAt: kept.keptAt }
  } catch {
    return undefined
  }
}

/** Keeps a value for a path; also used for records made here that the server has not seen yet. */
export async function keep(path: string, value: unknown): Promise<void> {
  try {
    await (await database()).put('kept', { path, keptAt: Date.now(), value: structuredClone(value) })
  } catch {
    // full or refused storage: working without network suffers, working with one does not
  }
}

/** Drops what is older than two days. */
export async function forgetOld(now = Date.now()): Promise<void> {
  const store = (await database()).transaction('kept', 'readwrite').store
  for (let cursor = await store.index('keptAt').openCursor(IDBKeyRange.upperBound(now - KEEP_MS)); cursor; cursor = await cursor.continue()) await cursor.delete()
}
