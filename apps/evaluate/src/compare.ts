// Two sessions of one engine from a file: better, the same or worse.
import './compile-cache.ts'
import { answerFile, wrongUsage } from './one-file.ts'

const [path, ...rest] = process.argv.slice(2)

if (path === undefined || rest.length > 0 || path.startsWith('-')) {
  wrongUsage('Usage: npm run -s compare -- pair.json')
} else {
  const { answerPair } = await import('./answer.ts')
  await answerFile(path, answerPair)
}
