import type { Case, Evaluation } from '@evenbore/contract'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evaluate } from './evaluate.ts'

/** Properties that hold for any case; the generated ones keep their seed. */
const RUNS = { numRuns: 5, seed: 7 }
const PSI_IN = { psi: 1, kPa: 6.894757293168361, bar: 0.06894757293168361, 'kgf/cm2': 6.894757293168361 / 98.0665 } as const
type Unit = keyof typeof PSI_IN

const heard = fc.record({ intake: fc.integer({ min: 0, max: 3 }), exhaust: fc.integer({ min: 0, max: 3 }), crankcase: fc.integer({ min: 0, max: 3 }) })
const cylinderReadings = (cylinder: number): fc.Arbitrary<Case['readings']> => fc.tuple(
  fc.integer({ min: 40, max: 180 }), fc.option(fc.integer({ min: 60, max: 240 })), fc.option(fc.tuple(fc.integer({ min: 1, max: 95 }), heard)),
).map(([dry, wet, leak]) => [
  { test: 'compression', cylinder, pressure: { value: dry, unit: 'psi' } },
  ...(wet === null ? [] : [{ test: 'compression' as const, cylinder, wet: true, oilMl: 8, pressure: { value: wet, unit: 'psi' as const } }]),
  ...(leak === null ? [] : [{ test: 'leakage' as const, cylinder, percent: leak[0], heard: leak[1] }]),
])
const ordinaryCase: fc.Arbitrary<Case> = fc.tuple(cylinderReadings(1), cylinderReadings(2), cylinderReadings(3), cylinderReadings(4)).map((lists) => ({
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], banks: [[1, 2, 3, 4]], boreMm: 84, strokeMm: 76, compressionRatio: 9, hotExhaustCylinders: [2] },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6 },
  gauge: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6, resolution: { value: 1, unit: 'psi' } },
  leakageTester: { supply: { value: 80, unit: 'psi' }, restrictorMm: 1.016 },
  readings: lists.flat(),
}))

const quick = (given: Case): Evaluation => evaluate(given, undefined, { ranking: false })
const beliefs = (e: Evaluation, names: readonly number[] = [1, 2, 3, 4]): number[] => [
  ...names.flatMap((n) => {
    const c = e.cylinders.find((x) => x.cylinder === n)!
    return [c.sound, ...[...c.faults].sort((a, b) => a.fault.localeCompare(b.fault)).map((f) => f.probability)]
  }),
  ...e.engine.map((x) => x.probability),
]
function expectClose(a: readonly number[], b: readonly number[], tolerance: number): void {
  expect(a.length).toBe(b.length)
  a.forEach((x, i) => expect(Math.abs(x - b[i]!)).toBeLessThan(tolerance))
}

