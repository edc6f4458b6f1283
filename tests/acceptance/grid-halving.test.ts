import { describe, expect, it } from 'vitest'
import { defaultKnowledge } from '@evenbore/diagnosis'
import { admit } from '../../packages/diagnosis/src/admission/admit.ts'
import { gather } from '../../packages/diagnosis/src/model/gather.ts'
import { infer, type Inference } from '../../packages/diagnosis/src/model/posterior.ts'
import { simulateEngine } from '../simulator/stages.ts'
import { worldNamed } from '../simulator/worlds/named.ts'

const SEED = 20
const ENGINES = 10

/** Largest move of any probability when every step of the grids is halved. */
function largestMove(plain: Inference, fine: Inference): number {
  const all = ({ own, causes, bridges }: Inference): number[] => [...own.flatMap((p) => [...p]), ...causes, ...bridges.flatMap((p) => [...p])]
  const after = all(fine)
  return all(plain).reduce((most, p, i) => Math.max(most, Math.abs(p - after[i]!)), 0)
}

describe.each(['A', 'B'])('on engines of world %s halving every step of the grids', (world) => {
  it.each(['dry', 'wet', 'leakage', 'all'] as const)('moves no probability by more than .002: %s', (stage) => {
    const moves = Array.from({ length: ENGINES }, (_, index) => {
      const value = simulateEngine(worldNamed(world), SEED, index).cases[stage]
      const { evidence } = gather(value, admit(value), defaultKnowledge)
      return largestMove(infer(evidence, defaultKnowledge), infer(evidence, defaultKnowledge, 2))
    })
    expect(Math.max(...moves)).toBeLessThan(0.002)
  }, 120_000)
})
