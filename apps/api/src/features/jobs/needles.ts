import { phoneDigits } from '../customers/service.ts'
import { plateKey } from '../vehicles/service.ts'

/** What a loosely typed search may mean; null where it cannot mean that. */
export interface Needles {
  /** A whole job code: "k27", "K 27" and "k-27" are K 27. */
  readonly code: string | null
  /** The number of a job code, said without its letter. */
  readonly number: string | null
  readonly plateKey: string | null
  /** Parts of a name, all of which must occur. */
  readonly words: readonly string[] | null
  /** Digits of a phone number, such as the last four. */
  readonly digits: string | null
}

/** Two digits would find every second customer. */
const FEWEST_DIGITS = 3

/** Reads a search as it is typed at the counter. */
export function needlesOf(typed: string): Needles {
  const text = typed.trim()
  const key = plateKey(text)
  const code = /^([A-Z])0*(\d{1,7})$/.exec(key)
  const digits = phoneDigits(text)
  const onlyPhone = /^[+()\d\s/.-]+$/.test(text)
  const words = text.split(/\s+/).filter((word) => /\p{L}/u.test(word))
  return {
    code: code === null ? null : `${code[1]} ${code[2]}`,
    number: /^\d{1,7}$/.test(text) ? String(Number(text)) : null,
    plateKey: key === '' ? null : key,
    words: words.length === 0 ? null : words,
    digits: onlyPhone && digits !== null && digits.length >= FEWEST_DIGITS ? digits : null,
  }
}
