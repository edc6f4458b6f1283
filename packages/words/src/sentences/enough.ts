import { en, type Words } from '../en.ts'
import type { Said } from './reasons.ts'

/**
 * Why enough is known, in the reader's language. The contract carries the sentence alone: English is the key to it, and a sentence of
 * an older model stands as it was written.
 */
export function enoughWords({ says }: { readonly says: string }, words: Words): Said {
  const why = (Object.keys(en.diagnosis.enoughBecause) as (keyof Words['diagnosis']['enoughBecause'])[]).find((each) => en.diagnosis.enoughBecause[each] === says)
  return why ? { text: words.diagnosis.enoughBecause[why], own: false } : { text: says, own: true }
}
