import { describe, expect, it } from 'vitest'
import { normalBelow, normalDensity } from '../../packages/diagnosis/src/rules/normal.ts'
import { gaussLegendre } from '../../packages/diagnosis/src/rules/quadrature.ts'
import { probabilityAllAbove, probabilityAllBelow, probabilitySpreadInside } from '../../packages/diagnosis/src/rules/inside.ts'
import { probabilityBelow, readingDensity } from '../../packages/diagnosis/src/rules/reading-density.ts'
import { admit } from '../../packages/diagnosis/src/admission/admit.ts'
import { consistency, verdictOf } from '../../packages/diagnosis/src/rules/consistency.ts'
import type { Case } from '@evenbore/contract'
import type { CombinedCylinder } from '../../packages/diagnosis/src/admission/types.ts'

const digits = (value: number, expected: number, unit: number): void => expect(Math.abs(value - expected)).toBeLessThanOrEqual(unit / 2 + 1e-12)

describe('normal distribution', () => {
  it('z of .95 (published constant)', () => digits(normalBelow(1.644854), 0.95, 1e-6))
  it.each([[0, 0.5], [1, 0.841344746068543], [-3, 0.00134989803163009], [-6, 9.86587645037698e-10], [-8, 6.22096057427178e-16]])('below %d: %f (tables, from memory)', (z, p) => {
    expect(Math.abs(normalBelow(z) / p - 1)).toBeLessThan(1e-12)
  })
  it('joins its three pieces without a step and reaches both ends', () => {
    for (const z of [0.67448975, Math.sqrt(32)]) expect(Math.abs(normalBelow(z + 1e-9) - normalBelow(z - 1e-9) - 2e-9 * normalDensity(z))).toBeLessThan(1e-14)
    expect(normalBelow(Infinity)).toBe(1)
    expect(normalBelow(-Infinity)).toBe(0)
  })
})

/** A cylinder whose needle position is normal: a vanishing mark blurred by its repeatability. */
function normalCylinder(cylinder: number, pa: number, sdPa: number): CombinedCylinder {
  const mark = sdPa / 1000
  return {
    cylinder, readings: [cylinder - 1], pa, widening: 1,
    evidence: [{
      reading: cylinder - 1, cylinder, session: 0, kind: 'dry', strokes: 6, pa, lowPa: pa - mark / 2, highPa: pa + mark / 2, resolutionPa: mark, sdPa,
      usable: true, judged: true, seq: null, firstStrokePa: null, strokesPa: null, oilMl: null, heldTenSeconds: null,
    }],
  }
}
const PERFECT = { boundPa: 0, spanPa: 1000 }

describe('conformity with one limit (JCGM 106:2012; its examples through an open implementation and from memory)', () => {
  const shifted = (value: number): number => value + 1000
  it('upper limit -5.40, estimate -5.47, u .05', () => {
    expect(Math.abs(probabilityAllBelow([readingDensity(normalCylinder(1, shifted(-5.47), 0.05))], shifted(-5.4), PERFECT) - 0.919243)).toBeLessThan(2e-4)
  })
  it('lower limit 490, estimate 509.7, u 8.6', () => {
    expect(Math.abs(probabilityAllAbove([readingDensity(normalCylinder(1, 509.7, 8.6))], 490, PERFECT) - 0.98901)).toBeLessThan(2e-5)
  })
  it('12.5 to 16.3, estimate 13.6, u 1.8', () => {
    const table = readingDensity(normalCylinder(1, 13.6, 1.8))
    expect(Math.abs(probabilityBelow(table, 16.3) - probabilityBelow(table, 12.5) - 0.66263)).toBeLessThan(2e-5)
  })
  it("producer's and consumer's risk: values N(9.5, .3), measured with sd .1, limits 9 to 10", () => {
    // integrated over the true value with our quadrature and distribution
    const { at, weight } = gaussLegendre(60)
    const accepted = (value: number): number => normalBelow((10 - value) / 0.1) - normalBelow((9 - value) / 0.1)
    const over = (from: number, to: number, part: (value: number) => number): number => at.reduce((sum, x, i) => {
      const value = (from + to) / 2 + (x * (to - from)) / 2
      return sum + weight[i]! * (to - from) * (normalDensity((value - 9.5) / 0.3) / 0.3) * part(value)
    }, 0)
    digits(over(7.5, 9, accepted) + over(10, 11.5, accepted), 0.0189422067, 2e-9)
    digits(over(9, 10, (value) => 1 - accepted(value)), 0.0372078002, 2e-9)
  })
  it('decides from .95 and .05 only', () => {
    expect([0.95, 0.949999, 0.05, 0.050001].map(verdictOf)).toEqual(['inside', 'undecided', 'outside', 'undecided'])
  })
})

