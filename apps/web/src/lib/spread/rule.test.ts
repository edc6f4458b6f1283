import { expect, test } from 'vitest'
import { placeOf, ruleGeometry } from './rule.ts'

const plain = (value: number) => String(value)
const tick = (cylinder: number, value: number, half = 3) => ({ cylinder, value, half })

test('a tick that lies across the edge of the band is neither in nor out', () => {
  const band = { low: 140.4, high: undefined }
  expect(placeOf(tick(1, 152), band)).toBe('in')
  expect(placeOf(tick(3, 129), band)).toBe('out')
  expect(placeOf(tick(4, 141), band)).toBe('crosses')
  expect(placeOf(tick(4, 139), band)).toBe('crosses')
})

test('a stated maximum counts at the upper end', () => {
  expect(placeOf(tick(2, 172), { low: 120, high: 165 })).toBe('out')
  expect(placeOf(tick(2, 164), { low: 120, high: 165 })).toBe('crosses')
})

test('higher readings stand further right, each tick as wide as its uncertainty', () => {
  const rule = ruleGeometry([tick(1, 152), tick(2, 156, 6), tick(3, 129)], { low: 140.4, high: undefined, says: '' }, 772, plain)
  expect(rule.ticks.map(({ cylinder }) => cylinder)).toEqual([3, 1, 2])
  const width = (n: number) => rule.ticks.find(({ cylinder }) => cylinder === n)!.width
  expect(width(2) / width(1)).toBeCloseTo(2, 6)
})

test('everything drawn lies on the paper', () => {
  for (const width of [280, 772, 1200]) {
    const rule = ruleGeometry([tick(1, 0, 1), tick(2, 156), tick(3, 155), tick(4, 155)], { low: 140, high: 170, says: '' }, width, plain)
    for (const { left, width: wide } of rule.ticks) {
      expect(left).toBeGreaterThanOrEqual(0)
      expect(left + wide).toBeLessThanOrEqual(width)
    }
    for (const { x } of rule.axis) expect(x).toBeLessThanOrEqual(width)
  }
})

test('numbers that would collide go a row higher', () => {
  const rule = ruleGeometry([tick(1, 155), tick(2, 155), tick(3, 120)], undefined, 772, plain)
  const rows = new Map(rule.ticks.map(({ cylinder, row }) => [cylinder, row]))
  expect(rows.get(3)).toBe(0)
  expect(new Set([rows.get(1), rows.get(2)])).toEqual(new Set([0, 1]))
})

test('one reading, or none, still gives an axis', () => {
  expect(ruleGeometry([tick(1, 150)], undefined, 500, plain).axis.length).toBeGreaterThan(2)
  expect(ruleGeometry([], undefined, 500, plain).ticks).toEqual([])
})
