import { expect, test } from 'vitest'
import { leadsOf } from './leads.ts'

test('leads follow the firing order in the direction of the rotor', () => {
  expect(leadsOf([1, 3, 4, 2], 'clockwise', 0).map(({ cylinder, angle }) => [cylinder, angle])).toEqual([[1, 0], [3, 90], [4, 180], [2, 270]])
  expect(leadsOf([1, 3, 4, 2], 'anticlockwise', 0).map(({ cylinder, angle }) => [cylinder, angle])).toEqual([[1, 0], [3, 270], [4, 180], [2, 90]])
})

test('the map turns with the position of lead 1, half hours too', () => {
  expect(leadsOf([1, 5, 3, 6, 2, 4], 'clockwise', 4.5)[0]!.angle).toBe(135)
  expect(leadsOf([1, 5, 3, 6, 2, 4], 'clockwise', 11).every(({ angle }) => angle >= 0 && angle < 360)).toBe(true)
})

test('a firing order written from another cylinder gives the same map', () => {
  expect(leadsOf([4, 2, 1, 3], 'clockwise', 2)).toEqual(leadsOf([1, 3, 4, 2], 'clockwise', 2))
})
