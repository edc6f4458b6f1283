import { execFileSync } from 'node:child_process'
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { evaluate } from '@evenbore/diagnosis'
import { caseFor, ENGINES, STAGES, type Engine, type Stage } from './cases.ts'

/** Young generation of the measured process, MiB: what is thrown away at once must not count as memory needed. */
const YOUNG = 1

/**
 * Peak memory of one evaluation, MiB: how far the resident size of a process of its own rises above where it stood before. Code and tables are
 * made and garbage is collected first; garbage not yet collected counts, so this is an upper bound.
 */
export function peakMemoryMiB(engine: Engine, stage: Stage): number {
  const args = ['--expose-gc', `--max-semi-space-size=${YOUNG}`, import.meta.filename, String(ENGINES.indexOf(engine)), String(STAGES.indexOf(stage))]
  return Number(execFileSync(process.execPath, args, { encoding: 'utf8' }))
}

function measureHere(engine: Engine, stage: Stage): number {
  setFlagsFromString('--expose-gc')
  const collect = runInNewContext('gc') as () => void
  for (let i = 0; i < 5; i++) evaluate(caseFor(ENGINES[0]!, 'leakage'))
  collect()
  const before = process.memoryUsage().rss
  const peakBefore = process.resourceUsage().maxRSS * 1024
  evaluate(caseFor(engine, stage))
  const peak = process.resourceUsage().maxRSS * 1024
  // a peak that stayed below that of the warm-up is bounded by it
  return (Math.max(peak, peakBefore) - before) / 2 ** 20
}

if (import.meta.main) {
  const [engine, stage] = process.argv.slice(2).map(Number)
  process.stdout.write(String(measureHere(ENGINES[engine!]!, STAGES[stage!]!)))
}
