// Runs one of our TypeScript programs with the installed Node 24, whatever Node was called with:
//   node deploy/start/run.mjs apps/evaluate/src/evaluate.ts case.json
// Installs first where nothing is installed yet; standard output belongs to the program alone.
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { ensure } from './ensure.mjs'
import { COMMANDS, ROOT, environmentInside } from './progress.mjs'

const [program, ...rest] = process.argv.slice(2)
if (program === undefined) {
  process.stderr.write('Usage: node deploy/start/run.mjs PROGRAM.ts [arguments]\n')
  process.exit(3)
}
await ensure({ web: false, quiet: true })

const node = join(COMMANDS, process.platform === 'win32' ? 'node.exe' : 'node')
const env = { NODE_COMPILE_CACHE: join(ROOT, '.cache', 'compiled'), ...environmentInside() } // a later call starts in half the time
const child = spawn(node, [join(ROOT, program), ...rest], { stdio: 'inherit', env })
// The terminal signals the program itself; this process only waits for its end.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal))
child.on('exit', (code, signal) => {
  process.exitCode = signal === null ? (code ?? 1) : 1
})
