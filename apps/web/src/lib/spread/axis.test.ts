import { expect, test } from 'vitest'
import { roundAxis } from './axis.ts'

test('an axis ends on round numbers and maps them onto the range', () => {
  const axis = roundAxis(121, 163, [0, 900])
  expect(axis.domain).toEqual([120, 165])
  expect(axis.at(120)).toBe(0)
  expect(axis.at(165)).toBe(900)
  expect(axis.at(142.5)).toBeCloseTo(450, 9)
})

test('ticks are 1, 2 or 5 times a power of ten, also below one', () => {
  expect(roundAxis(120, 165, [0, 1]).ticks(4)).toEqual([120, 130, 140, 150, 160])
  expect(roundAxis(8.8, 11.2, [0, 1]).ticks(5)).toEqual([9, 9.5, 10, 10.5, 11])
  expect(roundAxis(0, 1, [0, 1]).ticks(2)).toEqual([0, 0.5, 1])
})

test('a span of nothing still gives an axis', () => {
  const axis = roundAxis(5, 5, [0, 100])
  expect(Number.isFinite(axis.at(5))).toBe(true)
})
