import { describe, expect, it } from 'vitest'
import type { Case, Objection, ObjectionCode } from '@evenbore/contract'
import { admit } from './admit.ts'
import { evaluate } from '../evaluate.ts'
import { cautionsFor } from './cautions.ts'

type Loose = Record<string, unknown>

/** A hot four in line; readings as given. */
function four(readings: Loose[], over: { engine?: Loose; conditions?: Loose; rest?: Loose } = {}): Case {
  return {
    engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], ...over.engine },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6, ...over.conditions },
    readings,
    ...over.rest,
  } as unknown as Case
}
const psi = (value: number) => ({ value, unit: 'psi' })
const dry = (cylinder: number, value: number, more: Loose = {}): Loose => ({ test: 'compression', cylinder, pressure: psi(value), ...more })
const all = (values: number[], more: (index: number) => Loose = () => ({})): Loose[] => values.map((value, index) => dry(index + 1, value, more(index)))
const leak = (cylinder: number, percent: number, more: Loose = {}): Loose => ({ test: 'leakage', cylinder, percent, ...more })
const gauge = { gauge: { span: psi(300), accuracyClass: 1.6, resolution: psi(1) } }
const tester = { leakageTester: { supply: psi(80), restrictorMm: 1.016 } }
const find = (given: Case, code: ObjectionCode): Objection | undefined => admit(given).objections.find((objection) => objection.code === code)
const codes = (given: Case): ObjectionCode[] => admit(given).objections.map(({ code }) => code)

describe('a sound case', () => {
  it('raises no objection', () => {
    expect(codes(four(all([150, 148, 152, 149], (index) => ({ seq: index + 1 })), { rest: gauge }))).toEqual([])
  })
  it('every objection says what to do, about readings that exist', () => {
    const given = four([...all([150, 148, 20, 149]), dry(3, 60), dry(3, 90, { wet: true }), leak(1, 0), leak(2, 0), leak(3, 95, { heard: { exhaust: 3 } })], { conditions: { strokes: 3 }, rest: { ...gauge, ...tester } })
    expect(codes(given).length).toBeGreaterThan(3)
    for (const objection of admit(given).objections) {
      expect(objection.do.length).toBeGreaterThan(10)
      expect(objection.readings.every((index) => index >= 0 && index < given.readings.length)).toBe(true)
      expect(objection.readings).toEqual([...new Set(objection.readings)].sort((a, b) => a - b))
    }
  })
})

describe('mistakes that compression readings betray', () => {
  it('throttle shut: all even, all far below the window', () => {
    const engine = { compressionRatio: 9 }
    expect(find(four(all([85, 84, 86, 85]), { engine }), 'throttle-shut')?.readings).toEqual([0, 1, 2, 3])
    expect(find(four(all([150, 84, 150, 150]), { engine }), 'throttle-shut')).toBeUndefined()
    expect(find(four(all([150, 149, 150, 150]), { conditions: { throttle: 'closed' } }), 'throttle-shut')).toBeDefined()
  })
  it('too few strokes: counted, or still rising by more than 2 percent', () => {
    const strokes = (peaks: number[]) => ({ strokes: peaks.map(psi), pressure: psi(peaks.at(-1)!) })
    expect(find(four(all([150, 148, 152, 149]), { conditions: { strokes: 4 } }), 'too-few-strokes')).toBeDefined()
    expect(find(four([dry(1, 150, strokes([80, 110, 130, 140, 146, 150]))]), 'too-few-strokes')?.readings).toEqual([0])
    expect(find(four([dry(1, 150, strokes([80, 110, 130, 140, 148, 150]))]), 'too-few-strokes')).toBeUndefined()
  })
  it('speed sag: the first cylinder again, lower; or a steady fall', () => {
    const fall = [160, 155, 150, 144]
    expect(find(four(fall.map((value, index) => dry(index + 1, value, { seq: index + 1 }))), 'speed-sag')?.readings).toEqual([0, 1, 2, 3])
    expect(find(four(fall.map((value, index) => dry(index + 1, value))), 'speed-sag')).toBeUndefined()
    const again = [dry(1, 152, { seq: 1 }), dry(2, 150, { seq: 2 }), dry(3, 151, { seq: 3 }), dry(4, 148, { seq: 4 }), dry(1, 140, { seq: 5 })]
    expect(find(four(again), 'speed-sag')?.readings).toEqual([0, 4])
    expect(find(four([...again.slice(0, 4), dry(1, 151, { seq: 5 })]), 'speed-sag')).toBeUndefined()
  })
  it('gauge not released: never falls and starts where it stood', () => {
    const rise = [140, 145, 150, 152]
    const stuck = rise.map((value, index) => dry(index + 1, value, { seq: index + 1, firstStroke: psi(index === 0 ? 80 : rise[index - 1]!) }))
    expect(find(four(stuck), 'gauge-not-released')).toBeDefined()
    const released = rise.map((value, index) => dry(index + 1, value, { seq: index + 1, firstStroke: psi(80) }))
    expect(find(four(released), 'gauge-not-released')).toBeUndefined()
  })
  it('adaptor leaking', () => expect(find(four([dry(1, 120, { heldTenSeconds: false }), dry(2, 150)]), 'adaptor-leaking')?.readings).toEqual([0]))
  it('wrong unit: the ratio to the sisters is that of two units, in whatever unit', () => {
    expect(find(four(all([150, 150, 10.4, 150])), 'wrong-unit')?.readings).toEqual([2])
    expect(find(four(all([150, 150, 1030, 150])), 'wrong-unit')?.readings).toEqual([2])
    expect(find(four(all([150, 150, 60, 150])), 'wrong-unit')).toBeUndefined()
    // all of them, against what a ratio of 9 should show
    expect(find(four(all([11, 11, 10, 11]), { engine: { compressionRatio: 9 } }), 'wrong-unit')?.readings).toEqual([0, 1, 2, 3])
    expect(find(four(all([110, 112, 108, 111]), { engine: { compressionRatio: 9 } }), 'wrong-unit')).toBeUndefined()
  })
  it('rounded: multiples of five at a claimed resolution of one, and weighed so', () => {
    const rounded = four(all([155, 160, 140, 145]), { rest: gauge })
    expect(find(rounded, 'rounded')).toBeDefined()
    expect(admit(rounded).compression[0]!.resolutionPa).toBeCloseTo(5 * 6894.757, 0)
    expect(find(four(all([155, 161, 140, 145]), { rest: gauge }), 'rounded')).toBeUndefined()
    expect(find(four(all([155, 160, 140, 145])), 'rounded')).toBeUndefined()
  })
  it('over span: the reading only says "at least"', () => {
    const given = four(all([300, 148, 152, 149]), { rest: gauge })
    expect(find(given, 'over-span')?.readings).toEqual([0])
    expect(admit(given).compression[0]!.highPa).toBeGreaterThan(300 * 6894 * 1.2)
  })
  it('repeats that contradict each other widen their cylinder, agreeing ones do not', () => {
    const widening = (again: number): number => admit(four([...all([150, 148, 120, 149]), dry(3, again)])).judged!.cylinders[2]!.widening
    expect(widening(121)).toBe(1)
    expect(widening(140)).toBeGreaterThan(3)
  })
  it('below the first mark a reading of 0 is an interval', () => {
    const { lowPa, highPa } = admit(four(all([150, 148, 0, 149]), { rest: gauge })).compression[2]!
    expect(lowPa).toBe(0)
    expect(highPa).toBeCloseTo(6894.757, 2)
  })
})

