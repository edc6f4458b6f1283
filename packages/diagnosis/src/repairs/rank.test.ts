import type { Case } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../evaluate.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })
const four: Case = {
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, boreMm: 80, strokeMm: 80, compressionRatio: 9, firingOrder: [1, 3, 4, 2] },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', crankingRpm: 200 },
  leakageTester: { supply: psi(80), restrictorMm: 1.016 },
  readings: [150, 148, 60, 152].map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) })),
}
const leaky: Case = {
  ...four,
  readings: [...four.readings, { test: 'leakage', cylinder: 3, percent: 70, heard: { intake: 0, exhaust: 0, crankcase: 3, coolant: 0, outside: 0 } }],
}

describe('what to repair', () => {
  it('a borescope comes before the dear jobs while it is not known which of them is right', () => {
    const [first] = evaluate(leaky, undefined, { ranking: false }).repairs
    expect(first).toMatchObject({ operation: 'look-borescope', cylinders: [3], cures: 0 })
    expect(first!.says).toContain('Look first')
  })

  it('nobody is sent to look twice', () => {
    const looked: Case = { ...leaky, readings: [...leaky.readings, { test: 'borescope', cylinder: 3, seen: ['cracked-piston'] }] }
    expect(evaluate(looked, undefined, { ranking: false }).repairs.map((r) => r.operation)).not.toContain('look-borescope')
  })

  it('coolant that leaks somewhere is a repair of the head, though no cylinder by itself is suspect', () => {
    const even = [150, 148, 149, 152].map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) }))
    const signs: Case['readings'] = [{ test: 'coolant-gas', present: true }, { test: 'observation', code: 'smoke-white', present: true }]
    const { cylinders, repairs } = evaluate({ ...four, readings: [...even, ...signs] }, undefined, { ranking: false })
    for (const { sound } of cylinders) expect(sound).toBeGreaterThan(0.75)
    expect(repairs.find(({ operation }) => operation === 'gasket-replace')).toMatchObject({ cylinders: [1, 2, 3, 4] })
  })

  it('an even engine needs neither look nor repair', () => {
    const even: Case = { ...four, readings: [150, 148, 151, 152].map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) })) }
    expect(evaluate(even, undefined, { ranking: false }).repairs).toEqual([])
  })
})
