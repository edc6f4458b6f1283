// Runs a TypeScript program of ours with the installed Node 24, and ends as it ends.
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { COMMANDS, ROOT, environmentInside } from './progress.mjs'

/** @param {string} program path from the root of the clone @param {string[]} args */
export function runProgram(program, args) {
  const node = join(COMMANDS, process.platform === 'win32' ? 'node.exe' : 'node')
  // What is stripped of its types and compiled is kept: a later call starts in half the time.
  const env = { NODE_COMPILE_CACHE: join(ROOT, '.cache', 'compiled'), ...environmentInside() }
  const child = spawn(node, [join(ROOT, program), ...args], { stdio: 'inherit', env })
  // The terminal signals the program itself, and a signal that comes here alone is passed on; this process only waits for the end.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal))
  child.on('exit', (code, signal) => {
    process.exitCode = signal === null ? (code ?? 1) : 1
  })
}
