/** One line of input; null in place of a line that was too long to keep. */
export type Line = string | null

/** Longest line that is read: a case at its limits (200,000 samples, 500 readings) stays well below. */
export const LONGEST_LINE = 16 * 1024 * 1024

/**
 * Splits a stream of bytes into lines without blank ones, in groups as they arrive. Memory stays bounded: what is past the longest
 * line is dropped, and the line comes out as null.
 */
export async function* splitLines(input: AsyncIterable<Uint8Array>, longest = LONGEST_LINE): AsyncGenerator<Line[]> {
  const decoder = new TextDecoder()
  let rest = ''
  let tooLong = false
  const take = (piece: string, lines: Line[], ended: boolean): void => {
    if (!tooLong && rest.length + piece.length > longest) {
      tooLong = true
      rest = ''
    }
    if (!tooLong) rest += piece
    if (!ended) return
    if (tooLong) lines.push(null)
    else if (rest.trim() !== '') lines.push(rest)
    rest = ''
    tooLong = false
  }
  for await (const chunk of input) {
    const lines: Line[] = []
    const text = decoder.decode(chunk, { stream: true })
    let from = 0
    for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
      take(text.slice(from, end), lines, true)
      from = end + 1
    }
    take(text.slice(from), lines, false)
    if (lines.length > 0) yield lines
  }
  const last: Line[] = []
  take(decoder.decode(), last, true)
  if (last.length > 0) yield last
}
