import type { Case } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../evaluate.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })
/** A four whose cylinder 3 is low; `first` is its first stroke, those of the others stand at 60 percent. */
const withFirst = (first: number | undefined, low = 60): Case => ({
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, boreMm: 80, strokeMm: 80, compressionRatio: 9, firingOrder: [1, 3, 4, 2] },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' },
  readings: [150, 152, low, 148].map((value, i) => ({ test: 'compression', cylinder: i + 1, pressure: psi(value), ...(first === undefined ? {} : { firstStroke: psi(i === 2 ? first : 0.6 * value) }) })),
})
const notOpening = (given: Case) => evaluate(given, undefined, { ranking: false }).cylinders[2]!.faults.find(({ fault }) => fault === 'valve-not-opening')!.probability

describe('first strokes', () => {
  it('of a cylinder that leaks stand nearer its final pressure: a valve that does not open is the less likely', () => {
    expect(notOpening(withFirst(43))).toBeLessThan(notOpening(withFirst(36)))
  })
  it('of a sound cylinder with a badly seated gauge are low by the same part', () => {
    const sound = (given: Case) => evaluate(given, undefined, { ranking: false }).cylinders[2]!.sound
    expect(sound(withFirst(66, 110))).toBeGreaterThan(sound(withFirst(76, 110)))
  })
  it('carry little weight: no belief of a cylinder moves by a tenth', () => {
    const sound = (given: Case) => evaluate(given, undefined, { ranking: false }).cylinders[2]!.sound
    for (const first of [60, 78, 95, 110]) expect(Math.abs(sound(withFirst(first, 120)) - sound(withFirst(undefined, 120)))).toBeLessThan(0.1)
  })
  it('say nothing where they stand at the final pressure, as of a gauge that was not released', () => {
    expect(notOpening(withFirst(60))).toBeCloseTo(notOpening(withFirst(undefined)), 4)
  })
})
