import { describe, expect, it } from 'vitest'
import type { Case, Comparison, Operation } from '@evenbore/contract'
import { compare } from '../compare.ts'
import { changeProbabilities } from './change.ts'

/** A hot four in line with dry readings. */
function session(values: readonly number[], over: { conditions?: object; engine?: object; readings?: object } = {}): Case {
  return {
    engine: { fuel: 'petrol', layout: 'inline', cylinders: values.length, firingOrder: values.length === 4 ? [1, 3, 4, 2] : undefined, ...over.engine },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6, ...over.conditions },
    gauge: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6, resolution: { value: 1, unit: 'psi' } },
    readings: values.map((value, index) => ({ test: 'compression', cylinder: index + 1, pressure: { value, unit: 'psi' }, ...over.readings })),
  } as Case
}
const retest = (before: Case, after: Case, work: Operation[] = []): Comparison => compare({ before, after, work })
const says = (found: Comparison): string => found.objections.filter(({ in: side }) => side === 'both').map(({ says: text }) => text).join(' ')

describe('a retest against its baseline', () => {
  it('a repaired cylinder is improved, the others are unchanged, and the spread closes', () => {
    const found = retest(session([152, 150, 98, 149]), session([153, 149, 148, 151]), ['head-valves'])
    expect(found.comparable).toBe(true)
    expect(found.cylinders[2]!.improved).toBeGreaterThan(0.99)
    for (const place of [0, 1, 3]) expect(found.cylinders[place]!.unchanged).toBeGreaterThan(0.9)
    expect(found.cylinders[2]!.change).toBeCloseTo(51, 0)
    expect(found.spread.improved).toBeGreaterThan(0.99)
    expect(found.cured.find(({ fault }) => fault === 'exhaust-valve-leak')?.cured).toBeGreaterThan(0.9)
  })
  it('the repaired cylinder read alone is measured by what its sound sisters read before', () => {
    const before = session([152, 150, 98, 149]), only = (value: number): Case => { const all = session([0, 0, value, 0]); return { ...all, readings: all.readings.slice(2, 3) } }
    const cured = (after: Case, work: Operation[] = []): number => retest(before, after, work).cured.find(({ fault }) => fault === 'exhaust-valve-leak')!.cured
    expect(cured(only(149), ['head-valves'])).toBeGreaterThan(0.95)
    expect(cured(only(97))).toBeLessThan(0.15)
    expect(cured(only(149))).toBeGreaterThan(0.5)
    // another gauge read the sisters: they say nothing of this one's level
    const other: Case = { ...only(149), gauge: { span: { value: 400, unit: 'psi' }, accuracyClass: 2.5 } }
    expect(cured(other)).toBeLessThan(cured(only(149)) - 0.2)
  })
  it('a fault nobody worked on and that still shows is not cured', () => {
    const found = retest(session([152, 150, 98, 149]), session([151, 151, 97, 150]))
    for (const { cured } of found.cured) expect(cured).toBeLessThan(0.15)
    expect(found.cylinders[2]!.unchanged).toBeGreaterThan(0.9)
  })
  it('new harm is told: a cylinder that was sound and is low now', () => {
    const found = retest(session([152, 150, 98, 149]), session([153, 120, 148, 151]), ['head-valves'])
    expect(found.cylinders[1]!.worse).toBeGreaterThan(0.99)
    expect(found.newHarm.map(({ cylinder }) => cylinder)).toEqual([2])
  })
  it('carbon taken out brings a cylinder down to its sisters: a cure, and no harm', () => {
    const seen = (looks: ('carbon' | 'nothing')[]): Case['readings'] => [1, 4].map((cylinder, i) => ({ test: 'borescope' as const, cylinder, seen: [looks[i]!] }))
    const before = session([180, 150, 151, 182]), after = session([154, 150, 151, 153])
    const found = retest({ ...before, readings: [...before.readings, ...seen(['carbon', 'carbon'])] }, { ...after, readings: [...after.readings, ...seen(['nothing', 'nothing'])] }, ['decoke'])
    expect(found.newHarm).toEqual([])
    expect(found.cured.filter(({ fault, cured }) => fault === 'carbon-build-up' && cured > 0.9).map(({ cylinder }) => cylinder)).toEqual(expect.arrayContaining([1, 4]))
    // down further than that is harm all the same
    expect(retest({ ...before, readings: [...before.readings, ...seen(['carbon', 'carbon'])] }, session([115, 150, 151, 153]), ['decoke']).newHarm.map(({ cylinder }) => cylinder)).toContain(1)
  })
  it('a cylinder that was not read again is not told to be harmed', () => {
    const leak = (cylinder: number, percent: number, exhaust: 0 | 3): Case['readings'][number] => ({ test: 'leakage', cylinder, percent, heard: { exhaust, intake: 0, crankcase: 1 } })
    const before = session([150, 148, 98, 151])
    const found = retest({ ...before, readings: [...before.readings, ...[1, 2, 4].map((n) => leak(n, 8, 0)), leak(3, 58, 3)] }, { ...before, readings: [leak(3, 54, 3), leak(1, 8, 0)] }, ['head-valves'])
    expect(found.newHarm).toEqual([])
  })
  it('the same numbers again are the same spread, and other strokes are no spread at all', () => {
    const same = retest(session([150, 148, 98, 151]), session([149, 149, 99, 150])).spread
    expect(same.unchanged).toBeGreaterThan(0.6)
    const strokes = retest(session([132, 131, 120, 133], { conditions: { strokes: 4 } }), session([150, 148, 140, 151], { conditions: { strokes: 10 } }))
    expect([strokes.spread.improved, strokes.spread.unchanged, strokes.spread.worse]).toEqual([null, null, null])
    expect(strokes.objections.map(({ code }) => code)).toContain('mixed-strokes')
  })
  it('all a little higher is another day, all much lower is not', () => {
    const little = retest(session([150, 148, 151, 149]), session([156, 154, 157, 155]))
    for (const { unchanged } of little.cylinders) expect(unchanged).toBeGreaterThan(0.8)
    const much = retest(session([150, 148, 151, 149]), session([112, 111, 113, 112]))
    for (const { worse } of much.cylinders) expect(worse).toBeGreaterThan(0.95)
  })
  it('probabilities sum to one', () => {
    for (const each of [...retest(session([150, 120, 0, 149]), session([0, 150, 150, 300])).cylinders, retest(session([150, 148]), session([120, 148])).spread]) {
      expect(each.improved! + each.unchanged! + each.worse!).toBeCloseTo(1, 9)
    }
    for (const sd of [0.001, 0.02, 0.5]) {
      for (const each of changeProbabilities([{ log: 0.02, sd }, { log: -5, sd }, { log: 6, sd }], 0.03, true)) expect(each.improved + each.unchanged + each.worse).toBeCloseTo(1, 9)
    }
  })
})

