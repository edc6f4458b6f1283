import type { Case, Engine, Reading, Session } from '@evenbore/contract'
import { currentReadings } from '#lib/offline/overlay.ts'

/** A case with the stored readings behind it: `readingIds[i]` is the record of `case.readings[i]`. */
export interface CaseOfJob {
  readonly case: Case
  readonly readingIds: readonly string[]
}

/**
 * The case that a job's sessions make: engine with its history, every session by its id, the readings that count now.
 * The conditions of the latest session stand at the top, where the contract asks for some. Undefined while there is no session.
 */
export function caseOf(engine: Pick<Engine, 'specification' | 'history'>, sessions: readonly Session[]): CaseOfJob | undefined {
  const used = sessions.filter((session) => currentReadings(session).length > 0)
  const latest = used.at(-1) ?? sessions.at(-1)
  if (!latest) return undefined
  const readings = used.flatMap((session) => currentReadings(session).map((stored) => ({ id: stored.id, reading: { ...stored.reading, session: session.id } as Reading })))
  const history = Object.keys(engine.history).length > 0 ? { history: engine.history } : {}
  return {
    case: {
      engine: { ...engine.specification, ...history },
      conditions: latest.conditions,
      ...(used.length > 0 ? { sessions: Object.fromEntries(used.map((session) => [session.id, conditionsOf(session)])) } : {}),
      readings: readings.map(({ reading }) => reading),
    },
    readingIds: readings.map(({ id }) => id),
  }
}

function conditionsOf(session: Session): NonNullable<Case['sessions']>[string] {
  return {
    conditions: session.conditions,
    ...(session.gaugeSpecification ? { gauge: session.gaugeSpecification } : {}),
    ...(session.testerSpecification ? { leakageTester: session.testerSpecification } : {}),
  }
}
