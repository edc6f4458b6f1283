import { describe, expect, it } from 'vitest'
import { type Line, splitLines } from './split-lines.ts'

async function linesOf(chunks: (string | Uint8Array)[], longest?: number): Promise<Line[]> {
  async function* feed(): AsyncGenerator<Uint8Array> {
    for (const chunk of chunks) yield typeof chunk === 'string' ? new TextEncoder().encode(chunk) : chunk
  }
  const lines: Line[] = []
  for await (const group of splitLines(feed(), longest)) lines.push(...group)
  return lines
}

describe('splitting a stream into lines', () => {
  it('joins what chunks cut, skips blank lines, needs no end of line at the end', async () => {
    expect(await linesOf(['a', 'b\nc', '\n\n  \n', 'd'])).toEqual(['ab', 'c', 'd'])
  })
  it('a letter cut in two stays whole', async () => {
    const bytes = new TextEncoder().encode('ä\nb')
    expect(await linesOf([bytes.subarray(0, 1), bytes.subarray(1)])).toEqual(['ä', 'b'])
  })
  it('a line that is too long comes out as null, and the next ones go on', async () => {
    expect(await linesOf(['aaaa', 'aaaa\nbb\n', 'cccccc\ndd'], 5)).toEqual([null, 'bb', null, 'dd'])
  })
})
