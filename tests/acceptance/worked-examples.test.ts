import { describe, expect, it } from 'vitest'
import { type Case, parseCase } from '@evenbore/contract'
import { evaluate } from '@evenbore/diagnosis'

function caseOf(value: unknown): Case {
  const checked = parseCase(value)
  if (checked.error) throw new Error(JSON.stringify(checked.error))
  return checked.value
}

describe('W1: US Army TM 5-3895-359-14&P, table 2 (two-stroke diesel, running at 600 rpm)', () => {
  const found = evaluate(caseOf({
    engine: { fuel: 'diesel', cycle: 2, layout: 'inline', cylinders: 4, limits: { spreadPressure: { value: 25, unit: 'psi' } } },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'one' },
    readings: [445, 440, 405, 435].map((value, index) => ({ test: 'compression', cylinder: index + 1, running: true, pressure: { value, unit: 'psi' } })),
  }), undefined, { ranking: false })
  it("cylinder 3 fails the engine's own limit: a spread of 40 psi against 25", () => {
    expect(found.consistency).toMatchObject({ rule: 'own-spread-pressure', asRead: 'outside', verdict: 'outside', limitPressure: { value: 25, unit: 'psi' } })
    expect(found.consistency.lowest?.cylinder).toBe(3)
    expect(found.consistency.highest!.pressure.value - found.consistency.lowest!.pressure.value).toBeCloseTo(40, 9)
  })
  it('and passes every other rule', () => {
    expect(found.consistency.alsoChecked.map(({ rule, asRead }) => [rule, asRead])).toEqual([['one-tenth', 'inside'], ['three-quarters', 'inside'], ['fifth-below-mean', 'inside']])
    expect(found.consistency.lowest!.pressure.value / found.consistency.highest!.pressure.value).toBeCloseTo(0.91, 3)
    expect(405 / ((445 + 440 + 405 + 435) / 4)).toBeCloseTo(0.939, 3)
  })
  it('a two-stroke gets rules and an objection, no inference', () => {
    expect(found.objections.map(({ code }) => code)).toContain('two-stroke')
    for (const { faults, sound } of found.cylinders) expect(sound + faults.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9)
  })
})

describe("W2: the same manual, table 1 (minimum against the manual's own air density)", () => {
  it('the limit follows density within about one percent', () => {
    const rows = [[515, 0.715], [480, 0.663], [440, 0.613], [410, 0.567], [380, 0.525]] as const
    const ratios = rows.map(([psi, density]) => psi / density)
    expect(Math.min(...ratios)).toBeGreaterThan(717)
    expect(Math.max(...ratios)).toBeLessThan(725)
  })
})

describe('W5: forum report, illustrative only (an even spread does not prove health when both are low)', () => {
  it('dry 75 and 80 psi are inside one tenth, and yet the window shows how low they are', () => {
    const found = evaluate(caseOf({
      engine: { fuel: 'petrol', layout: 'inline', cylinders: 2, compressionRatio: 8.5 },
      conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6 },
      readings: [75, 80].map((value, index) => ({ test: 'compression', cylinder: index + 1, pressure: { value, unit: 'psi' } })),
    }), undefined, { ranking: false })
    expect(found.consistency.asRead).toBe('inside')
    expect(found.expected!.low.value).toBeGreaterThan(80)
  })
})
