import { describe, expect, it } from 'vitest'
import { defaultKnowledge } from '@evenbore/diagnosis'
import { admit } from '../../packages/diagnosis/src/admission/admit.ts'
import { gather } from '../../packages/diagnosis/src/model/gather.ts'
import { infer, type Inference } from '../../packages/diagnosis/src/model/posterior.ts'
import { simulateEngine, STAGES, type Stage } from '../simulator/stages.ts'
import { worldNamed } from '../simulator/worlds/named.ts'

const SEED = 20
const ENGINES = 10

/** Largest move of any probability when every step of the grids is halved. */
function largestMove(plain: Inference, fine: Inference): number {
  const all = ({ own, causes, bridges }: Inference): number[] => [...own.flatMap((p) => [...p]), ...causes, ...bridges.flatMap((p) => [...p])]
  const after = all(fine)
  return all(plain).reduce((most, p, i) => Math.max(most, Math.abs(p - after[i]!)), 0)
}

/** How far halving moves a simulated engine at a stage of its tests. */
function moveOf(world: string, seed: number, index: number, stage: Stage): number {
  const value = simulateEngine(worldNamed(world), seed, index).cases[stage]
  const { evidence } = gather(value, admit(value), defaultKnowledge)
  return largestMove(infer(evidence, defaultKnowledge), infer(evidence, defaultKnowledge, 2))
}

describe.each(['A', 'B'])('on engines of world %s halving every step of the grids', (world) => {
  it.each(STAGES)('moves no probability by more than .002: %s', (stage) => {
    const moves = Array.from({ length: ENGINES }, (_, index) => moveOf(world, SEED, index, stage))
    expect(Math.max(...moves)).toBeLessThan(0.002)
  }, 120_000)
})

describe('engines on which it moved most, of 120 of each world', () => {
  it.each([
    ['two neighbours that hold nothing', 'B', 96, 'dry'], ['two neighbours of a diesel that hold next to nothing', 'A', 115, 'dry'],
    ['carbon beside a bridge', 'A', 27, 'all'], ['rings worn or broken, read with oil', 'B', 73, 'all'], ['leaks on both sides of what is called worn', 'B', 101, 'leakage'],
  ] as const)('%s: no more than .002', (_, world, index, stage) => {
    expect(moveOf(world, 77, index, stage)).toBeLessThan(0.002)
  }, 120_000)
})