describe('what cannot be compared is refused, saying which condition differs', () => {
  const before = session([150, 148, 151, 149])
  it.each([
    [{ throttle: 'closed' }, /throttle \(open before, closed after\)/],
    [{ plugsOut: 'one' }, /plugs out/],
    [{ engine: 'cold' }, /engine \(hot before, cold after\)/],
  ])('%j', (conditions, expected) => {
    const found = retest(before, session([150, 148, 151, 149], { conditions }))
    expect(found.comparable).toBe(false)
    expect(says(found)).toMatch(expected)
    expect(found.cylinders[0]).toMatchObject({ improved: null, unchanged: null, worse: null, change: null })
    expect(found.cylinders[0]!.after?.value).toBeCloseTo(150, 9)
    expect(found.spread.improved).toBeNull()
  })
  it('cranking against running', () => expect(retest(before, session([70, 71, 70, 72], { readings: { running: true } })).comparable).toBe(false))
  it.each(['rebore', 'cam-tappets', 'overhaul'] as const)('%s ends the baseline', (work) => {
    const found = retest(before, session([160, 160, 160, 160]), [work])
    expect(found.comparable).toBe(false)
    expect(says(found)).toMatch(/ends the baseline/)
  })
  it('a skimmed head and another camshaft too', () => {
    expect(retest(before, session([160, 160, 160, 160], { engine: { history: { headSkimmed: true } } })).comparable).toBe(false)
    expect(retest(before, session([160, 160, 160, 160], { engine: { camshaft: 'other' } })).comparable).toBe(false)
  })
  it('speeds more than 20 percent apart are objected to, and widen', () => {
    const same = retest(session([150, 148, 151, 149], { conditions: { crankingRpm: 200 } }), session([160, 158, 161, 159], { conditions: { crankingRpm: 200 } }))
    const apart = retest(session([150, 148, 151, 149], { conditions: { crankingRpm: 200 } }), session([160, 158, 161, 159], { conditions: { crankingRpm: 260 } }))
    expect(says(same)).toBe('')
    expect(says(apart)).toMatch(/20 percent/)
    expect(apart.comparable).toBe(true)
    expect(apart.cylinders[0]!.improved!).toBeLessThan(same.cylinders[0]!.improved!)
  })
  it('no readings at all', () => expect(retest(before, { ...before, readings: [] }).objections.some(({ code }) => code === 'no-sister')).toBe(true))
})

describe('corrections', () => {
  it('air pressure is corrected: the same engine at 2,000 m is unchanged', () => {
    // 79495 of 101325 Pa, ISO 2533
    const high = [150, 148, 151, 149].map((value) => Math.round(value * 0.7846))
    const found = retest(session([150, 148, 151, 149], { conditions: { altitudeM: 0 } }), session(high, { conditions: { altitudeM: 2000 } }))
    for (const { unchanged, change } of found.cylinders) {
      expect(unchanged).toBeGreaterThan(0.9)
      expect(Math.abs(change!)).toBeLessThan(1)
    }
  })
  it('other stroke counts are corrected where the build-up was recorded', () => {
    const peaks = (level: number, count: number) => Array.from({ length: count }, (_, index) => ({ value: level * (1 - Math.exp(-0.55 * (index + 1))), unit: 'psi' as const }))
    const built = (count: number): Case => ({
      ...session([1, 1, 1, 1]),
      readings: [150, 148, 151, 149].map((level, index) => ({ test: 'compression', cylinder: index + 1, strokes: peaks(level, count), pressure: peaks(level, count).at(-1)! })),
    })
    const found = retest(built(4), built(8))
    expect(found.cylinders[0]!.before!.value).toBeLessThan(found.cylinders[0]!.after!.value * 0.95)
    for (const { change, unchanged } of found.cylinders) {
      expect(Math.abs(change!)).toBeLessThan(0.5)
      expect(unchanged).toBeGreaterThan(0.8)
    }
    const unknown = retest(session([140, 140, 140, 140], { conditions: { strokes: 4 } }), session([150, 150, 150, 150], { conditions: { strokes: 8 } }))
    expect(unknown.cylinders[0]!.improved).toBeNull()
    expect(unknown.objections.map(({ code }) => code)).toContain('mixed-strokes')
  })
})
