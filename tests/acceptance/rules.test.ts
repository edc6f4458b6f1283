import { describe, expect, it } from 'vitest'
import { type Case, type Consistency, parseCase } from '@evenbore/contract'
import { evaluate } from '@evenbore/diagnosis'

type Unit = 'psi' | 'kPa' | 'bar' | 'kgf/cm2'

/** A hot engine in line with dry readings, by cylinder; anything else can be laid over. */
function engineWith(values: readonly number[], over: Record<string, unknown> = {}, unit: Unit = 'psi'): Case {
  const { engine, conditions, readings, ...rest } = over as { engine?: object; conditions?: object; readings?: object[] }
  const checked = parseCase({
    engine: { fuel: 'petrol', layout: 'inline', cylinders: Math.max(values.length, 1), ...engine },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6, ...conditions },
    readings: [...values.map((value, index) => ({ test: 'compression', cylinder: index + 1, pressure: { value, unit } })), ...(readings ?? [])],
    ...rest,
  })
  if (checked.error) throw new Error(JSON.stringify(checked.error))
  return checked.value
}

const consistency = (given: Case): Consistency => evaluate(given, undefined, { ranking: false }).consistency
const codes = (given: Case): string[] => evaluate(given, undefined, { ranking: false }).objections.map(({ code }) => code)
const rule = (found: Consistency, name: string) => found.alsoChecked.find((each) => each.rule === name)

describe("the trade's own case (common practice, no source)", () => {
  const found = consistency(engineWith([155, 160, 140, 145]))
  it('dry 155, 160, 140, 145 psi spread 12.5 percent and are outside one tenth as read', () => {
    expect(found.rule).toBe('one-tenth')
    expect(found.basis).toBe('common practice, no source')
    expect(found.spreadPercent).toBe(12.5)
    expect(found.asRead).toBe('outside')
    expect(found.lowest).toMatchObject({ cylinder: 3, pressure: { value: 140, unit: 'psi' }, readings: [2] })
    expect(found.highest).toMatchObject({ cylinder: 2, pressure: { value: 160, unit: 'psi' } })
  })
  it('and the gauge leaves little hope that they are truly inside', () => {
    expect(found.probabilityInside).toBeLessThan(0.1)
    expect(found.verdict).not.toBe('inside')
  })
})

