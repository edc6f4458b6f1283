import type { Case } from '@evenbore/contract'
import { admit } from '../../../packages/diagnosis/src/admission/admit.ts'
import { defaultKnowledge as knowledge } from '../../../packages/diagnosis/src/knowledge/knowledge.ts'
import { gather } from '../../../packages/diagnosis/src/model/gather.ts'
import { densityThrough } from '../../../packages/diagnosis/src/model/mixture.ts'
import { infer, type Inference } from '../../../packages/diagnosis/src/model/posterior.ts'
import { OWN_COUNT } from '../../../packages/diagnosis/src/model/states.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })

/** Two cylinders under one gasket, read dry: small enough to go through every pair of states. */
export const TWO: Case = {
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 2, boreMm: 80, strokeMm: 80, compressionRatio: 9 },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', crankingRpm: 200 },
  readings: [{ test: 'compression', cylinder: 1, pressure: psi(150) }, { test: 'compression', cylinder: 2, pressure: psi(112) }],
}

export const inferTwo = (): Inference => infer(gather(TWO, admit(TWO), knowledge).evidence, knowledge)

/** The probability that cylinder 2 is sound, by going through every pair of states in every column of the grid, one by one. */
export function soundByBruteForce({ space, gauge, emissions }: Inference): number {
  const { states, grid } = space
  const likely = [0, 1].map((i) => Float64Array.from({ length: states.count * grid.columns }, (_, at) => {
    const s = Math.floor(at / grid.columns), q = at % grid.columns
    // a leaking adaptor is a state of its own only when oil came after
    if (states.drySeat[s] === 1) return 0
    const density = densityThrough(gauge[i]!.dry!, grid.level[q]! - states.loss[s]!, grid.classes[grid.classOf[q]!]!.sisterVariance + states.scatter[s]! ** 2)
    return emissions[i]!.prior[grid.classOf[q]! * OWN_COUNT + states.own[s]!]! * states.weight[s]! * density
  }))
  const prior = Float64Array.from({ length: grid.columns }, (_, q) => grid.prior.reduce((sum, array) => sum + array[grid.offset[q]!]!, 0))
  let sound = 0, total = 0
  for (let s = 0; s < states.count; s++) {
    for (let t = 0; t < states.count; t++) {
      const b = states.bridgeLevel[s]!
      if (b !== states.bridgeLevel[t]) continue
      let joint = 0
      for (let q = 0; q < grid.columns; q++) joint += likely[0]![s * grid.columns + q]! * likely[1]![t * grid.columns + q]! * prior[q]!
      total += states.bridgePrior[b]! * joint
      if (states.own[t] === 0) sound += states.bridgePrior[b]! * joint
    }
  }
  return sound / total
}
