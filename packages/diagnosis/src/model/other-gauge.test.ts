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
    expect(gaugeError(again(148))).toBeGreaterThan(0.75)
    const row = evaluate(again(148)).because.find((b) => b.cause === 'gauge-error' && b.readings.join() === '4')
    expect(row?.decibans).toBeGreaterThan(10)
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
