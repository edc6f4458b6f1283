const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/u
/** Controls, marks of direction, joiners and selectors: nothing of them is seen on paper, and some turn what stands beside them. */
const UNSEEN = /(?![\n\t])[\p{Cc}\p{Cf}\p{Variation_Selector}\u2028\u2029]/gu
const MISSING = '\u25a1'

/**
 * A text as the typeface can print it: what it has no sign for (emoji, rare scripts) becomes one open square each, and nothing is lost
 * silently. Words written from right to left are put in their order here; within a word the typesetter does so itself.
 */
export function printable(text: string, hasSign: (codePoint: number) => boolean): string {
  const seen = text.normalize('NFC').replaceAll(UNSEEN, '').replaceAll(/\p{Emoji_Modifier}/gu, '')
  const signs = [...seen].map((sign) => (sign === '\n' || sign === '\t' || hasSign(sign.codePointAt(0)!) ? sign : MISSING)).join('')
  return RIGHT_TO_LEFT.test(signs) ? signs.split('\n').map(inOrder).join('\n') : signs
}

/** Turns each run of right-to-left words around, since lines are filled from the left. */
function inOrder(line: string): string {
  const out: string[] = []
  let run: string[] = []
  for (const word of line.split(' ')) {
    if (RIGHT_TO_LEFT.test(word)) run.unshift(word)
    else {
      out.push(...run, word)
      run = []
    }
  }
  return [...out, ...run].join(' ')
}
