import type { Case } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../evaluate.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })
const conditions: Case['conditions'] = { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 8 }
const gauge = (accuracyClass: number) => ({ span: psi(300), accuracyClass })
const low: Case = {
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, compressionRatio: 9, boreMm: 80, strokeMm: 80 },
  conditions, gauge: gauge(2.5),
  readings: [112, 110, 113, 111].map((value, i) => ({ test: 'compression', cylinder: i + 1, pressure: psi(value) })),
}
const again = (value: number, changed: Partial<Case['conditions']> = {}, other = gauge(1)): Case => ({
  ...low,
  sessions: { b: { conditions: { ...conditions, ...changed }, gauge: other } },
  readings: [...low.readings, { test: 'compression', cylinder: 2, session: 'b', pressure: psi(value) }],
})
const gaugeError = (value: Case): number => evaluate(value).engine.find(({ cause }) => cause === 'gauge-error')!.probability

describe('one cylinder again with another gauge', () => {
  it('says that the first gauge reads wrong when the second reads far higher, and gives the reading a row of its own', () => {
    expect(gaugeError(low)).toBeLessThan(0.5)
    expect(gaugeError(again(148))).toBeGreaterThan(0.9)
    const row = evaluate(again(148)).because.find((b) => b.cause === 'gauge-error' && b.readings.join() === '4')
    expect(row?.decibans).toBeGreaterThan(10)
  })

  it('is believed less where the second gauge, not the first, is what no such engine reads', () => {
    // such an engine reads about 170 psi: 112 and 148 are too low and about right, 165 and 218 about right and too high by as much
    const right: Case = { ...low, readings: low.readings.map((r, i) => ({ ...r, pressure: psi([166, 163, 167, 165][i]!) }) as typeof r) }
    const second: Case['readings'][number] = { test: 'compression', cylinder: 2, session: 'b', pressure: psi(218) }
    const tooHigh = gaugeError({ ...right, sessions: { b: { conditions, gauge: gauge(1) } }, readings: [...right.readings, second] })
    expect(gaugeError(again(148))).toBeGreaterThan(tooHigh + 0.5)
  })

  it('leaves it to a third gauge which of two is wrong', () => {
    const third = (value: number, other = gauge(1.6)): Case => {
      const two = again(135)
      return { ...two, sessions: { ...two.sessions, c: { conditions, gauge: other } }, readings: [...two.readings, { test: 'compression', cylinder: 2, session: 'c', pressure: psi(value) }] }
    }
    const two = gaugeError(again(135))
    expect(gaugeError(third(136))).toBeGreaterThan(1 - (1 - two) / 3)
    expect(gaugeError(third(111))).toBeLessThan(two / 2)
    // the same gauge once more is the same gauge: it shows no more than that the reading was no slip
    expect(gaugeError(third(136, gauge(1)))).toBeLessThan(gaugeError(third(136)))
    expect(evaluate(again(135)).next.some(({ tests }) => tests[0]!.first === 'swap-gauge')).toBe(true)
    expect(evaluate(third(136)).next.some(({ tests }) => tests[0]!.first === 'swap-gauge')).toBe(false)
  })

  it.each([['agree', 111], ['read half', 55], ['read far too much', 400]])('stays finite where hundreds of gauges %s', (_, value) => {
    const many = Array.from({ length: 300 }, (_x, i) => `g${i}`)
    const given: Case = {
      ...low,
      sessions: Object.fromEntries(many.map((id, i) => [id, { conditions, gauge: { span: psi(600 + i), accuracyClass: 1 } }])),
      readings: [...low.readings, ...many.map((session): Case['readings'][number] => ({ test: 'compression', cylinder: 2, session, pressure: psi(value) }))],
    }
    const { engine } = evaluate(given, undefined, { ranking: false })
    expect(engine.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9)
  })

  it('clears the first gauge when both read alike', () => {
    expect(gaugeError(again(111))).toBeLessThan(gaugeError(low) / 4)
  })

  it('says nothing under other conditions or with the same gauge', () => {
    expect(gaugeError(again(148, { engine: 'cold' }))).toBeCloseTo(gaugeError(low), 9)
    expect(gaugeError(again(148, {}, gauge(2.5)))).toBeCloseTo(gaugeError(low), 9)
  })

  it('is not compared with the rest all the same: the spread stands as it was, with an objection', () => {
    const { consistency, objections } = evaluate(again(148))
    expect(consistency.spreadPercent).toBeCloseTo(evaluate(low).consistency.spreadPercent!, 9)
    expect(objections.some(({ code, readings }) => code === 'mixed-conditions' && readings.includes(4))).toBe(true)
  })
})
