import type { EngineDescription } from '@evenbore/contract'
import { displacementCm3 } from '../physics/geometry.ts'
import type { EngineLayout } from './types.ts'

/** Banks, gaskets and neighbours. Neighbours are consecutive entries under one gasket piece, never consecutive numbers. */
export function engineLayout(engine: EngineDescription): EngineLayout {
  const banks = engine.banks ?? [Array.from({ length: engine.cylinders }, (_, index) => index + 1)]
  const gaskets = engine.gaskets ?? banks
  const neighbours = gaskets.flatMap((gasket) => gasket.slice(1).map((cylinder, index) => [gasket[index]!, cylinder] as const))
  const { boreMm, strokeMm } = engine
  return {
    banks,
    gaskets,
    neighbours,
    firingOrder: engine.firingOrder ?? null,
    displacementCm3: boreMm !== undefined && strokeMm !== undefined ? displacementCm3(boreMm, strokeMm) : null,
  }
}
