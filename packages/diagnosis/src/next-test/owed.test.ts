import type { Case, SuggestedTest } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../evaluate.ts'
import { bitsOfVerdict } from './owed.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })
const four: Case = {
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, boreMm: 80, strokeMm: 80, compressionRatio: 9, firingOrder: [1, 3, 4, 2] },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', crankingRpm: 200, strokes: 6 },
  leakageTester: { supply: psi(80), restrictorMm: 1.016 },
  readings: [],
}
const dry = (...values: number[]): Case['readings'] => values.map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) }))
const leak = (cylinder: number, percent: number, heard = {}): Case['readings'][number] => ({ test: 'leakage', cylinder, percent, heard })
const asked = (readings: Case['readings'], more: Partial<Case> = {}): SuggestedTest[] => evaluate({ ...four, ...more, readings }).next.flatMap(({ tests }) => tests)

describe('readings with the throttle shut', () => {
  it('are owed again, all of them, and nothing is enough until then', () => {
    const { next, enough } = evaluate({ ...four, conditions: { ...four.conditions, throttle: 'closed' }, readings: dry(105, 104, 106, 105) })
    expect(enough).toBeNull()
    expect(next.find(({ tests: [test] }) => test!.repeat && test!.cylinders?.length === 4)?.says).toContain('throttle was closed')
  })
})

describe('repeats that are owed', () => {
  it('an undecided verdict asks for the lowest and the highest again, and is not enough', () => {
    const e = evaluate({ ...four, readings: dry(150, 148, 135, 149) })
    expect(e.consistency.verdict).toBe('undecided')
    const repeat = e.next[1]!
    expect(repeat.tests).toEqual([{ test: 'compression', repeat: true, cylinders: [1, 3] }])
    expect(repeat.says).toMatch(/^Dry compression again on cylinders 1, 3\. The spread is inside the limit with \d\d in 100/)
    expect(e.enough).toBeNull()
    // read again once, or with oil in, it is not asked for any more
    const both = (readings: Case['readings']): boolean => asked(readings).some(({ repeat, cylinders }) => repeat === true && cylinders?.length === 2)
    expect(both([...dry(150, 148, 135, 149), ...dry(150, 148, 135, 149)])).toBe(false)
    expect(both([...dry(150, 148, 135, 149), { test: 'compression', cylinder: 3, wet: true, pressure: psi(150) }])).toBe(false)
    expect(both(dry(150, 148, 147, 149))).toBe(false)
  })

  it('a third reading is owed where two of one cylinder quarrel, and no fourth', () => {
    const again = (...values: number[]): SuggestedTest[] => asked([...dry(156, 154, 155, 157), ...values.map((value) => ({ test: 'compression' as const, cylinder: 2, pressure: psi(value) }))])
    expect(again(120)).toContainEqual({ test: 'compression', repeat: true, cylinders: [2] })
    expect(again(120, 153)).not.toContainEqual({ test: 'compression', repeat: true, cylinders: [2] })
  })

  it('leakage that compression contradicts is tested again, at firing top, before anything is built on it', () => {
    const e = evaluate({ ...four, readings: [...dry(155, 157, 156, 156), leak(2, 65, { crankcase: 2, exhaust: 0, intake: 0 }), leak(1, 8), leak(3, 8)] })
    expect(e.objections.map(({ code }) => code)).toContain('leakage-against-compression')
    expect(e.enough).toBeNull()
    expect(e.next.flatMap(({ tests }) => tests)).toContainEqual({ test: 'leakage', repeat: true, cylinders: [2] })
    const off = asked([...dry(156, 155, 157, 156), leak(2, 94, { exhaust: 3, intake: 0, crankcase: 0 }), leak(1, 8)])
    expect(off).toContainEqual({ test: 'leakage', repeat: true, cylinders: [2] })
    const twice = asked([...dry(156, 155, 157, 156), leak(2, 94, { exhaust: 3, intake: 0, crankcase: 0 }), leak(1, 8), leak(2, 93, { exhaust: 3, intake: 0, crankcase: 0 })])
    expect(twice).not.toContainEqual({ test: 'leakage', repeat: true, cylinders: [2] })
  })

  it('the bits of a verdict: most at even odds, none where it is certain', () => {
    expect(bitsOfVerdict(0.5)).toBeGreaterThan(bitsOfVerdict(0.9))
    expect(bitsOfVerdict(0.3)).toBeCloseTo(bitsOfVerdict(0.7), 9)
    for (const certain of [0, 1]) expect(bitsOfVerdict(certain)).toBeCloseTo(0, 9)
  })
})

describe('readings that are not weighed leave their test to be done', () => {
  it('a cylinder cranked for other strokes than its sisters is cranked again', () => {
    const strokes = dry(155, 156, 128, 154).map((reading, i) => ({ ...reading, strokeCount: i === 2 ? 3 : 6 }))
    expect(asked(strokes as Case['readings'])[0]).toEqual({ test: 'compression', cylinders: [3] })
  })

  it('and so is one that was read in another session', () => {
    const cold = { conditions: { ...four.conditions, engine: 'cold' as const } }
    const readings: Case['readings'] = [...dry(156, 155, 157), { test: 'compression', cylinder: 4, session: 'cold', pressure: psi(136) }]
    expect(asked(readings, { sessions: { cold } })[0]).toEqual({ test: 'compression', cylinders: [4] })
  })

  it('leakage through a check valve says nothing, and is tested again', () => {
    const readings = [...dry(156, 158, 116, 155), ...[1, 2, 3, 4].map((cylinder) => leak(cylinder, 0))]
    const blocked = evaluate({ ...four, readings }), plain = evaluate({ ...four, readings: readings.slice(0, 4) })
    expect(blocked.objections.map(({ code }) => code)).toEqual(['check-valve-left-in'])
    expect(blocked.cylinders[2]!.sound).toBeCloseTo(plain.cylinders[2]!.sound, 9)
    expect(blocked.next.flatMap(({ tests }) => tests)).toContainEqual({ test: 'leakage', cylinders: [3] })
  })
})
