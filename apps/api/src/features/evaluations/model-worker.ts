import type { Case, Comparison, Evaluation, Pair } from '@evenbore/contract'
import { compare, evaluate } from '@evenbore/diagnosis'

/** What a thread of `model.ts` is asked: one case, with or without the ranking of next tests and the reasons; or two to compare. */
export type Question = { readonly given: Case; readonly ranking: boolean } | { readonly pair: Pair }

/** Runs in a thread of its own, so that a request for an opinion never holds up a reading on its way to the disk. */
export default function answer(question: Question): Evaluation | Comparison {
  return 'pair' in question ? compare(question.pair) : evaluate(question.given, undefined, { ranking: question.ranking })
}
