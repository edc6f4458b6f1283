import { parentPort, workerData } from 'node:worker_threads'
import { simulateEngine, type Stage } from '../../simulator/stages.ts'
import { worldNamed } from '../../simulator/worlds/named.ts'
import { HAND_RULES } from './hand-rules.ts'
import { type EngineScore, scoreEngine } from './score.ts'
import { settleByFixedOrder, settleByNext, type Settling } from './settling.ts'

/** The share of the work one thread does: every `step`-th engine from `first` on. */
export type PartOrder = {
  readonly world: string
  readonly seed: number
  readonly first: number
  readonly step: number
  readonly engines: number
  readonly enginesAll: number
  readonly settlings: number
  readonly stages: readonly Stage[]
  readonly handOnly: boolean
  readonly dump: boolean
}
export type PartResult = {
  /** By judge, then stage. */
  readonly scores: Record<string, Record<Stage, EngineScore[]>>
  readonly fixedOrder: Settling[]
  readonly next: Settling[]
  readonly lines: string[]
  readonly evaluationMs: number
  readonly evaluations: number
}

/** Simulates and judges this part's engines. */
export async function runPart(order: PartOrder): Promise<PartResult> {
  const world = worldNamed(order.world)
  const model = order.handOnly ? undefined : await import('./model.ts')
  const judges = [...(model === undefined ? [] : [model.MODEL]), HAND_RULES]
  const scores: PartResult['scores'] = Object.fromEntries(judges.map((item) => [item.name, { dry: [], wet: [], leakage: [], all: [] }]))
  const lines: string[] = []
  let evaluationMs = 0
  let evaluations = 0
  for (let index = order.first; index < order.engines; index += order.step) {
    const engine = simulateEngine(world, order.seed, index)
    for (const item of judges) {
      for (const stage of order.stages) {
        if (stage === 'all' && index >= order.enginesAll) continue
        const start = performance.now()
        const opinion = item.judge(engine.cases[stage])
        if (item !== HAND_RULES) {
          evaluationMs += performance.now() - start
          evaluations += 1
        }
        scores[item.name]?.[stage].push(scoreEngine(index, engine.truth, engine.inside, opinion))
      }
    }
    if (order.dump)
      lines.push(JSON.stringify({ index, world: order.world, truth: engine.truth, leakage: engine.cases.leakage, all: engine.cases.all }))
  }
  const fixedOrder: Settling[] = []
  const next: Settling[] = []
  if (model !== undefined) {
    for (let index = order.first; index < order.settlings; index += order.step) {
      fixedOrder.push(settleByFixedOrder(world, order.seed + 1, index, model.evaluateWithModel))
      next.push(settleByNext(world, order.seed + 1, index, model.evaluateWithModel))
    }
  }
  return { scores, fixedOrder, next, lines, evaluationMs, evaluations }
}

if (parentPort !== null && workerData !== null) {
  const port = parentPort
  port.postMessage(await runPart(workerData as PartOrder))
}
