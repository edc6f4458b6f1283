import './compile-cache.ts'
import { parentPort } from 'node:worker_threads'
import { INVALID_INPUT } from '@evenbore/contract/diagnosis'
import { answerCase, problemJson } from './answer.ts'
import { LONGEST_LINE, type Line } from './split-lines.ts'

/** Answers one line, whatever it holds: the lines after it must go on. */
function answerLine(line: Line): string {
  if (line === null) return problemJson({ ...INVALID_INPUT, errors: [{ path: '', expected: `a line of at most ${LONGEST_LINE} characters`, got: 'a longer one' }] })
  try {
    return answerCase(line).json
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`)
    return problemJson({ type: '/problems/internal', title: 'Something broke on our side', errors: [] })
  }
}

parentPort!.on('message', (lines: Line[]) => parentPort!.postMessage(lines.map(answerLine)))