describe('mistakes that a wet test betrays', () => {
  const withWet = (...wet: [number, number][]): Case => four([...all([150, 152, 110, 149]), ...wet.map(([cylinder, value]) => dry(cylinder, value, { wet: true }))])
  it('wet below dry', () => expect(find(withWet([3, 95]), 'wet-below-dry')?.readings).toEqual([2, 4]))
  it('over 40 percent up', () => {
    expect(find(withWet([3, 160]), 'wet-too-high')?.readings).toEqual([2, 4])
    expect(find(withWet([3, 150]), 'wet-too-high')).toBeUndefined()
  })
  it('the control rises as much', () => {
    expect(find(withWet([3, 126], [2, 175]), 'control-rises')?.readings).toEqual([1, 2, 4, 5])
    expect(find(withWet([3, 140], [2, 158]), 'control-rises')).toBeUndefined()
  })
})

describe('mistakes that a leakage test betrays', () => {
  it('piston off the top: nearly all lost through one port, compression normal', () => {
    const lost = leak(3, 95, { heard: { exhaust: 3, intake: 0 } })
    expect(find(four([...all([150, 148, 149, 151]), lost]), 'piston-off-top')?.readings).toEqual([4])
    expect(find(four([...all([150, 148, 20, 151]), lost]), 'piston-off-top')).toBeUndefined()
    expect(find(four([...all([150, 148, 149, 151]), leak(3, 95, { heard: { exhaust: 3, intake: 3 } })]), 'piston-off-top')).toBeUndefined()
  })
  it('a check valve left in the hose: nothing lost on several', () => {
    expect(find(four([leak(1, 0), leak(2, 0.2), leak(3, 8)]), 'check-valve-left-in')?.readings).toEqual([0, 1])
    expect(find(four([leak(1, 0), leak(2, 6)]), 'check-valve-left-in')).toBeUndefined()
  })
  it('regulator droop: supplies differ, or percent and gauges disagree', () => {
    expect(find(four([leak(1, 10, { supply: psi(80) }), leak(2, 10, { supply: psi(72) })]), 'regulator-droop')?.readings).toEqual([0, 1])
    expect(find(four([leak(1, 30, { held: psi(70) })], { rest: tester }), 'regulator-droop')?.readings).toEqual([0])
    expect(find(four([leak(1, 12.5, { held: psi(70) })], { rest: tester }), 'regulator-droop')).toBeUndefined()
  })
  it('wrong cylinder: one low but tight beside one normal but leaky', () => {
    expect(find(four([...all([150, 148, 100, 151]), leak(3, 6), leak(4, 45)]), 'wrong-cylinder')?.readings).toEqual([4, 5])
    expect(find(four([...all([150, 148, 100, 151]), leak(3, 45), leak(4, 6)]), 'wrong-cylinder')).toBeUndefined()
  })
  it('leakage against compression: a factor of two apart', () => {
    const engine = { boreMm: 80, strokeMm: 80 }
    const sisters = [leak(1, 6), leak(2, 6), leak(4, 6)]
    expect(find(four([...all([150, 148, 149, 151]), ...sisters, leak(3, 60)], { engine, rest: tester }), 'leakage-against-compression')?.readings).toEqual([7])
    expect(find(four([...all([150, 148, 110, 151]), ...sisters, leak(3, 54)], { engine, rest: tester }), 'leakage-against-compression')).toBeUndefined()
  })
  it('no tester: percentages stay percentages, and a pressure held says nothing', () => {
    expect(find(four([leak(1, 12)]), 'no-tester')?.readings).toEqual([0])
    expect(find(four([{ test: 'leakage', cylinder: 1, held: psi(60) }]), 'no-tester')?.readings).toEqual([0])
    expect(find(four([{ test: 'leakage', cylinder: 1, heard: { exhaust: 2 } }]), 'not-weighed')?.readings).toEqual([0])
  })
})

