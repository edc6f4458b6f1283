import { expect, test } from 'vitest'
import { parseFiringOrder } from './firing-order.ts'

test.each(['1-3-4-2', '1, 3, 4, 2', '1342', ' 1–3–4–2 ', '1.3.4.2'])('"%s" is a firing order of four', (typed) => {
  expect(parseFiringOrder(typed, 4)).toEqual([1, 3, 4, 2])
})
test.each(['1-3-4', '1-3-4-5', '1-3-3-2', 'one three', '1-3-4-2 🔧'])('"%s" is none', (typed) => {
  expect(parseFiringOrder(typed, 4)).toBeUndefined()
})
test('nothing typed is no order, and a twelve needs its gaps', () => {
  expect(parseFiringOrder('', 4)).toEqual([])
  expect(parseFiringOrder('1-7-5-11-3-9-6-12-2-8-4-10', 12)).toHaveLength(12)
  expect(parseFiringOrder('1751139612284', 12)).toBeUndefined()
})
