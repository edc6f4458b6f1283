import type { Case, Evaluation } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../evaluate.ts'
import { defaultKnowledge as knowledge } from '../knowledge/knowledge.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })
const AIR = [[5, 0], [5, 0], [34, 3], [6, 0]] as const

/** A four with a leaking exhaust valve, read dry, with oil or without, and with air. */
function four(dry: readonly number[], wet: readonly number[] = [], air: readonly (readonly [number, number])[] = AIR): Case {
  return {
    engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], boreMm: 84, strokeMm: 76, compressionRatio: 9 },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6, crankingRpm: 200 },
    leakageTester: { supply: psi(80), restrictorMm: 1.016 },
    readings: [
      ...dry.map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) })),
      ...wet.map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, wet: true, pressure: psi(value) })),
      ...air.map(([percent, exhaust], i) => ({ test: 'leakage' as const, cylinder: i + 1, percent, heard: { intake: 0 as const, exhaust: exhaust as 0 | 3, crankcase: 1 as const, coolant: 0 as const } })),
    ],
  }
}
const sound = (e: Evaluation, cylinder: number): number => e.cylinders[cylinder - 1]!.sound
const exhaust = (e: Evaluation, cylinder: number): number => e.cylinders[cylinder - 1]!.faults.find(({ fault }) => fault === 'exhaust-valve-leak')!.probability
const noting = (dry: number, wet: number, leakage: number) => ({ ...knowledge, noise: { ...knowledge.noise, swapped: { ...knowledge.noise.swapped, value: { dry, wet, leakage } } } })

// common practice, no source: low but tight beside normal but leaky is a wrong note before it is two strange cylinders
describe('two notes the wrong way round', () => {
  it('leave open which cylinder it is, and ask for one of them again', () => {
    const e = evaluate(four([152, 112, 149, 150]))
    for (const n of [2, 3]) expect(exhaust(e, n)).toBeGreaterThan(0.15)
    expect(e.next[0]!.tests[0]).toMatchObject({ test: 'compression', repeat: true })
    expect(e.objections.map(({ code }) => code)).toContain('wrong-cylinder')
  })

  it('are told by the oil: what fits the wet readings was noted rightly', () => {
    const dryWrong = evaluate(four([152, 112, 149, 150], [172, 168, 126, 170]), undefined, { ranking: false })
    expect(sound(dryWrong, 2)).toBeGreaterThan(0.95)
    expect(exhaust(dryWrong, 3)).toBeGreaterThan(0.6)
    const airWrong = evaluate(four([152, 112, 149, 150], [172, 127, 168, 170]), undefined, { ranking: false })
    expect(sound(airWrong, 3)).toBeGreaterThan(0.75)
    expect(exhaust(airWrong, 2)).toBeGreaterThan(0.5)
  })

  it('with oil alone leave open which cylinder it is', () => {
    const e = evaluate(four([155, 70, 150, 152], [176, 170, 90, 171], []))
    for (const n of [2, 3]) expect(sound(e, n)).toBeLessThan(0.7)
    for (const n of [1, 4]) expect(sound(e, n)).toBeGreaterThan(0.9)
  })

  it.each([
    ['dry', noting(2.99, 0, 0), four([152, 112, 149, 150]), four([152, 149, 112, 150])],
    ['leakage', noting(0, 0, 2.99), four([152, 112, 149, 150]), four([152, 112, 149, 150], [], [AIR[0], AIR[2], AIR[1], AIR[3]])],
    ['wet', noting(0, 2.99, 0), four([155, 70, 150, 152], [176, 170, 90, 171], []), four([155, 70, 150, 152], [176, 90, 170, 171], [])],
  ] as const)('say what the right notes say where it is certain that they are wrong: %s', (_, certain, noted, right) => {
    const given = evaluate(noted, certain, { ranking: false }), put = evaluate(right, noting(0, 0, 0), { ranking: false })
    for (const n of [1, 2, 3, 4]) {
      expect(sound(given, n)).toBeCloseTo(sound(put, n), 1)
      expect(exhaust(given, n)).toBeCloseTo(exhaust(put, n), 1)
    }
  })

  it('are no matter where a cylinder was read twice, or where both fit', () => {
    const again = four([152, 112, 149, 150])
    const twice = { ...again, readings: [...again.readings, { test: 'compression' as const, cylinder: 2, pressure: psi(112) }] }
    const same = (value: Case): void => expect(evaluate(value, noting(0.5, 0.5, 0.5), { ranking: false }).cylinders).toEqual(evaluate(value, noting(0, 0, 0), { ranking: false }).cylinders)
    same(twice)
    same(four([152, 149, 112, 150]))
  })

  it('count for the cylinder beside as well: without its reading this one stands as read', () => {
    const e = evaluate(four([152, 112, 149, 150], [172, 168, 126, 170]))
    expect(e.because.some(({ kind, cylinder, readings, decibans }) => kind === 'reading' && cylinder === 3 && readings.includes(1) && decibans > 3)).toBe(true)
  })
})
