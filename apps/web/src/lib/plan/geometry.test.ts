import { expect, test } from 'vitest'
import { planGeometry, SMALLEST, type PlanShape } from './geometry.ts'

const inline = (count: number): PlanShape => ({ layout: 'inline', banks: [Array.from({ length: count }, (_, i) => i + 1)] })
const two = (layout: 'v' | 'flat', each: number): PlanShape => ({
  layout,
  banks: [Array.from({ length: each }, (_, i) => i + 1), Array.from({ length: each }, (_, i) => each + i + 1)],
})

const everyShape = [...[1, 2, 3, 4, 5, 6, 8, 12, 16].map(inline), ...[1, 2, 3, 4, 5, 6, 8].flatMap((each) => [two('v', each), two('flat', each)])]

test('no two cylinders overlap, at any width', () => {
  for (const shape of everyShape)
    for (const width of [320, 772, 1200]) {
      const { cylinders, radius } = planGeometry(shape, width)
      for (const a of cylinders) for (const b of cylinders) if (a !== b) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThanOrEqual(2 * radius)
    }
})

test('every cylinder lies inside the drawing, and no circle is below a finger in size', () => {
  for (const shape of everyShape) {
    const plan = planGeometry(shape, 772)
    expect(plan.radius).toBeGreaterThanOrEqual(SMALLEST)
    for (const { x, y } of plan.cylinders) {
      expect(x + plan.radius).toBeLessThan(plan.width)
      expect(x - plan.radius).toBeGreaterThan(0)
      expect(y + plan.radius).toBeLessThan(plan.height)
      expect(y - plan.radius).toBeGreaterThan(0)
    }
  }
})

test('an engine that fits is drawn within the width it was given', () => {
  for (const shape of [inline(1), inline(4), inline(6), two('v', 4), two('flat', 3)]) expect(planGeometry(shape, 772).width).toBeLessThanOrEqual(772)
})

test('the front cylinder of each bank stands at the left, in the order of the bank', () => {
  const { cylinders } = planGeometry({ layout: 'v', banks: [[1, 3, 5], [2, 4, 6]] }, 772)
  const first = cylinders.filter(({ bank }) => bank === 0)
  expect(first.map(({ cylinder }) => cylinder)).toEqual([1, 3, 5])
  expect([...first].sort((a, b) => a.x - b.x)).toEqual(first)
})

test('two gasket pieces part the cylinders that share none, and lands lie only within a piece', () => {
  const plan = planGeometry({ ...inline(4), gaskets: [[1, 2], [3, 4]] }, 772)
  const at = (n: number) => plan.cylinders.find(({ cylinder }) => cylinder === n)!.x
  expect(at(3) - at(2)).toBeGreaterThan(at(2) - at(1))
  expect(plan.lands.map(({ cylinders }) => cylinders)).toEqual([[1, 2], [3, 4]])
})

test('a flat engine has two blocks with the crankcase between them, a V one', () => {
  expect(planGeometry(two('flat', 2), 772).blocks).toHaveLength(2)
  expect(planGeometry(two('v', 4), 772).blocks).toHaveLength(1)
  expect(planGeometry(inline(4), 772).middle).toBeUndefined()
})
