import type { Case } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { admit } from '../admission/admit.ts'
import { CAUSES } from '../knowledge/causes.ts'
import { FAULTS } from '../knowledge/faults.ts'
import { defaultKnowledge as knowledge } from '../knowledge/knowledge.ts'
import { densityThrough } from './mixture.ts'
import { gather } from './gather.ts'
import { infer, type Inference } from './posterior.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })
const two: Case = {
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 2, boreMm: 80, strokeMm: 80, compressionRatio: 9 },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', crankingRpm: 200 },
  readings: [],
}
const inferenceOf = (readings: Case['readings'], refine = 1): Inference => infer(gather({ ...two, readings }, admit({ ...two, readings }), knowledge).evidence, knowledge, refine)

/** Chance of a sign or pattern for the whole engine, written out for one pair of states and one cause. */
type EngineChance = (faults: readonly number[], bridge: boolean, cause: string) => number

/** Prior x likelihood of every state of one cylinder in every column: [state * columns + column]. */
function likelihoods(inference: Inference, i: number): Float64Array {
  const { states, grid } = inference.space
  const { dry } = inference.gauge[i]!
  const out = new Float64Array(states.count * grid.columns)
  for (let s = 0; s < states.count; s++) {
    // a leaking adaptor is a state of its own only when oil came after
    if (states.drySeat[s] === 1) continue
    for (let q = 0; q < grid.columns; q++) {
      const kind = grid.classes[grid.classOf[q]!]!
      const density = dry === null ? 1 : densityThrough(dry, grid.level[q]! - states.loss[s]!, kind.sisterVariance + states.scatter[s]! ** 2)
      const prior = inference.emissions[i]!.prior[grid.classOf[q]! * (FAULTS.length + 1) + states.own[s]!]!
      out[s * grid.columns + q] = prior * states.weight[s]! * density * (inference.emissions[i]!.looks?.both[s] ?? 1)
    }
  }
  return out
}

/** The same sum without grouping, pruning, chains or flags: every pair of states, every bridge, every column, every cause. */
function enumerate(inference: Inference, engineChance: EngineChance = () => 1) {
  const { states, grid } = inference.space
  const { columns } = grid
  const own = [new Float64Array(FAULTS.length + 1), new Float64Array(FAULTS.length + 1)]
  const causes = new Float64Array(CAUSES.length)
  let bridge = 0, total = 0
  const first = likelihoods(inference, 0), second = likelihoods(inference, 1)
  const joint = new Float64Array(CAUSES.length)
  for (let s = 0; s < states.count; s++) {
    for (let t = 0; t < states.count; t++) {
      const b = states.bridgeLevel[s]!
      if (states.bridgeLevel[t] !== b) continue
      joint.fill(0)
      for (let q = 0; q < columns; q++) {
        const both = first[s * columns + q]! * second[t * columns + q]!
        for (let e = 0; e < joint.length; e++) joint[e]! += both * grid.prior[e]![grid.offset[q]!]!
      }
      const faults = [states.own[s]!, states.second[s]!, states.own[t]!, states.second[t]!]
      for (let e = 0; e < joint.length; e++) {
        const w = states.bridgePrior[b]! * joint[e]! * engineChance(faults, b > 0, CAUSES[e]!)
        own[0]![states.own[s]!]! += w
        own[1]![states.own[t]!]! += w
        causes[e]! += w
        total += w
        if (b > 0) bridge += w
      }
    }
  }
  return { own: own.map((o) => o.map((w) => w / total)), causes: causes.map((w) => w / total), bridge: bridge / total }
}

function expectSame(inference: Inference, oracle: ReturnType<typeof enumerate>): void {
  // what pruning leaves out is the only difference
  inference.own.forEach((own, i) => own.forEach((p, f) => expect(Math.abs(p - oracle.own[i]![f]!)).toBeLessThan(2e-5)))
  inference.causes.forEach((p, e) => expect(Math.abs(p - oracle.causes[e]!)).toBeLessThan(2e-5))
  expect(Math.abs(inference.bridges[0]![0]! - oracle.bridge)).toBeLessThan(2e-5)
}

const low: Case['readings'] = [
  { test: 'compression', cylinder: 1, pressure: psi(150) }, { test: 'compression', cylinder: 2, pressure: psi(112) },
]
const index = (fault: (typeof FAULTS)[number]): number => FAULTS.indexOf(fault) + 1

describe('the engine model against plain enumeration of everything hidden', () => {
  it('agrees on two dry readings', () => {
    const inference = inferenceOf(low)
    expectSame(inference, enumerate(inference))
  }, 120_000)

  it('agrees when a test of the whole engine asks whether coolant is reached anywhere', () => {
    const inference = inferenceOf([...low, { test: 'coolant-gas', present: true }])
    const coolant = new Set([index('gasket-to-coolant'), index('cracked-head')])
    const { alone, groups } = knowledge.engineSigns['coolant-gas']!.value
    const oracle = enumerate(inference, (faults) => 1 - (1 - alone) * (faults.some((f) => coolant.has(f)) ? 1 - groups.coolant! : 1))
    expectSame(inference, oracle)
    expect(inference.own[1]![index('gasket-to-coolant')]).toBeGreaterThan(inferenceOf(low).own[1]![index('gasket-to-coolant')]! * 3)
  }, 120_000)
})

describe('the grid is fine enough', () => {
  const cases: Record<string, Case['readings']> = {
    'two dry readings': low,
    'dry and wet': [...low, { test: 'compression', cylinder: 1, wet: true, oilMl: 8, pressure: psi(170) }, { test: 'compression', cylinder: 2, wet: true, oilMl: 8, pressure: psi(148) }],
    'dry and leakage': [...low, { test: 'leakage', cylinder: 2, percent: 30, heard: { intake: 0, exhaust: 3, crankcase: 1 } }, { test: 'leakage', cylinder: 1, percent: 7, heard: { intake: 0, exhaust: 0, crankcase: 1 } }],
  }
  it.each(Object.entries(cases))('halving every step moves no probability by more than .002: %s', (_, readings) => {
    const plain = inferenceOf(readings), fine = inferenceOf(readings, 2)
    let most = 0
    plain.own.forEach((own, i) => own.forEach((p, f) => { most = Math.max(most, Math.abs(p - fine.own[i]![f]!)) }))
    plain.causes.forEach((p, e) => { most = Math.max(most, Math.abs(p - fine.causes[e]!)) })
    plain.bridges.forEach((row, g) => row.forEach((p, j) => { most = Math.max(most, Math.abs(p - fine.bridges[g]![j]!)) }))
    expect(most).toBeLessThan(0.002)
  }, 120_000)
})
