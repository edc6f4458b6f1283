import { expect, test } from 'vitest'
import { labelRows, spreadLabels } from './labels.ts'

test('labels keep their order and a gap', () => {
  const places = spreadLabels([100, 101, 30], 18, 0, 200)
  expect(places[2]).toBe(30)
  expect(places[1]! - places[0]!).toBeGreaterThanOrEqual(18)
})

test('labels at the foot are pushed up, not off the paper', () => {
  const places = spreadLabels([198, 199, 200], 18, 0, 200)
  expect(Math.max(...places)).toBeLessThanOrEqual(200)
  expect(places[2]! - places[1]!).toBeGreaterThanOrEqual(18)
  expect(places[1]! - places[0]!).toBeGreaterThanOrEqual(18)
})

test('labels under an axis stay on the paper and take another row rather than lie on each other', () => {
  expect(labelRows([{ middle: 20, width: 100 }, { middle: 390, width: 60 }, { middle: 60, width: 40 }, { middle: 200, width: 50 }], 0, 400)).toEqual([
    { left: 0, row: 0 }, { left: 340, row: 0 }, { left: 40, row: 1 }, { left: 175, row: 0 },
  ])
})
