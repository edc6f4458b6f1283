import { describe, expect, it } from 'vitest'
import { simulateEngine, type SimulatedEngine } from './stages.ts'
import { worldNamed } from './worlds/named.ts'
import { OWN_FAULTS } from './worlds/world.ts'

const ENGINES = 400

function draw(world: string): SimulatedEngine[] {
  return Array.from({ length: ENGINES }, (_, index) => simulateEngine(worldNamed(world), 11, index))
}
const isHealthy = (engine: SimulatedEngine): boolean =>
  engine.truth.cause === 'none' && engine.truth.bridges.length === 0 && engine.truth.cylinders.every((item) => item.state === 'sound')

describe.each(['A', 'B'])('world %s', (world) => {
  const engines = draw(world)

  it('draws the same engine again from the same seed', () => {
    expect(simulateEngine(worldNamed(world), 11, 3)).toEqual(engines[3])
  })

  it('holds every fault, every cause, bridges and healthy engines', () => {
    const seen = new Set(engines.flatMap((engine) => [...engine.truth.cylinders.map((item) => item.state), engine.truth.cause]))
    for (const fault of OWN_FAULTS) expect(seen, fault).toContain(fault)
    for (const cause of ['throttle-closed', 'slow-cranking', 'valve-timing', 'worn-evenly', 'gauge-error'])
      expect(seen, cause).toContain(cause)
    expect(engines.some((engine) => engine.truth.bridges.length > 0)).toBe(true)
    const healthy = engines.filter(isHealthy).length / ENGINES
    expect(healthy).toBeGreaterThan(0.25)
    expect(healthy).toBeLessThan(0.5)
  })

  it('keeps most healthy engines inside one tenth and their leakage in the bands of common practice (no source)', () => {
    const healthy = engines.filter(isHealthy)
    const spreads = healthy.flatMap((engine) => {
      const readings = engine.cases.dry.readings.flatMap((item) => (item.test === 'compression' ? [item.pressure.value] : []))
      return readings.length < 2 ? [] : [1 - Math.min(...readings) / Math.max(...readings)]
    })
    const leakages = healthy.flatMap((engine) =>
      engine.cases.leakage.readings.flatMap((item) => (item.test === 'leakage' && item.percent !== undefined ? [item.percent] : [])),
    )
    const median = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)] as number
    expect(median(spreads)).toBeGreaterThan(0.025)
    expect(median(spreads)).toBeLessThan(0.085)
    expect(median(leakages)).toBeGreaterThan(3)
    expect(median(leakages)).toBeLessThan(14)
  })
})