describe('an evaluation', () => {
  it('follows its cylinders when they are renamed (banks, firing order and hot positions with them)', () => {
    const to = [3, 1, 4, 2] as const
    const name = (n: number): number => to[n - 1]!
    fc.assert(fc.property(ordinaryCase, (given) => {
      const renamed: Case = {
        ...given,
        engine: {
          ...given.engine, firingOrder: given.engine.firingOrder!.map(name), banks: given.engine.banks!.map((bank) => bank.map(name)),
          hotExhaustCylinders: given.engine.hotExhaustCylinders!.map(name),
        },
        readings: given.readings.map((r) => ('cylinder' in r && r.cylinder !== undefined ? { ...r, cylinder: name(r.cylinder) } : r)) as Case['readings'],
      }
      expectClose(beliefs(quick(renamed), [1, 2, 3, 4].map(name)), beliefs(quick(given)), 1e-9)
    }), RUNS)
  }, 120_000)

  it('says the same in another unit when the resolution is stated', () => {
    fc.assert(fc.property(ordinaryCase, fc.constantFrom<Unit>('kPa', 'bar', 'kgf/cm2'), (given, unit) => {
      const change = <T extends { value: number; unit: string }>(p: T): T => ({ value: p.value * PSI_IN[unit], unit }) as T
      const other: Case = {
        ...given, gauge: { ...given.gauge!, span: change(given.gauge!.span), resolution: change(given.gauge!.resolution!) },
        readings: given.readings.map((r) => (r.test === 'compression' ? { ...r, pressure: change(r.pressure) } : r)),
      }
      expectClose(beliefs(quick(other)), beliefs(quick(given)), 1e-9)
    }), RUNS)
  }, 120_000)

  it('does not care in which order its readings stand', () => {
    fc.assert(fc.property(ordinaryCase, (given) => {
      expectClose(beliefs(quick({ ...given, readings: given.readings.toReversed() })), beliefs(quick(given)), 1e-9)
    }), RUNS)
  }, 120_000)

  it('is not moved by a reading that is left out', () => {
    fc.assert(fc.property(ordinaryCase, fc.integer({ min: 20, max: 200 }), (given, value) => {
      const more: Case = { ...given, readings: [...given.readings, { test: 'compression', cylinder: 2, strokeCount: 3, pressure: { value, unit: 'psi' } }] }
      const found = quick(more)
      expect(found.objections.some((o) => o.code === 'mixed-strokes')).toBe(true)
      expectClose(beliefs(found), beliefs(quick(given)), 1e-9)
    }), RUNS)
  }, 120_000)

  it('sums to one for each cylinder and for the engine, with one entry for each', () => {
    fc.assert(fc.property(ordinaryCase, (given) => {
      const e = quick(given)
      expect(e.cylinders.map((c) => c.cylinder)).toEqual([1, 2, 3, 4])
      expect(e.neighbours.map((n) => n.cylinders)).toEqual([[1, 2], [2, 3], [3, 4]])
      for (const c of e.cylinders) expect(c.sound + c.faults.reduce((sum, f) => sum + f.probability, 0)).toBeCloseTo(1, 9)
      expect(e.engine.reduce((sum, x) => sum + x.probability, 0)).toBeCloseTo(1, 9)
    }), RUNS)
  }, 120_000)

  it('says of each reason what taking its readings away would show', () => {
    fc.assert(fc.property(ordinaryCase, (given) => {
      const full = evaluate(given)
      for (const row of full.because) expect(Math.abs(row.decibans)).toBeLessThanOrEqual(99)
      const rows = full.because.filter((r) => r.cylinder !== undefined)
      const first = rows[0]
      if (first === undefined) return
      const p = full.cylinders.find((c) => c.cylinder === first.cylinder)!.faults.find((f) => f.fault === first.fault)!.probability
      const sum = rows.filter((r) => r.cylinder === first.cylinder && r.fault === first.fault).reduce((s, r) => s + r.decibans, 0)
      expect(Math.abs(sum - 10 * Math.log10(p / (1 - p)))).toBeLessThan(3)
    }), { numRuns: 3, seed: 8 })
  }, 120_000)
})

