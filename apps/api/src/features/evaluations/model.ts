import { availableParallelism } from 'node:os'
import type { Case, Comparison, Evaluation, Pair } from '@evenbore/contract'
import { Piscina } from 'piscina'
import { hashOf } from '../../platform/http/idempotency.ts'
import { problem } from '../../platform/problems/problem.ts'
import type { Question } from './model-worker.ts'

/** One core stays with the requests. Idle threads do not keep the process alive. */
const THREADS = Math.max(1, availableParallelism() - 1)
/** Beyond this many waiting cases an answer would come too late to be of use. */
const MOST_WAITING = 200
const MOST_REMEMBERED = 300

let threads: Piscina<Question, unknown> | undefined
/** By hash of case, and whether the ranking was asked for. The model is one and the same as long as the process lives. */
const remembered = new Map<string, Promise<Evaluation>>()

/** A case with its hash (RFC 8785 form): equal cases have equal hashes. */
export type HashedCase = { readonly given: Case; readonly hash: string }

export function hashed(given: Case): HashedCase {
  return { given, hash: hashOf(given) }
}

/**
 * The model's opinion on a case, remembered or computed in a thread. `ranking` false leaves out next tests and reasons, which take
 * more than half of the time.
 * @throws problem `unavailable` while more cases wait than could be answered in time
 */
export function opinionOn({ given, hash }: HashedCase, ranking: boolean): Promise<Evaluation> {
  const key = `${hash} ${ranking}`
  const known = remembered.get(key)
  if (known !== undefined) {
    remembered.delete(key) // and again at the end: what was used last is forgotten last
    remembered.set(key, known)
    return known
  }
  const answer = ask({ given, ranking }) as Promise<Evaluation>
  if (remembered.size >= MOST_REMEMBERED) remembered.delete(remembered.keys().next().value!)
  remembered.set(key, answer)
  answer.catch(() => remembered.delete(key))
  return answer
}

/** What a retest shows against its baseline. */
export function comparisonOf(pair: Pair): Promise<Comparison> {
  return ask({ pair }) as Promise<Comparison>
}

function ask(question: Question): Promise<unknown> {
  threads ??= new Piscina({ filename: new URL('./model-worker.ts', import.meta.url).href, minThreads: 1, maxThreads: THREADS, maxQueue: MOST_WAITING, idleTimeout: 60_000 })
  if (threads.queueSize >= MOST_WAITING) throw problem('unavailable', 'Too many evaluations wait. Try again in a few seconds.', { headers: { 'retry-after': '5' } })
  return threads.run(question)
}