describe('rules of the trade, each with its basis', () => {
  it('75 percent of the highest (US Army TM 5-4210-230-14&P-1, addendum 2)', () => {
    expect(rule(consistency(engineWith([100, 100, 100, 75])), 'three-quarters')?.asRead).toBe('inside')
    expect(rule(consistency(engineWith([100, 100, 100, 74])), 'three-quarters')).toMatchObject({ asRead: 'outside', cylinders: [4] })
  })
  it('20 percent below the mean of all (TM 1-1500-204-23-1)', () => {
    // mean 95, a fifth below is 76
    expect(rule(consistency(engineWith([101, 101, 102, 76])), 'fifth-below-mean')?.asRead).toBe('inside')
    expect(rule(consistency(engineWith([102, 101, 102, 75])), 'fifth-below-mean')).toMatchObject({ asRead: 'outside', cylinders: [4] })
  })
  it('10 psi between cylinders, petrol only (TM 10-3930-618-20 par. 2-12)', () => {
    expect(rule(consistency(engineWith([125, 120, 124, 115])), 'ten-psi')?.asRead).toBe('inside')
    expect(rule(consistency(engineWith([125, 120, 124, 114])), 'ten-psi')?.asRead).toBe('outside')
    expect(rule(consistency(engineWith([125, 120, 124, 114], { engine: { fuel: 'diesel' } })), 'ten-psi')).toBeUndefined()
  })
  it('equal to the limit is inside, in any unit', () => {
    for (const unit of ['psi', 'bar', 'kPa', 'kgf/cm2'] as const) {
      const values = [10, 10, 9, 10].map((value) => (unit === 'kPa' ? value * 100 : value * 1.1))
      expect(consistency(engineWith(values, {}, unit)).asRead).toBe('inside')
    }
    expect(consistency(engineWith([100, 100, 89.99, 100])).asRead).toBe('outside')
  })
  it('every rule says where it comes from', () => {
    const found = consistency(engineWith([150, 149, 151, 148], { engine: { limits: { minimum: { value: 100, unit: 'psi' }, maximum: { value: 200, unit: 'psi' }, spreadPercent: 15 } } }))
    expect(found.rule).toBe('own-spread-percent')
    expect(found.alsoChecked.map((each) => each.rule)).toEqual(['one-tenth', 'three-quarters', 'ten-psi', 'fifth-below-mean', 'own-minimum', 'own-maximum'])
    for (const each of found.alsoChecked) expect(each.basis.length).toBeGreaterThan(5)
  })
  it("both of the maker's limits must hold, and the nearer one names the rule", () => {
    const limits = { spreadPercent: 15, spreadPressure: { value: 10, unit: 'psi' } }
    const found = consistency(engineWith([150, 149, 151, 138], { engine: { limits } }))
    expect(found).toMatchObject({ rule: 'own-spread-pressure', asRead: 'outside', limitPercent: 15 })
    expect(consistency(engineWith([50, 49, 51, 42], { engine: { limits } }))).toMatchObject({ rule: 'own-spread-percent', asRead: 'outside' })
    expect(consistency(engineWith([150, 149, 151, 143], { engine: { limits } }))).toMatchObject({ asRead: 'inside' })
  })
  it('a minimum just missed or met stays undecided: gain and zero of the gauge count', () => {
    const found = consistency(engineWith([101, 102, 103, 102], { engine: { limits: { minimum: { value: 100, unit: 'psi' } } }, gauge: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6 } }))
    expect(rule(found, 'own-minimum')).toMatchObject({ asRead: 'inside', verdict: 'undecided' })
  })
})

