import type { EngineSpecification } from '@evenbore/contract'
import type { PlanShape } from '#lib/plan/geometry.ts'

/** How an engine is drawn. A V or flat engine described without banks is drawn odd numbers against even, which the plan's owner should correct. */
export function shapeOf(engine: Pick<EngineSpecification, 'layout' | 'cylinders' | 'banks' | 'gaskets'>): PlanShape {
  const numbers = Array.from({ length: engine.cylinders }, (_, i) => i + 1)
  const banks = engine.banks ?? (engine.layout === 'inline' || engine.cylinders < 2 ? [numbers] : [numbers.filter((n) => n % 2 === 1), numbers.filter((n) => n % 2 === 0)])
  return { layout: engine.layout, banks, ...(engine.gaskets ? { gaskets: engine.gaskets } : {}) }
}

/** The order in which cylinders are read: by firing order from cylinder 1, or along the banks front to rear. */
export function readingOrder(engine: Pick<EngineSpecification, 'layout' | 'cylinders' | 'banks' | 'firingOrder'>, by: 'firing' | 'bank'): number[] {
  if (by === 'firing' && engine.firingOrder) {
    const start = Math.max(0, engine.firingOrder.indexOf(1))
    return [...engine.firingOrder.slice(start), ...engine.firingOrder.slice(0, start)]
  }
  return shapeOf(engine).banks.flat()
}

/** The next cylinder without a reading after `after` in this order, going round; undefined when every one was read. */
export function nextUnread(order: readonly number[], read: ReadonlySet<number>, after: number | undefined): number | undefined {
  const from = after === undefined ? 0 : order.indexOf(after) + 1
  return [...order.slice(from), ...order.slice(0, from)].find((cylinder) => !read.has(cylinder))
}
