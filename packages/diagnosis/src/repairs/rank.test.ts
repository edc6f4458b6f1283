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

  it('new rings are run in, and what has stood is soaked and run, before anything is taken apart', () => {
    const worn: Case['readings'] = [1, 2, 3, 4].flatMap((cylinder) => [
      { test: 'compression' as const, cylinder, pressure: psi(133 + cylinder) }, { test: 'leakage' as const, cylinder, percent: 26, heard: { crankcase: 2 as const, exhaust: 0 as const, intake: 0 as const } },
    ])
    const first = (history: Case['engine']['history'], readings = worn) => evaluate({ ...four, engine: { ...four.engine, ...(history === undefined ? {} : { history }) }, readings }, undefined, { ranking: false }).repairs
    expect(first({ kmSinceRings: 100 })[0]).toMatchObject({ operation: 'run-on' })
    expect(first({ kmSinceRings: 90_000 }).map(({ operation }) => operation)).not.toContain('run-on')
    const soak = (history?: Case['engine']['history']): number => first(history, leaky.readings).find(({ operation }) => operation === 'soak-run-test')?.cures ?? 0
    expect(soak({ monthsStored: 12 })).toBeGreaterThan(1.5 * soak())
  })

  it('a shut throttle is no repair, however low all cylinders read', () => {
    const low: Case['readings'] = [104, 105, 104, 103].flatMap((value, i) => [
      { test: 'compression' as const, cylinder: i + 1, pressure: psi(value) }, { test: 'leakage' as const, cylinder: i + 1, percent: 7, heard: { crankcase: 1 as const, exhaust: 0 as const, intake: 0 as const } },
    ])
    const { engine, repairs } = evaluate({ ...four, readings: [...low, { test: 'vacuum', pattern: 'steady', reading: { value: 19, unit: 'inHg' } }] }, undefined, { ranking: false })
    expect(engine.find(({ cause }) => cause === 'none')!.probability).toBeLessThan(0.4)
    expect(repairs).toEqual([])
  })

  it('side valves have no rockers to mend', () => {
    const dead: Case['readings'] = [92, 91, 4, 93].map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) }))
    const found = (valveGear: 'side' | 'overhead') => evaluate({ ...four, engine: { ...four.engine, valveGear, compressionRatio: 6.2 }, readings: [...dead, { test: 'valve-lift', cylinder: 3, valve: 'intake', mm: 0.4 }, { test: 'valve-lift', cylinder: 2, valve: 'intake', mm: 7.5 }] }, undefined, { ranking: false }).repairs.map(({ operation }) => operation)
    expect(found('overhead')).toContain('rocker-pushrod')
    expect(found('side')).not.toContain('rocker-pushrod')
    expect(found('side')).toContain('cam-tappets')
  })

  it('a burnt valve that was seen is work on the head: what adds next to nothing to it is no second choice', () => {
    const burnt: Case['readings'] = [...four.readings, { test: 'leakage', cylinder: 3, percent: 68, heard: { exhaust: 3, intake: 0, crankcase: 1 } }, { test: 'borescope', cylinder: 3, seen: ['burnt-exhaust-valve'] }]
    expect(evaluate({ ...four, readings: burnt }, undefined, { ranking: false }).repairs.map(({ operation }) => operation)).toEqual(['head-valves'])
  })

  it('an even engine needs neither look nor repair', () => {
    const even: Case = { ...four, readings: [150, 148, 151, 152].map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) })) }
    expect(evaluate(even, undefined, { ranking: false }).repairs).toEqual([])
  })
})