describe('conditions', () => {
  it('sea-level pressure typed at height', () => {
    const at = (kPa: number) => four(all([120, 121, 119, 120]), { conditions: { altitudeM: 1500, airPressure: { value: kPa, unit: 'kPa' } } })
    expect(find(at(101.3), 'sea-level-pressure')).toBeDefined()
    expect(find(at(84.6), 'sea-level-pressure')).toBeUndefined()
  })
  it('neighbours are consecutive under one gasket, never by number', () => {
    const v = four([], { engine: { layout: 'v', banks: [[1, 3], [2, 4]] } })
    expect(admit(v).layout.neighbours).toEqual([[1, 3], [2, 4]])
    expect(admit(four([], { engine: { gaskets: [[1], [2], [3], [4]] } })).layout.neighbours).toEqual([])
  })
  it('station pressure: typed beats altitude beats sea level', () => {
    const air = (conditions: Loose) => admit(four([], { conditions })).sessions[0]!.airPa
    expect(air({ altitudeM: 1500, airPressure: { value: 85, unit: 'kPa' } })).toBe(85000)
    expect(air({ altitudeM: 1500 })).toBeCloseTo(84556, 0)
    expect(air({})).toBe(101325)
  })
})

describe('cautions stand at the step', () => {
  it('cranking, air, running, borescope', () => {
    const { engine } = four([])
    const of = (...steps: Parameters<typeof cautionsFor>[0]) => cautionsFor(steps, engine).map(({ code }) => code)
    expect(of({ test: 'compression' })).toEqual(['cranking', 'petrol-mist'])
    expect(of({ test: 'compression', wet: true })).toContain('wet-test-oil')
    expect(of({ test: 'leakage' })).toEqual(['compressed-air'])
    expect(of({ test: 'leakage', wet: true })).toContain('wet-test-oil')
    expect(of({ test: 'borescope' })).toEqual(['borescope'])
    expect(of({ test: 'compression', running: true })).toEqual(['running-engine', 'high-tension'])
    expect(of({ test: 'plug' })).toEqual([])
  })
  it('a diesel adds spray and gauge; oil in it comes first', () => {
    const diesel = four([...all([350, 352, 349, 351]), dry(1, 400, { wet: true })], { engine: { fuel: 'diesel' } })
    expect(admit(diesel).cautions.map(({ code }) => code)).toEqual(['oil-in-diesel', 'cranking', 'diesel-spray', 'diesel-gauge'])
  })
  it('oil in a diesel is objected to in a leakage test as well, once for all its readings', () => {
    const oiled = four([...all([350, 352, 349, 351]), dry(1, 400, { wet: true }), { test: 'leakage', cylinder: 2, percent: 30, wet: true, heard: { crankcase: 3 } }], { engine: { fuel: 'diesel' } })
    const { objections, cautions } = admit(oiled)
    expect(objections.filter(({ code }) => code === 'oil-in-diesel').map(({ readings }) => readings)).toEqual([[4, 5]])
    expect(cautions[0]!.code).toBe('oil-in-diesel')
    const without = { ...oiled, readings: oiled.readings.slice(0, 4) }
    expect(evaluate(oiled, undefined, { ranking: false }).cylinders).toEqual(evaluate(without, undefined, { ranking: false }).cylinders)
  })
  it('liquid in a cylinder', () => {
    expect(admit(four([{ test: 'observation', code: 'locked-by-hand' }])).cautions.map(({ code }) => code)).toContain('liquid-in-cylinder')
    expect(admit(four([{ test: 'observation', code: 'locked-by-hand', present: false }])).cautions).toEqual([])
  })
})
