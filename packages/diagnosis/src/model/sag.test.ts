import type { Case } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../evaluate.ts'

/** A four in the order 1-3-4-2, each reading as (cylinder, psi) in the order taken. */
const read = (...order: readonly (readonly [cylinder: number, value: number])[]): Case => ({
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, boreMm: 80, strokeMm: 80, compressionRatio: 9, firingOrder: [1, 3, 4, 2] },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' },
  readings: order.map(([cylinder, value], i) => ({ test: 'compression', cylinder, pressure: { value, unit: 'psi' }, seq: i + 1 })),
})
const sound = (given: Case) => evaluate(given, undefined, { ranking: false }).cylinders.map((belief) => belief.sound)

describe('a starter that slows down from reading to reading', () => {
  // rough cranking calculation: 160 rpm reads 6 to 8 percent below 200 (from memory)
  const tiring = read([1, 155], [3, 151], [4, 146], [2, 141], [1, 136])
  it('makes no cylinder suspect where the first one, read again, has lost as much', () => {
    expect(Math.min(...sound(tiring))).toBeGreaterThan(0.97)
    expect(evaluate(tiring).objections.map(({ code }) => code)).toContain('speed-sag')
  })
  it('does not hide a cylinder that is low besides', () => {
    expect(sound(read([1, 155], [3, 151], [4, 110], [2, 141], [1, 136]))[3]).toBeLessThan(0.3)
  })
  it('is not believed where the order taken speaks against it, or is not known', () => {
    const steps = [[2, 137], [3, 149], [4, 143], [1, 155]] as const
    const mixed = sound(read(...steps))
    expect(mixed[1]).toBeLessThan(0.93)
    const { readings, ...rest } = read(...steps)
    expect(sound({ ...rest, readings: readings.map((reading) => ({ ...reading, seq: undefined })) as unknown as Case['readings'] })).toEqual(mixed)
  })
  it('is not believed where one cylinder stands out at the end and the first reads as before', () => {
    const once = sound(read([1, 155], [3, 154], [4, 152], [2, 125]))[1]!
    expect(sound(read([1, 155], [3, 154], [4, 152], [2, 125], [1, 154]))[1]).toBeCloseTo(once, 1)
    expect(once).toBeLessThan(0.3)
  })
})
