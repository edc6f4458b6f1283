import type { Reading } from '@evenbore/contract'
import type { Engine } from '../population/engine.ts'
import { sessionField, type Visit } from './visit.ts'

type CoolantGas = Extract<Reading, { test: 'coolant-gas' }>
type CoolingPressure = Extract<Reading, { test: 'cooling-pressure' }>

const FALSE_GAS = 0.03
const FALSE_LOSS = 0.06
const MINUTES = 2

function toCoolantMm2(engine: Engine): number {
  return engine.cylinders.reduce(
    (sum, cylinder) => sum + cylinder.faults.reduce((part, effect) => part + (effect.leaksMm2.coolant ?? 0), 0),
    0,
  )
}

/** Combustion gas in the coolant: the bigger the leak, the surer it shows. */
export function testCoolantGas(visit: Visit): CoolantGas {
  const area = toCoolantMm2(visit.engine)
  const chance = area > 0 ? Math.min(0.95, 0.7 + 0.2 * area) * visit.engine.world.looksClarity : FALSE_GAS
  return { test: 'coolant-gas', ...sessionField(visit), present: visit.random.chance(chance) }
}

/** Pressure the cooling system loses in two minutes; a weeping hose loses some too. */
export function testCoolingPressure(visit: Visit): CoolingPressure {
  const { random, engine } = visit
  const area = toCoolantMm2(engine)
  const leaks = area > 0 && random.chance(0.85)
  const lost = leaks
    ? random.lognormal(3.5 * Math.sqrt(area), 0.5)
    : random.chance(FALSE_LOSS)
      ? random.lognormal(3, 0.5)
      : random.lognormal(0.3, 0.6)
  return {
    test: 'cooling-pressure',
    ...sessionField(visit),
    lostPressure: { value: Math.round(Math.min(15, lost) * 2) / 2, unit: 'psi' },
    minutes: MINUTES,
  }
}
