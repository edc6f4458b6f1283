import { type Case, type Checked, type DiagnosisProblem, type Pair, parseCase, parseJson, parsePair } from '@evenbore/contract/diagnosis'
import { compare, evaluate } from '@evenbore/diagnosis'

/** What one input is answered with: JSON text, and whether the input was good. */
export interface Answer {
  readonly json: string
  readonly good: boolean
}

function answer<T>(text: string, parse: (input: unknown) => Checked<T>, compute: (value: T) => unknown): Answer {
  // a byte order mark is no part of the JSON
  const checked = parseJson(text.startsWith('\uFEFF') ? text.slice(1) : text, parse)
  if (checked.error) return { json: problemJson(checked.error), good: false }
  return { json: JSON.stringify(compute(checked.value)), good: true }
}

/** A problem as the command line prints it. */
export function problemJson(error: DiagnosisProblem): string {
  return JSON.stringify({ error })
}

/** Evaluates a case given as JSON text; a bad case is answered with its errors. */
export function answerCase(text: string): Answer {
  return answer<Case>(text, parseCase, (value) => evaluate(value))
}

/** Compares two sessions given as JSON text. */
export function answerPair(text: string): Answer {
  return answer<Pair>(text, parsePair, (pair) => compare(pair))
}
