import type { LeakageReading } from '@evenbore/contract'
import { PA_PER_PSI } from '../physics/air.ts'
import { heldPressurePa } from '../physics/leak-down.ts'
import { listen } from './listening.ts'
import { bridgedMm2, type Leaks, leaksOf, showsNow } from './leaks.ts'
import { cylinderOf, sessionField, type Visit } from './visit.ts'

export type LeakageManner = { readonly wet?: boolean; readonly rockersSlack?: readonly number[]; readonly listening?: boolean }

const MM2 = 1e-6
/** Valve area open when the piston stands off the top of the stroke enough for a cam to lift (from memory). */
const OFF_TOP_MM2 = 60

/** Leakage of one cylinder held at firing top dead centre, with what is heard where. */
export function measureLeakage(visit: Visit, number: number, manner: LeakageManner = {}): LeakageReading {
  const { engine, random, session } = visit
  const { world } = engine
  const { tester } = session
  const cylinder = cylinderOf(visit, number)
  const slack = manner.rockersSlack?.includes(number) === true
  const base = showsNow(visit, cylinder)
  const wet = manner.wet === true
  const leaks: Leaks = leaksOf(engine, cylinder, {
    wet,
    temperature: session.temperature,
    held: true,
    shows: (effect) => !(slack && effect.fault === 'clearance-tight') && base(effect),
  })
  if (random.chance(world.mistakes.pistonOffTop)) leaks[random.chance(0.5) ? 'exhaust' : 'intake'] += OFF_TOP_MM2
  const supplyPa = tester.supplyPsi * PA_PER_PSI
  const heldAbsolute = heldPressurePa({
    supplyPa: supplyPa + session.airPressurePa,
    airPressurePa: session.airPressurePa,
    restrictorM2: tester.restrictorM2,
    fixedLeakM2: (leaks.exhaust + leaks.intake + leaks.coolant + leaks.outside + bridgedMm2(leaks)) * MM2,
    ringLeakM2: leaks.rings * MM2,
    ringLowPressureExcess: engine.ringLowPressureExcess,
  })
  const held = heldAbsolute - session.airPressurePa + tester.offsetPa + random.normal(0, tester.scatterPa)
  const heldPsi = Math.min(tester.supplyPsi, Math.max(0, Math.round(held / PA_PER_PSI)))
  const heard = manner.listening === false ? {} : listen(visit, cylinder, leaks, heldAbsolute, manner.rockersSlack ?? [])
  return {
    test: 'leakage',
    cylinder: number,
    ...sessionField(visit),
    ...(tester.percentOnly || tester.stated === undefined
      ? { percent: Math.round(100 * (1 - heldPsi / tester.supplyPsi)) }
      : { held: { value: heldPsi, unit: 'psi' as const } }),
    ...heard,
    ...(manner.rockersSlack?.length ? { rockersSlack: [...manner.rockersSlack] } : {}),
    ...(wet ? { wet: true } : {}),
  }
}
