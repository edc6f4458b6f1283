import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { evaluate } from '@evenbore/diagnosis'
import { caseFor, ENGINES, STAGES, type Engine, type Stage } from './cases.ts'

/** Young generation of the measured process, MiB: what is thrown away at once must not count as memory needed. */
const YOUNG = 1
const MEASUREMENTS = 3

/**
 * Peak memory of one evaluation, MiB: how far the resident size of a process of its own rises above where it stood before. Code is loaded
 * and the tables of the engine are made first; code made hot and garbage not yet collected count, so each measurement is an upper bound and
 * the least of a few the nearest one. Linux keeps the peak of a process and begins it anew when asked; elsewhere it is the peak since the
 * start, which a large parent may have left behind.
 */
export function peakMemoryMiB(engine: Engine, stage: Stage): number {
  return Math.min(...Array.from({ length: MEASUREMENTS }, () => measureElsewhere(engine, stage)))
}

function measureElsewhere(engine: Engine, stage: Stage): number {
  const args = ['--expose-gc', `--max-semi-space-size=${YOUNG}`, import.meta.filename, String(ENGINES.indexOf(engine)), String(STAGES.indexOf(stage))]
  return Number(execFileSync(process.execPath, args, { encoding: 'utf8' }))
}

function measureHere(engine: Engine, stage: Stage): number {
  setFlagsFromString('--expose-gc')
  const collect = runInNewContext('gc') as () => void
  // little enough that it leaves nothing to live on
  evaluate(caseFor(engine, 'dry'), undefined, { ranking: false })
  collect()
  const peakBefore = beginPeakAnew() ? 0 : peakNow()
  const before = process.memoryUsage().rss
  evaluate(caseFor(engine, stage))
  // a peak that stayed below that of the warm-up is bounded by it
  return (Math.max(peakNow(), peakBefore) - before) / 2 ** 20
}

function beginPeakAnew(): boolean {
  try {
    writeFileSync('/proc/self/clear_refs', '5')
    return true
  } catch {
    return false
  }
}

/** Peak of the resident size, bytes. */
function peakNow(): number {
  const kept = existsSync('/proc/self/status') ? /VmHWM:\s*(\d+)/.exec(readFileSync('/proc/self/status', 'utf8'))?.[1] : undefined
  return 1024 * (kept === undefined ? process.resourceUsage().maxRSS : Number(kept))
}

if (import.meta.main) {
  const [engine, stage] = process.argv.slice(2).map(Number)
  process.stdout.write(String(measureHere(ENGINES[engine!]!, STAGES[stage!]!)))
}
