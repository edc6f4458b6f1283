import type { Case } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../evaluate.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })

/** A V6 read dry: cylinders 1 to 3 in one bank, 4 to 6 in the other. */
function v6(readings: readonly number[], banks = [[1, 2, 3], [4, 5, 6]]): Case {
  return {
    engine: { fuel: 'petrol', layout: 'v', cylinders: 6, banks, firingOrder: [1, 4, 2, 5, 3, 6] },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' },
    readings: readings.map((value, i) => ({ test: 'compression', cylinder: i + 1, pressure: psi(value) })),
  }
}
const timing = (value: Case): number => evaluate(value).engine.find((e) => e.cause === 'valve-timing')!.probability

// each bank has its own marks to miss: common practice, no source
describe('a bank that is low as one', () => {
  it('is valve timing of that bank, and no fault of its cylinders', () => {
    const value = v6([139, 141, 140, 116, 115, 117])
    expect(timing(value)).toBeGreaterThan(0.5)
    for (const cylinder of evaluate(value).cylinders) expect(cylinder.sound).toBeGreaterThan(0.8)
  })

  it('is so whichever bank it is', () => {
    expect(timing(v6([116, 115, 117, 139, 141, 140]))).toBeCloseTo(timing(v6([139, 141, 140, 116, 115, 117])), 6)
  })

  it('is no timing where the same readings lie across the banks', () => {
    expect(timing(v6([139, 116, 140, 115, 141, 117]))).toBeLessThan(0.1)
  })

  it('is no timing of that bank where one camshaft works the side valves of both', () => {
    const value = v6([79, 81, 80, 66, 65, 67])
    const side = { ...value, engine: { ...value.engine, valveGear: 'side' as const, compressionRatio: 6 } }
    expect(timing(side)).toBeLessThan(0.15)
  })

  it('leaves a cylinder that is lower still suspected', () => {
    const { cylinders } = evaluate(v6([139, 141, 140, 116, 60, 117]))
    expect(cylinders[4]!.sound).toBeLessThan(0.2)
    expect(cylinders[3]!.sound).toBeGreaterThan(0.7)
  })
})