describe('what a mechanic would expect', () => {
  const psi = (value: number) => ({ value, unit: 'psi' as const })
  const four = (dry: readonly number[], more: Case['readings'] = [], engine: Partial<Case['engine']> = {}): Case => ({
    engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], boreMm: 84, strokeMm: 76, compressionRatio: 9, ...engine },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' },
    readings: [...dry.map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) })), ...more],
  })
  const leading = (e: Evaluation, n: number): string => e.cylinders[n - 1]!.faults[0]!.fault
  const wet = (cylinder: number, value: number): Case['readings'][number] => ({ test: 'compression', cylinder, wet: true, oilMl: 6, pressure: psi(value) })

  it('even readings leave every cylinder sound', () => {
    for (const c of quick(four([152, 150, 155, 153])).cylinders) expect(c.sound).toBeGreaterThan(0.95)
  })

  it('two very low neighbours point at the gasket between them', () => {
    const e = quick(four([150, 82, 80, 155]))
    expect(e.neighbours.find((n) => n.cylinders.join() === '2,3')!.probability).toBeGreaterThan(0.5)
  })

  it('two very low cylinders that are not neighbours do not', () => {
    for (const n of quick(four([82, 152, 155, 80])).neighbours) expect(n.probability).toBeLessThan(0.1)
  })

  it('oil that brings a low cylinder back speaks for rings, oil that does not for valves', () => {
    const back = quick(four([152, 110, 155, 153], [wet(2, 155), wet(1, 170)])).cylinders[1]!
    const stays = quick(four([152, 110, 155, 153], [wet(2, 122), wet(1, 170)])).cylinders[1]!
    const rings = (c: typeof back): number => c.faults.filter((f) => ['ring-wear', 'ring-broken-or-stuck', 'fuel-wash'].includes(f.fault)).reduce((s, f) => s + f.probability, 0)
    // the same rise comes of an adaptor that leaked at the dry reading alone: among faults it is rings
    expect(back.sound).toBeLessThan(0.3)
    expect(rings(back) / (1 - back.sound)).toBeGreaterThan(0.85)
    expect(rings(stays)).toBeLessThan(0.2)
  })

  it.each([
    ['exhaust', 'exhaust-valve-leak'], ['intake', 'intake-valve-leak'], ['coolant', 'gasket-to-coolant'],
  ] as const)('a clear hiss at the %s with a low reading leads to %s', (place, fault) => {
    const e = quick(four([152, 110, 155, 153], [{ test: 'leakage', cylinder: 2, percent: 32, heard: { intake: 0, exhaust: 0, crankcase: 1, coolant: 0, [place]: 3 } }]))
    expect(leading(e, 2)).toBe(fault)
    expect(e.cylinders[1]!.sound).toBeLessThan(0.05)
  })

  it('a cylinder low both dry and wet is not called sound because its leakage is good', () => {
    const e = quick(four([104, 160, 163, 155], [
      wet(1, 115), wet(2, 188), wet(3, 186), wet(4, 181),
      ...[7, 10, 5, 13].map((percent, i) => ({ test: 'leakage' as const, cylinder: i + 1, percent, heard: { intake: 0, exhaust: 0, crankcase: 1, coolant: 0 } })),
    ]))
    expect(e.cylinders[0]!.sound).toBeLessThan(0.6)
  })

  it('two neighbours loud at the exhaust and silent at each other leak at the exhaust, however much they lose', () => {
    const loud = (cylinder: number, neighbour: number, percent: number) =>
      ({ test: 'leakage' as const, cylinder, percent, heard: { intake: 0, exhaust: 3, crankcase: 0, coolant: 0, neighbour: 0 } as const, neighbour })
    const e = quick(four([190, 63, 47, 189], [loud(2, 1, 93), loud(3, 2, 95)]))
    for (const cylinder of [2, 3]) {
      expect(leading(e, cylinder)).toBe('exhaust-valve-leak')
      expect(e.cylinders[cylinder - 1]!.sound).toBeLessThan(0.1)
    }
  })

  it('slackened rockers that stop the hiss speak for a tight clearance', () => {
    const hiss: Case['readings'] = [{ test: 'leakage', cylinder: 2, percent: 32, heard: { exhaust: 3, intake: 0 } }, { test: 'leakage', cylinder: 2, percent: 7, heard: { exhaust: 0, intake: 0 }, rockersSlack: [2] }]
    expect(leading(quick(four([152, 110, 155, 153], hiss)), 2)).toBe('clearance-tight')
  })

  it('an air-cooled engine has no gasket that leaks to coolant', () => {
    const e = quick(four([152, 110, 155, 153], [], { cooling: 'air' }))
    expect(e.cylinders[1]!.faults.find((f) => f.fault === 'gasket-to-coolant')!.probability).toBe(0)
  })

  it('never suggests oil in a diesel', () => {
    const e = evaluate(four([350, 260, 355, 348], [], { fuel: 'diesel', compressionRatio: 19 }))
    expect(e.next.length).toBeGreaterThan(0)
    expect(e.next.flatMap((s) => s.tests).some((t) => t.wet === true)).toBe(false)
  })

  it('a dead plug with good compression is put down to ignition, not to the mechanics', () => {
    const e = quick(four([152, 150, 155, 153], [
      { test: 'plug', cylinder: 2, appearance: 'wet-fuel', afterRunAtSpeed: true },
      ...[120, 5, 118, 122].map((rpmDrop, i) => ({ test: 'power-balance' as const, cylinder: i + 1, rpmDrop })),
    ]))
    expect(e.cylinders[1]!.ignitionOrMixture).toBeGreaterThan(0.8)
    expect(e.cylinders[1]!.sound).toBeGreaterThan(0.8)
  })

  it('an agreeing repeat of a low reading makes it less likely to be a slip', () => {
    const once = quick(four([152, 110, 155, 153])).cylinders[1]!.sound
    const twice = quick(four([152, 110, 155, 153], [{ test: 'compression', cylinder: 2, pressure: psi(110) }])).cylinders[1]!.sound
    expect(twice).toBeLessThan(once)
  })

  it('a repeat that reads well clears it', () => {
    expect(quick(four([152, 110, 155, 153], [{ test: 'compression', cylinder: 2, pressure: psi(151) }])).cylinders[1]!.sound).toBeGreaterThan(0.8)
  })
})
