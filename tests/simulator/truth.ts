import type { Engine } from './population/engine.ts'
import type { FaultEffect } from './population/faults.ts'
import { chargeTempK, runCylinder } from './visit/cylinder-run.ts'
import { leaksOf } from './visit/leaks.ts'
import type { SimulatedSession } from './visit/visit.ts'
import type { Cause, OwnFault } from './worlds/world.ts'

/** What is really so, in the words of the evaluation. */
export type Truth = {
  /** By cylinder number in ascending order: `sound`, or the fault of its own that costs most pressure. */
  readonly cylinders: readonly {
    readonly cylinder: number
    readonly state: OwnFault | 'sound'
    readonly faults: readonly OwnFault[]
    readonly ignitionFault: boolean
  }[]
  readonly bridges: readonly (readonly [number, number])[]
  readonly cause: Cause
}

/** The truth about an engine; pressures of rival faults in one cylinder are compared under this session's conditions. */
export function truthOf(engine: Engine, session: SimulatedSession): Truth {
  return {
    cylinders: engine.cylinders.map((cylinder) => {
      const left = (effect: FaultEffect): number => {
        const alone = { ...cylinder, faults: [effect] }
        const leaks = leaksOf(engine, alone, { wet: false, temperature: session.temperature, held: false, shows: () => true })
        const run = runCylinder(engine, alone, session, leaks, {
          speedRpm: session.speedRpm,
          strokes: 6,
          fill: 1,
          chargeTempK: chargeTempK(session),
          oilM3: 0,
          leftInGaugePa: 0,
          shows: () => true,
        })
        return run[run.length - 1] as number
      }
      const ordered = cylinder.faults.length > 1 ? [...cylinder.faults].sort((a, b) => left(a) - left(b)) : cylinder.faults
      return {
        cylinder: cylinder.number,
        state: ordered[0]?.fault ?? 'sound',
        faults: ordered.map((effect) => effect.fault),
        ignitionFault: cylinder.ignitionFault,
      }
    }),
    bridges: engine.bridges.map((bridge) => bridge.cylinders),
    cause: engine.cause.cause,
  }
}
