import type { Case } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../evaluate.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })
const four: Case = {
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, boreMm: 80, strokeMm: 80, compressionRatio: 9, firingOrder: [1, 3, 4, 2] },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', crankingRpm: 200 },
  readings: [150, 148, 105, 152].map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) })),
}

/** Current while cranking at 200 rpm: one hump each compression, that of cylinder 3 half as high. */
function trace(): Extract<Case['readings'][number], { test: 'cranking-current' }> {
  const seconds = Array.from({ length: 3000 }, (_, k) => k / 1000)
  const order = [1, 3, 4, 2], hump = 0.15
  const amps = seconds.map((t) => 120 + (order[Math.floor(t / hump) % 4] === 3 ? 20 : 40) * (1 - Math.cos((2 * Math.PI * t) / hump)) / 2)
  return { test: 'cranking-current', samples: { seconds, amps }, cylinderOneAt: hump / 2 }
}

describe('the reasons given', () => {
  const rows = evaluate({ ...four, readings: [...four.readings, trace()] }).because
  const about = (row: (typeof rows)[number]): string => JSON.stringify([row.fault, row.cylinder, row.cylinders, row.cause])

  it('name a reading that speaks of several cylinders once', () => {
    const traced = rows.filter((row) => row.kind === 'reading' && row.readings.includes(4))
    expect(traced.length).toBeGreaterThan(0)
    for (const row of traced) expect(rows.filter((other) => other.kind === 'reading' && about(other) === about(row) && other.readings.includes(4))).toHaveLength(1)
  })

  it('name a trace or running compression that speaks of the engine as well once', () => {
    const { crankingRpm: _unknown, ...conditions } = four.conditions
    const running: Case['readings'] = [75, 76, 60, 74].map((value, i) => ({ test: 'compression', cylinder: i + 1, running: true, pressure: psi(value) }))
    for (const more of [[trace()], running]) {
      const rows = evaluate({ ...four, conditions, readings: [...four.readings.map((r) => ({ ...r, pressure: psi(110) }) as Case['readings'][number]), ...more] }).because.filter((row) => row.kind === 'reading')
      expect(rows.flatMap((row) => row.readings).some((r) => r >= 4)).toBe(true)
      for (const row of rows) expect(rows.filter((other) => about(other) === about(row) && other.readings.some((r) => row.readings.includes(r)))).toHaveLength(1)
    }
  })

  it('let first strokes stand with the reading they were noted with', () => {
    const strokes = four.readings.map((r) => (r.test === 'compression' ? { ...r, firstStroke: psi(r.pressure.value * 0.6) } : r))
    const read = evaluate({ ...four, readings: strokes }).because.filter((r) => r.kind === 'reading')
    expect(read.length).toBeGreaterThan(0)
    for (const row of read) {
      expect(new Set(row.readings).size).toBe(row.readings.length)
      expect(read.filter((other) => about(other) === about(row) && other.readings.some((r) => row.readings.includes(r)))).toHaveLength(1)
    }
  })

  it('say why coolant leaks at one of the cylinders, though none by itself is suspect', () => {
    const even: Case = { ...four, readings: [150, 148, 149, 151].map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) })) }
    const seen: Case = { ...even, readings: [...even.readings, { test: 'coolant-gas', present: true }, { test: 'observation', code: 'smoke-white' }] }
    const decibansAnywhere = (given: Case): number => {
      const tight = evaluate(given).cylinders.reduce((product, { faults }) => product * (1 - faults.reduce((sum, { fault, probability }) => sum + (fault === 'gasket-to-coolant' || fault === 'cracked-head' ? probability : 0), 0)), 1)
      return 10 * Math.log10((1 - tight) / tight)
    }
    const rows = evaluate(seen).because.filter((row) => row.fault === 'gasket-to-coolant')
    expect(rows.every((row) => row.cylinder === undefined && row.cylinders === undefined)).toBe(true)
    expect(rows.reduce((sum, row) => sum + row.decibans, 0)).toBeCloseTo(decibansAnywhere(seen), 0)
    const smoke = rows.find((row) => row.readings.join() === '5')!
    expect(smoke.decibans).toBeCloseTo(decibansAnywhere(seen) - decibansAnywhere({ ...seen, readings: seen.readings.slice(0, 5) }), 1)
    expect(smoke.says).toMatch(/for a gasket leaking to coolant at one of the cylinders\.$/)
    expect(evaluate(even).because).toEqual([])
  })

  it('weigh what was seen by the odds with it over the odds without it, as an evaluation without it has them', () => {
    const decibans = (p: number): number => 10 * Math.log10(p / (1 - p))
    const seen: Case = { ...four, readings: [...four.readings, { test: 'borescope', cylinder: 3, seen: ['scored-bore'] }, { test: 'plug', cylinder: 3, appearance: 'wet-oil' }] }
    const { because: given, cylinders } = evaluate(seen)
    const lead = cylinders[2]!.faults[0]!.fault
    const of = (list: typeof cylinders): number => decibans(list[2]!.faults.find(({ fault }) => fault === lead)!.probability)
    for (const left of [4, 5]) {
      const row = given.find((r) => r.kind === 'reading' && r.cylinder === 3 && r.fault === lead && r.readings.includes(left))!
      const without = evaluate({ ...seen, readings: seen.readings.filter((_, i) => i !== left) })
      expect(row.decibans).toBeCloseTo(of(cylinders) - of(without.cylinders), 1)
    }
  })

  it('start from what is believed of this engine before any reading', () => {
    const before = evaluate({ ...four, readings: [] })
    const row = rows.find((r) => r.kind === 'prior' && r.cylinder === 3)!
    const p = before.cylinders[2]!.faults.find((f) => f.fault === row.fault)!.probability
    expect(row.decibans).toBeCloseTo(10 * Math.log10(p / (1 - p)), 9)
  })

  it('add up to the odds that are believed now', () => {
    const after = evaluate({ ...four, readings: [...four.readings, trace()] })
    for (const prior of rows.filter((r) => r.kind === 'prior' && r.cylinder !== undefined)) {
      const sum = rows.filter((r) => about(r) === about(prior)).reduce((total, r) => total + r.decibans, 0)
      const p = after.cylinders[prior.cylinder! - 1]!.faults.find((f) => f.fault === prior.fault)!.probability
      // a remainder of less than half a deciban gets no row
      expect(Math.abs(sum - 10 * Math.log10(p / (1 - p)))).toBeLessThan(0.5 + 1e-9)
    }
  })
})
