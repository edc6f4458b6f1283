import { numberFormat } from '@evenbore/words/format/kept-formats.ts'

/** The digits of a value being entered. Pure: what one press makes of the text so far. */

/** Longest text that a reading needs: "1450.00". */
const LONGEST = 7

/** A key of the pad: a digit, the decimal mark, one back, or all away. */
export type PadKey = '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | 'mark' | 'back' | 'clear'

/**
 * The text after a key. A second decimal mark and an eighth character do nothing; a leading zero gives way to the digit after it.
 *
 * @example press('14', '8', ',') // "148"
 */
export function press(typed: string, key: PadKey, mark: '.' | ','): string {
  if (key === 'clear') return ''
  if (key === 'back') return typed.slice(0, -1)
  if (key === 'mark') return /[.,]/.test(typed) || typed.length >= LONGEST ? typed : `${typed === '' ? '0' : typed}${mark}`
  if (typed === '0') return key
  return typed.length >= LONGEST ? typed : typed + key
}

/** The decimal mark of a locale. */
export function markOf(locale: string): '.' | ',' {
  return numberFormat(locale, {}).format(1.5).includes(',') ? ',' : '.'
}

/** What of a hardware key concerns the pad. */
export function keyOf(key: string): PadKey | undefined {
  if (/^\d$/.test(key)) return key as PadKey
  if (key === '.' || key === ',') return 'mark'
  if (key === 'Backspace') return 'back'
  return undefined
}
