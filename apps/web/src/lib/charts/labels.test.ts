import { expect, test } from 'vitest'
import { spreadLabels } from './labels.ts'

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
