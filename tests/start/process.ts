import { spawn, spawnSync, type ChildProcess } from 'node:child_process'
import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'

const ROOT = resolve(import.meta.dirname, '..', '..')

/** The service as a process of its own, started as `npm start` starts it. */
export type Started = {
  readonly child: ChildProcess
  readonly output: () => string
  /** Settled when the process has ended. */
  readonly ended: Promise<number | null>
  /** Waits for a line that fits. */
  readonly says: (pattern: RegExp, withinMs?: number) => Promise<RegExpExecArray>
}

/** Starts it with this environment. Without PORT it takes a free one. */
export function startService(environment: Readonly<Record<string, string>>): Started {
  const child = spawn(join(ROOT, 'node_modules', '.bin', 'node'), [join(ROOT, 'apps', 'api', 'src', 'main.ts')], {
    cwd: ROOT,
    env: { PATH: process.env['PATH'], HOME: process.env['HOME'], PORT: '0', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let output = ''
  child.stdout.on('data', (chunk: Buffer) => { output += chunk.toString() })
  child.stderr.on('data', (chunk: Buffer) => { output += chunk.toString() })
  const ended = new Promise<number | null>((done) => child.once('close', done))
  let over = false
  ended.then(() => { over = true })
  return {
    child,
    output: () => output,
    ended,
    says: async (pattern, withinMs = 60_000) => {
      for (const end = Date.now() + withinMs; Date.now() < end; await wait(20)) {
        const found = pattern.exec(output)
        if (found !== null) return found
        if (over) break
      }
      throw new Error(`It did not say ${String(pattern)}:\n${output}`)
    },
  }
}

/** A data folder of its own that PostgreSQL can enter as another user. */
export function dataFolder(): { readonly path: string; readonly remove: () => void } {
  const path = mkdtempSync(join(tmpdir(), 'evenbore-start-'))
  chmodSync(path, 0o755)
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) }
}

/** True while a process of that id lives. */
export function lives(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch {
    return false
  }
}

/**
 * How long this machine takes just now for a process of Node that does nothing, in milliseconds (about 40 on an idle machine of two
 * cores): starts are held to multiples of it, since tests run beside each other.
 */
export function emptyProcessMs(): number {
  const times = Array.from({ length: 3 }, () => {
    const before = Date.now()
    spawnSync(join(ROOT, 'node_modules', '.bin', 'node'), ['-e', '0'])
    return Date.now() - before
  })
  return times.sort((a, b) => a - b)[1] ?? 0
}
