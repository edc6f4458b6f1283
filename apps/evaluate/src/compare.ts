// Two sessions of one engine from a file: better, the same or worse.
import { answerPair } from './answer.ts'
import { answerFile, wrongUsage } from './one-file.ts'

const [path, ...rest] = process.argv.slice(2)

if (path === undefined || rest.length > 0 || path.startsWith('-')) wrongUsage('Usage: npm run -s compare -- pair.json')
else await answerFile(path, answerPair)
