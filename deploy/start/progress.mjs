// Progress of slow steps, for people who wait: what is being done, and that it goes on.
import { spawn } from 'node:child_process'
import { dirname, join, resolve, sep } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder of the clone. */
export const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..')

/** Folder of the commands that the installed packages bring, Node 24 among them. */
export const COMMANDS = join(ROOT, 'node_modules', '.bin')

/** Ends the start with one sentence. */
export function failWith(sentence) {
  process.stderr.write(`${sentence}\n`)
  process.exit(1)
}

/**
 * Runs one slow step and says so, then again every ten seconds, then how long it took.
 * @param {{ title: string, command: string, args: string[], env?: NodeJS.ProcessEnv, quiet: boolean, failure: string }} step
 */
export async function runStep({ title, command, args, env = process.env, quiet, failure }) {
  const out = quiet ? process.stderr : process.stdout
  const began = Date.now()
  const seconds = () => Math.round((Date.now() - began) / 1000)
  out.write(`${title} ...\n`)
  const reminder = setInterval(() => out.write(`  still at it after ${seconds()} s\n`), 10_000)
  const { code, output } = await collect(command, args, env)
  clearInterval(reminder)
  if (code !== 0) {
    process.stderr.write(`${output.trimEnd()}\n`)
    failWith(failure)
  }
  out.write(`  done in ${((Date.now() - began) / 1000).toFixed(1)} s\n`)
}

/** A copy of the environment in which `node` and `npm` are the user's own, not those of the folder that is about to be replaced. */
export function environmentOutside() {
  const name = Object.keys(process.env).find((key) => key.toUpperCase() === 'PATH') ?? 'PATH'
  const separator = process.platform === 'win32' ? ';' : ':'
  const folders = (process.env[name] ?? '').split(separator).filter((folder) => !folder.includes(`node_modules${sep}.bin`))
  return { ...process.env, [name]: folders.join(separator) }
}

/** A copy of the environment in which `node` is the installed Node 24. */
export function environmentInside() {
  const name = Object.keys(process.env).find((key) => key.toUpperCase() === 'PATH') ?? 'PATH'
  const separator = process.platform === 'win32' ? ';' : ':'
  return { ...process.env, [name]: `${COMMANDS}${separator}${process.env[name] ?? ''}` }
}

function collect(command, args, env) {
  return new Promise((settle) => {
    // npm and the commands beside it are .cmd files on Windows, which only a shell starts.
    const child = spawn(command, args, { cwd: ROOT, env, shell: process.platform === 'win32', stdio: ['ignore', 'pipe', 'pipe'] })
    let output = ''
    const keep = (chunk) => { output = (output + chunk).slice(-20_000) }
    child.stdout.on('data', keep)
    child.stderr.on('data', keep)
    child.on('error', (error) => settle({ code: 1, output: `${output}${error.message}` }))
    child.on('close', (code) => settle({ code: code ?? 1, output }))
  })
}
