import type { LeakageTester } from '@evenbore/contract'
import { PA_PER_PSI } from '../physics/air.ts'
import type { Random } from '../random.ts'
import { drawRange } from '../worlds/draw.ts'
import type { World } from '../worlds/world.ts'

/** A leakage tester: regulated supply, restrictor, two gauges with errors of their own. */
export type SimulatedTester = {
  readonly supplyPsi: number
  readonly restrictorMm: number
  readonly restrictorM2: number
  /** Fixed error of the second gauge against the first, in Pa. */
  readonly offsetPa: number
  readonly scatterPa: number
  /** True when it shows percent only. */
  readonly percentOnly: boolean
  readonly stated: LeakageTester | undefined
}

const GAUGE_SPAN_PSI = 100
/** From this bore the wider restrictor is prescribed (FAA AC 43.13-1B par. 8-14, second hand). */
const WIDE_BORE_M = 0.127

export function drawTester(random: Random, world: World, boreM: number): SimulatedTester {
  const restrictorMm = boreM >= WIDE_BORE_M ? 1.524 : 1.016
  const accuracyClass = Number(random.weighted(world.tester.classWeights))
  const isStated = random.chance(world.tester.stated)
  const supplyPsi = isStated ? Number(random.weighted({ '80': 60, '100': 28, '60': 12 })) : 80
  return {
    supplyPsi,
    restrictorMm,
    restrictorM2: (Math.PI / 4) * (restrictorMm * 1e-3) ** 2 * drawRange(random, world.tester.discharge),
    offsetPa: random.between(-1, 1) * (accuracyClass / 100) * GAUGE_SPAN_PSI * PA_PER_PSI,
    scatterPa: 0.4 * PA_PER_PSI,
    percentOnly: random.chance(0.5),
    stated: isStated ? { supply: { value: supplyPsi, unit: 'psi' }, restrictorMm } : undefined,
  }
}