describe('what may be compared', () => {
  it('a minority with another stroke count is left out and objected to', () => {
    const given = engineWith([150, 150, 120, 150], { readings: [] })
    const other = { ...given, readings: given.readings.map((reading, index) => (index === 2 && reading.test === 'compression' ? { ...reading, strokeCount: 3 } : reading)) }
    const found = evaluate(other, undefined, { ranking: false })
    expect(found.consistency.spreadPercent).toBe(0)
    expect(found.objections.find(({ code }) => code === 'mixed-strokes')?.readings).toEqual([2])
    expect(found.objections.map(({ code }) => code)).toContain('incomplete')
  })
  it('in a tie all are left out: undecided', () => {
    const given = engineWith([150, 150, 120, 120])
    const other = { ...given, readings: given.readings.map((reading, index) => (index >= 2 && reading.test === 'compression' ? { ...reading, strokeCount: 3 } : reading)) }
    const found = evaluate(other, undefined, { ranking: false })
    expect(found.consistency).toMatchObject({ spreadPercent: null, lowest: null, highest: null, asRead: null, verdict: 'undecided', probabilityInside: null })
    expect(found.objections.find(({ code }) => code === 'mixed-strokes')?.readings).toEqual([0, 1, 2, 3])
    expect(found.objections.map(({ code }) => code)).toContain('no-sister')
  })
  it('a reading left out moves nothing', () => {
    const without = engineWith([150, 148, 151, 149])
    const oily = engineWith([150, 148, 151, 149], { engine: { fuel: 'diesel' } })
    const wet = { ...oily, readings: [...oily.readings, { test: 'compression', cylinder: 1, wet: true, pressure: { value: 300, unit: 'psi' } }] } as Case
    expect(evaluate(wet, undefined, { ranking: false }).cylinders).toEqual(evaluate(oily, undefined, { ranking: false }).cylinders)
    expect(evaluate(wet, undefined, { ranking: false }).cautions.map(({ code }) => code)[0]).toBe('oil-in-diesel')
    expect(codes(wet)).toContain('oil-in-diesel')
    expect(codes(without)).not.toContain('oil-in-diesel')
  })
  it('the session with most cylinders is judged, then the warmer, then the later', () => {
    const conditions = { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6 }
    const reading = (cylinder: number, value: number, session?: string) => ({ test: 'compression', cylinder, pressure: { value, unit: 'psi' }, ...(session ? { session } : {}) })
    const sessions = { a: { conditions: { ...conditions, engine: 'cold' } }, b: { conditions } }
    const judged = (readings: object[]): string | null => consistency(engineWith([], { engine: { cylinders: 3 }, sessions, readings })).session
    const both = [reading(1, 150, 'a'), reading(2, 150, 'a'), reading(1, 140, 'b'), reading(2, 140, 'b')]
    expect(judged(both)).toBe('b')
    expect(judged([...both, reading(3, 150, 'a')])).toBe('a')
    expect(judged([...both, reading(1, 140), reading(2, 150)])).toBe('b')
    expect(judged([reading(1, 140), reading(2, 150)])).toBeNull()
    expect(codes(engineWith([], { engine: { cylinders: 3 }, sessions, readings: both }))).toContain('mixed-conditions')
  })
  it('one cylinder alone is undecided', () => {
    const found = evaluate(engineWith([150], { engine: { cylinders: 4 } }), undefined, { ranking: false })
    expect(found.consistency).toMatchObject({ verdict: 'undecided', probabilityInside: null, spreadPercent: null })
    expect(found.objections.map(({ code }) => code)).toContain('no-sister')
  })
  it('repeats are combined: agreeing ones narrow, contradicting ones are objected to', () => {
    const repeat = (value: number) => engineWith([150, 150, 140, 150], { readings: [{ test: 'compression', cylinder: 3, pressure: { value, unit: 'psi' } }] })
    expect(consistency(repeat(140)).lowest).toMatchObject({ cylinder: 3, readings: [2, 4], pressure: { value: 140 } })
    expect(codes(repeat(141))).not.toContain('repeat-disagrees')
    expect(codes(repeat(150))).toContain('repeat-disagrees')
    expect(consistency(repeat(150)).lowest?.pressure.value).toBeCloseTo(145, 9)
  })
})

describe('properties of the verdict', () => {
  const gauge = (scale: number, unit: Unit, per: number) => ({ span: { value: 300 * scale * per, unit }, accuracyClass: 1.6, resolution: { value: scale * per, unit } })
  const limits = (scale: number, unit: Unit, per: number) => ({ limits: { spreadPressure: { value: 15 * scale * per, unit }, minimum: { value: 120 * scale * per, unit } } })
  const values = [151, 148, 139, 150]
  const base = consistency(engineWith(values, { gauge: gauge(1, 'psi', 1), engine: limits(1, 'psi', 1) }))
  it('scaling readings, span, resolution and limits together moves nothing', () => {
    const scaled = consistency(engineWith(values.map((value) => value * 1.5), { gauge: gauge(1.5, 'psi', 1), engine: limits(1.5, 'psi', 1) }))
    expect(scaled.probabilityInside).toBeCloseTo(base.probabilityInside!, 9)
    expect(scaled.verdict).toBe(base.verdict)
  })
  it('another unit gives the same numbers', () => {
    const other = consistency(engineWith(values.map((value) => value * 6.894757293168361), { gauge: gauge(1, 'kPa', 6.894757293168361), engine: limits(1, 'kPa', 6.894757293168361) }, 'kPa'))
    expect(Math.abs(other.probabilityInside! - base.probabilityInside!)).toBeLessThan(1e-9)
    expect(other.spreadPercent).toBeCloseTo(base.spreadPercent!, 9)
  })
  it('renumbering the cylinders with their banks renames the answer, also among equals', () => {
    const renamed = [4, 3, 2, 1]
    const level = [150, 139, 139, 150]
    const given = consistency(engineWith(level, { engine: { banks: [[1, 2, 3, 4]] } }))
    const turned = consistency(engineWith(renamed.map((old) => level[old - 1]!), { engine: { banks: [renamed] } }))
    expect(turned.lowest!.cylinder).toBe(renamed[given.lowest!.cylinder - 1])
    expect(turned.highest!.cylinder).toBe(renamed[given.highest!.cylinder - 1])
    expect(turned.probabilityInside).toBeCloseTo(given.probabilityInside!, 12)
  })
  it('the order of the list says nothing', () => {
    const given = engineWith(values, { gauge: gauge(1, 'psi', 1) })
    const turned = { ...given, readings: given.readings.toReversed() }
    expect(consistency(turned).probabilityInside).toBe(consistency(given).probabilityInside)
  })
})

