import { analyseCurrent } from '@evenbore/diagnosis/cranking-current'
import { describe, expect, it } from 'vitest'
import { drawEngine } from '../simulator/population/engine.ts'
import { createRandom } from '../simulator/random.ts'
import { peakPa, recordCrankingCurrent } from '../simulator/visit/cranking-current.ts'
import { openVisit } from '../simulator/visit/visit.ts'
import { worldNamed } from '../simulator/worlds/named.ts'

/** What the traces of simulated engines (torque of the air, flywheel, armature) say of each cylinder, and what is so. Valves that stick may pass in the next cycle: left out. */
function readings(): { trace: string; found: number; sd: number; really: number }[] {
  return (['A', 'B'] as const).flatMap((world) => Array.from({ length: 60 }, (_, i) => i).flatMap((i) => {
    const random = createRandom(5150, i)
    const engine = drawEngine(random, worldNamed(world))
    const visit = openVisit(random, engine)
    const order = engine.design.layout.firingOrder
    const { samples, cylinderOneAt } = recordCrankingCurrent(visit)
    const sticking = engine.cylinders.some(({ faults }) => faults.some(({ fault }) => fault === 'valve-sticking'))
    if (order.length < 3 || cylinderOneAt === undefined || sticking) return []
    const analysis = analyseCurrent({ ...samples, cylinderOneAt }, order.length, order)
    if (analysis.flaw !== null) return []
    const peaks = new Map(order.map((number) => [number, peakPa(visit, number)]))
    const best = [...peaks.values()].sort((a, b) => b - a).slice(0, Math.ceil(order.length / 2))
    const good = best.reduce((sum, peak) => sum + peak, 0) / best.length
    return analysis.humps.map(({ cylinder, relative, sd }) => ({ trace: `${world} ${i}, cylinder ${cylinder}`, found: relative, sd, really: peaks.get(cylinder!)! / good }))
  }))
}

describe('traces of simulated engines', () => {
  const all = readings()
  const weak = all.filter(({ really }) => really < 0.7)

  it('says of nearly all what their compression is, within what it states', () => {
    expect(all.length).toBeGreaterThan(200)
    const error = Math.sqrt(all.reduce((sum, { found, really }) => sum + (found - really) ** 2, 0) / all.length)
    expect(error).toBeLessThan(0.08)
    expect(all.filter(({ found, really, sd }) => Math.abs(found - really) < 2 * sd).length / all.length).toBeGreaterThan(0.95)
  })

  it('finds the weak ones weak', () => {
    expect(weak.length).toBeGreaterThan(10)
    for (const { trace, found } of weak) expect(found, trace).toBeLessThan(0.9)
  })
})
