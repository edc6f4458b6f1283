import type { Case, Evaluation } from '@evenbore/contract'
import { evaluate } from '@evenbore/diagnosis'

/** What a thread of `model.ts` is asked: one case, with or without the ranking of next tests and the reasons. */
export type Question = { readonly given: Case; readonly ranking: boolean }

/** Runs in a thread of its own, so that a request for an opinion never holds up a reading on its way to the disk. */
export default function answer({ given, ranking }: Question): Evaluation {
  return evaluate(given, undefined, { ranking })
}