describe('leakage limit (FAA AC 43.13-1B par. 8-14b(5)(i): above 25 percent is suspect)', () => {
  const tester = (supply: number, restrictorMm: number) => ({ leakageTester: { supply: { value: supply, unit: 'psi' }, restrictorMm } })
  const leak = (held: number, more: object = {}, over: object = {}) =>
    evaluate(engineWith([], { engine: { cylinders: 4, ...over }, ...more, readings: [{ test: 'leakage', cylinder: 3, held: { value: held, unit: 'psi' } }] }), undefined, { ranking: false }).leakage[0]!
  it('60 held of 80 psi is exactly 25 percent and not over; less is', () => {
    expect(leak(60, tester(80, 1.016))).toMatchObject({ percentAsRead: 25, overLimit: false })
    expect(leak(59.9, tester(80, 1.016)).overLimit).toBe(true)
    expect(leak(60, tester(80, 1.016)).leakAreaMm2).toBeCloseTo(0.858, 3)
    expect(leak(60, tester(80, 1.016)).percentAtReference).toBeCloseTo(25, 6)
  })
  it('a restrictor that is not the prescribed one is judged at the reference tester', () => {
    // a wider restrictor feeds more: the same leak loses less
    const wide = leak(66, tester(80, 1.524))
    expect(wide.percentAsRead).toBeCloseTo(17.5, 9)
    expect(wide.percentAtReference).toBeGreaterThan(25)
    expect(wide.overLimit).toBe(true)
    // the same tester is the prescribed one for a large bore
    expect(leak(66, tester(80, 1.524), { boreMm: 130 }).overLimit).toBe(false)
  })
  it('without a tester the percentage decides, and the area stays unknown', () => {
    const found = evaluate(engineWith([], { engine: { cylinders: 4 }, readings: [{ test: 'leakage', cylinder: 1, percent: 26 }, { test: 'leakage', cylinder: 2, percent: 25 }] }), undefined, { ranking: false })
    expect(found.leakage.map(({ overLimit, leakAreaMm2 }) => [overLimit, leakAreaMm2])).toEqual([[true, null], [false, null]])
    expect(found.objections.find(({ code }) => code === 'no-tester')?.readings).toEqual([0, 1])
  })
  it('a cylinder is judged against its sisters', () => {
    const given = engineWith([], { engine: { cylinders: 4 }, ...tester(80, 1.016), readings: [76, 76, 40, 76].map((held, index) => ({ test: 'leakage', cylinder: index + 1, held: { value: held, unit: 'psi' } })) })
    expect(evaluate(given, undefined, { ranking: false }).leakage[2]!.againstSisters).toBeCloseTo(1.722016 / 0.433058, 4)
  })
  it('its own leak is not among its sisters', () => {
    const given = engineWith([], { engine: { cylinders: 3 }, ...tester(80, 1.016), readings: [76, 70, 40].map((held, index) => ({ test: 'leakage', cylinder: index + 1, held: { value: held, unit: 'psi' } })) })
    expect(evaluate(given, undefined, { ranking: false }).leakage[2]!.againstSisters).toBeCloseTo(1.722016 / ((0.433058 + 0.70669) / 2), 4)
  })
  it('nothing held has no area', () => {
    expect(leak(0, tester(80, 1.016))).toMatchObject({ percentAsRead: 100, overLimit: true, leakAreaMm2: null, percentAtReference: null })
  })
})
