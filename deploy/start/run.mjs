// Runs one of our TypeScript programs with the installed Node 24, whatever Node was called with:
//   node deploy/start/run.mjs apps/evaluate/src/evaluate.ts case.json
// Installs first where nothing is installed yet; standard output belongs to the program alone.
import { ensure } from './ensure.mjs'
import { runProgram } from './program.mjs'

const [program, ...args] = process.argv.slice(2)
if (program === undefined) {
  process.stderr.write('Usage: node deploy/start/run.mjs PROGRAM.ts [arguments]\n')
  process.exit(3)
}
await ensure({ web: false, quiet: true })
runProgram(program, args)
