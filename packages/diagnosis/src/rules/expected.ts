import type { Expected } from '@evenbore/contract'
import type { Admission } from '../admission/types.ts'
import { measuredBuiltUp } from '../admission/built-up.ts'
import { expectedLevel } from '../physics/expected.ts'
import { fromPascal } from '../units/pressure.ts'

/** The window in which a sound engine of this geometry should read here, on the gauge and under the conditions judged. */
export function expectedWindow({ engine, sessions, judged, unit }: Admission): Expected | undefined {
  if (judged && judged.kind !== 'dry') return undefined
  const session = sessions[judged?.session ?? 0]!
  const level = expectedLevel(engine, session.conditions, session.airPa, session.gauge.volumeBeforeValveMl, measuredBuiltUp(judged))
  if (!level || engine.cycle === 2) return undefined
  return { low: fromPascal(level.lowPa, unit), high: fromPascal(level.highPa, unit), basis: level.basis }
}