describe('spread of two and more normal cylinders', () => {
  it('two cylinders: the closed form of a ratio limit', () => {
    // lowest >= .9 highest for x and y: both x >= .9 y and y >= .9 x
    const [x, y, s] = [150, 138, 2]
    const tables = [normalCylinder(1, x, s), normalCylinder(2, y, s)].map((each) => readingDensity(each))
    const edge = (a: number, b: number): number => normalBelow((a - 0.9 * b) / (s * Math.hypot(1, 0.9)))
    expect(probabilitySpreadInside(tables, { part: 0.9 }, PERFECT)).toBeCloseTo(edge(x, y) + edge(y, x) - 1, 5)
  })
  it('two cylinders: the closed form of a limit in pressure', () => {
    const tables = [normalCylinder(1, 150, 2), normalCylinder(2, 138, 2)].map((each) => readingDensity(each))
    const z = (d: number): number => normalBelow((d - 12) / (2 * Math.SQRT2))
    expect(probabilitySpreadInside(tables, { differencePa: 10 }, PERFECT)).toBeCloseTo(z(10) - z(-10), 5)
  })
  it('finer tables move nothing by more than 1e-5', () => {
    const cylinders = [150, 152, 149, 139, 150, 151, 150, 148].map((pa, index) => normalCylinder(index + 1, pa, 1.5))
    const coarse = probabilitySpreadInside(cylinders.map((each) => readingDensity(each)), { part: 0.9 }, PERFECT)
    const fine = probabilitySpreadInside(cylinders.map((each) => readingDensity(each, [], 384)), { part: 0.9 }, PERFECT)
    expect(Math.abs(coarse - fine)).toBeLessThan(1e-5)
  })
  it('a shared error of zero matters to a ratio: the integral over it', () => {
    const sd = 0.5
    const tables = [normalCylinder(1, 150, sd), normalCylinder(2, 135.2, sd)].map((each) => readingDensity(each))
    // (135.2 - z) >= .9 (150 - z) for z rectangular within 5: 0.2 - 0.1 z against the noise of both
    const { at, weight } = gaussLegendre(40)
    const expected = at.reduce((sum, x, i) => sum + weight[i]! * normalBelow((0.2 - 0.1 * 5 * x) / (sd * Math.hypot(1, 0.9))), 0)
    expect(Math.abs(probabilitySpreadInside(tables, { part: 0.9 }, { boundPa: 5, spanPa: 300 }) - expected)).toBeLessThan(1e-4)
  })
  it('a shared gain matters to a limit in pressure: the integral over it', () => {
    const sd = 1
    const tables = [normalCylinder(1, 150, sd), normalCylinder(2, 135, sd)].map((each) => readingDensity(each))
    // both ends of the gauge's line rectangular within 6 of a span of 300: gain 1 + (e1 - e0) / 300
    const { at, weight } = gaussLegendre(30)
    let expected = 0
    for (let i = 0; i < 30; i++) {
      for (let j = 0; j < 30; j++) expected += weight[i]! * weight[j]! * normalBelow((15.2 * (1 + (6 * (at[i]! - at[j]!)) / 300) - 15) / (sd * Math.SQRT2))
    }
    expect(Math.abs(probabilitySpreadInside(tables, { differencePa: 15.2 }, { boundPa: 6, spanPa: 300 }) - expected)).toBeLessThan(1e-4)
  })
})

/** Engines of known pressures read on a class 1.6 gauge: sisters differ, some cylinders are weak, the gauge errs as EN 837-1 allows. */
function* readEngines(count: number, sistersSd: number, weakest: number, mark: number): Generator<{ probability: number; truth: 0 | 1 }> {
  let state = 12345
  const uniform = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return (state + 0.5) / 4294967296
  }
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
  for (let k = 0; k < count; k++) {
    const level = 140 + 40 * uniform()
    const faulty = uniform() < 0.6
    const truth = Array.from({ length: [4, 4, 6, 8][k % 4]! }, () => level * Math.exp(sistersSd * normal()) * (faulty && uniform() < 0.3 ? 1 - weakest * uniform() : 1))
    const [atZero, atSpan] = [4.8 * (2 * uniform() - 1), 4.8 * (2 * uniform() - 1)]
    const values = truth.map((psi) => Math.round((psi + atZero * (1 - psi / 300) + (atSpan * psi) / 300 + 0.01 * psi * normal()) / mark) * mark)
    const given: Case = {
      engine: { fuel: 'petrol', layout: 'inline', cylinders: values.length },
      conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6 },
      gauge: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6, resolution: { value: mark, unit: 'psi' } },
      readings: values.map((value, index) => ({ test: 'compression', cylinder: index + 1, pressure: { value, unit: 'psi' } })),
    }
    yield { probability: consistency(admit(given)).probabilityInside!, truth: Math.max(...truth) - Math.min(...truth) <= 0.1 * Math.max(...truth) ? 1 : 0 }
  }
}

describe('calibration of the verdict against noise-free readings (generated, seeded)', () => {
  it('Brier score at most .03 where faults are as severe as faults are', () => {
    const found = [...readEngines(800, 0.02, 0.6, 1)]
    expect(found.reduce((sum, { probability, truth }) => sum + (probability - truth) ** 2, 0) / found.length).toBeLessThan(0.03)
  })
  it('where every engine is a borderline one, what is called .35 to .65 comes true about half the time', () => {
    const middling = [...readEngines(2500, 0.03, 0.15, 1)].filter(({ probability }) => probability > 0.35 && probability < 0.65)
    expect(middling.length).toBeGreaterThan(100)
    const share = middling.reduce((sum, { truth }) => sum + truth, 0) / middling.length
    expect(share).toBeGreaterThan(0.38)
    expect(share).toBeLessThan(0.65)
  })
  it('decided verdicts are wrong in fewer than one of thirty', () => {
    const decided = [...readEngines(800, 0.03, 0.3, 2)].filter(({ probability }) => verdictOf(probability) !== 'undecided')
    const wrong = decided.filter(({ probability, truth }) => (verdictOf(probability) === 'inside') !== (truth === 1)).length
    expect(wrong / decided.length).toBeLessThan(1 / 30)
  })
})
