import { readFile } from 'node:fs/promises'
import { resolve } from 'node:path'
import type { Answer } from './answer.ts'

/** Exit codes of the command line: a bad case, and a file that cannot be opened or wrong usage. */
export const EXIT = { good: 0, badCase: 2, usage: 3 } as const

/** Says how the program is used and sets its exit code. */
export function wrongUsage(usage: string): void {
  process.stderr.write(`${usage}\n`)
  process.exitCode = EXIT.usage
}

/** Answers one file: the result on standard output, or the errors of a bad case on standard error. Paths start where the user stands. */
export async function answerFile(path: string, answer: (text: string) => Answer): Promise<void> {
  let text: string
  try {
    text = await readFile(resolve(process.env.INIT_CWD ?? process.cwd(), path), 'utf8')
  } catch (error) {
    process.stderr.write(`Cannot open ${path}: ${error instanceof Error ? error.message : String(error)}\n`)
    process.exitCode = EXIT.usage
    return
  }
  const { json, good } = answer(text)
  ;(good ? process.stdout : process.stderr).write(`${json}\n`)
  process.exitCode = good ? EXIT.good : EXIT.badCase
}
