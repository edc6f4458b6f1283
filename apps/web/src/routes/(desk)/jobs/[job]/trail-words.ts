import type { EnteredReading, Suggestion, TrailEntry } from '@evenbore/contract'
import type { Reader } from '@evenbore/words/reader.ts'
import { suggestionWords } from '#lib/evaluate/suggestion-words.ts'
import { beliefSteps } from '#lib/evidence/belief-steps.ts'
import { inHundred } from '@evenbore/words/format/number.ts'
import { readingWords } from '@evenbore/words/sentences/reading.ts'

interface Body {
  /** The reading as it was entered (a current trace without its samples). */
  readonly entered?: EnteredReading
  readonly suggestion?: Suggestion
  readonly [field: string]: unknown
}

/** Fields of a trail entry's body that are sentences already. */
const SENTENCES = ['text', 'complaint', 'seen', 'reason', 'question', 'instead', 'note', 'event'] as const

/** What the model believed most just then: the likeliest faults, with how likely. */
function beliefWords(entry: TrailEntry, { words, locale }: Reader): string[] {
  const faults = [...(beliefSteps([entry])[0]?.faults ?? [])].filter(([, probability]) => probability >= 0.1)
  return faults
    .sort(([, a], [, b]) => b - a)
    .slice(0, 2)
    .map(([of, probability]) => {
      const [a, b] = of.split('-').map(Number) as [number, number | undefined]
      return `${b === undefined ? words.job.faultAt(a) : words.job.gasketAt(a, b)} ${words.ui.inHundred(inHundred(probability, locale))}`
    })
}

/** What an entry of the trail says beyond its kind; bodies are as they were written in their day, so every field may be missing. */
export function trailWords(entry: TrailEntry, reader: Reader): string {
  if (typeof entry.body !== 'object' || entry.body === null) return ''
  const body = entry.body as Body
  const parts: string[] = []
  if (entry.kind === 'evaluation') parts.push(...beliefWords(entry, reader))
  if (typeof body.entered === 'object' && body.entered !== null && 'samples' in body.entered === (body.entered.test === 'cranking-current')) parts.push(readingWords(body.entered, reader))
  if (typeof body.suggestion === 'object' && body.suggestion !== null && Array.isArray(body.suggestion.tests)) parts.push(suggestionWords(body.suggestion, reader.words))
  if (typeof body['number'] === 'number') parts.push(reader.words.job.version(body['number']))
  for (const field of SENTENCES) if (typeof body[field] === 'string') parts.push(reader.words.ui.quoted(body[field]))
  return parts.join(', ')
}
