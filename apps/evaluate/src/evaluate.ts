// One case from a file, or with --lines one case a line on standard input and one answer a line, in order.
import './compile-cache.ts'
import { EXIT, answerFile, wrongUsage } from './one-file.ts'

const USAGE = 'Usage: npm run -s evaluate -- case.json\n       npm run -s evaluate -- --lines < cases.jsonl'
const [argument, ...rest] = process.argv.slice(2)

if (argument === undefined || rest.length > 0 || (argument.startsWith('-') && argument !== '--lines')) {
  wrongUsage(USAGE)
} else if (argument === '--lines') {
  // workers do the computing, so this process need not load the model
  const { answerLines } = await import('./lines.ts')
  stopWhenNobodyReads(process.stdout)
  await answerLines(process.stdin, process.stdout)
  process.exitCode = EXIT.good
} else {
  const { answerCase } = await import('./answer.ts')
  await answerFile(argument, answerCase)
}

/** A reader that has seen enough (`head -1`) closes the pipe: that is no error. */
function stopWhenNobodyReads(output: NodeJS.WriteStream): void {
  output.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? EXIT.good : 1))
}
