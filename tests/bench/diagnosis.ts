import { writeFileSync } from 'node:fs'
import { Worker } from 'node:worker_threads'
import type { Stage } from '../simulator/stages.ts'
import { type Options, readOptions, USAGE } from './diagnosis/options.ts'
import type { PartOrder, PartResult } from './diagnosis/part.ts'
import { causeTable, confusionTable, LEGEND, reliabilityTable, settlingTable, stageTable, worstCases } from './diagnosis/report.ts'
import type { EngineScore } from './diagnosis/score.ts'

/** Runs one part in a thread of its own. */
function runInThread(order: PartOrder): Promise<PartResult> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./diagnosis/part.ts', import.meta.url), { workerData: order })
    worker.once('message', resolve)
    worker.once('error', reject)
  })
}

async function benchWorld(options: Options, world: string): Promise<PartResult> {
  const { engines, enginesAll, settlings, stages, seed, workers, handOnly } = options
  const parts = await Promise.all(
    Array.from({ length: workers }, (_, first) =>
      runInThread({ world, seed, first, step: workers, engines, enginesAll, settlings, stages, handOnly, dump: options.dump !== undefined }),
    ),
  )
  const scores: PartResult['scores'] = {}
  for (const part of parts) {
    for (const [name, stages] of Object.entries(part.scores)) {
      const whole = (scores[name] ??= { dry: [], wet: [], leakage: [], all: [] })
      for (const [stage, list] of Object.entries(stages) as [Stage, EngineScore[]][]) whole[stage].push(...list)
    }
  }
  return {
    scores,
    fixedOrder: parts.flatMap((part) => part.fixedOrder),
    next: parts.flatMap((part) => part.next),
    lines: parts.flatMap((part) => part.lines),
    evaluationMs: parts.reduce((sum, part) => sum + part.evaluationMs, 0),
    evaluations: parts.reduce((sum, part) => sum + part.evaluations, 0),
  }
}

function print(world: string, options: Options, result: PartResult, seconds: number): void {
  const say = (text: string): void => void process.stdout.write(`${text}\n`)
  say(`\n== World ${world}: ${options.engines} engines, seed ${options.seed}, ${seconds.toFixed(0)} s`)
  say(stageTable(result.scores))
  const model = result.scores['model']
  if (model === undefined) return
  const shown = (wanted: readonly Stage[]): Stage[] => wanted.filter((stage) => options.stages.includes(stage))
  say(`\nmilliseconds an evaluation: ${(result.evaluationMs / Math.max(1, result.evaluations)).toFixed(2)}`)
  for (const stage of shown(['dry', 'leakage'])) say(`\nreliability of sound after ${stage}\n${reliabilityTable(model[stage])}`)
  for (const stage of shown(['dry', 'leakage', 'all'])) say(`\nfaulty cylinders after ${stage}\n${confusionTable(model[stage])}`)
  for (const stage of shown(['dry', 'leakage'])) say(`\nengine-wide causes after ${stage}\n${causeTable(model[stage])}`)
  for (const stage of shown(['leakage'])) say(`\nworst after ${stage}\n${worstCases(model[stage], 15)}`)
  if (result.next.length > 0) say(`\nminutes of testing\n${settlingTable(result.fixedOrder, result.next)}`)
}

async function main(): Promise<number> {
  let options: Options
  try {
    options = readOptions(process.argv.slice(2))
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n${USAGE}\n`)
    return 3
  }
  process.stdout.write(`${LEGEND}\n`)
  const lines: string[] = []
  for (const world of options.worlds) {
    const start = performance.now()
    const result = await benchWorld(options, world)
    print(world, options, result, (performance.now() - start) / 1000)
    lines.push(...result.lines)
  }
  if (options.dump !== undefined) writeFileSync(options.dump, `${lines.join('\n')}\n`)
  return 0
}

process.exitCode = await main()
