import type { Case, ComparisonObjection, Operation } from '@evenbore/contract'
import type { Admission, AdmittedSession, Judged } from '../admission/types.ts'

/** Operations after which the old readings are no measure any more: the engine is another one. */
const ENDS_BASELINE: readonly Operation[] = ['rebore', 'overhaul', 'cam-tappets', 'head-crack', 'block']
/** Cranking speeds further apart than this part of the faster one are objected to. */
const SPEEDS_APART = 0.2

/** Whether two sessions may be compared as pressures, and what stands against it. */
export interface Baseline {
  readonly comparable: boolean
  readonly objections: readonly ComparisonObjection[]
}

/** One side of a comparison, made ready. */
export interface Side {
  readonly case: Case
  readonly admission: Admission
}

const judgedSession = ({ admission }: Side): { judged: Judged; session: AdmittedSession } | null =>
  admission.judged && { judged: admission.judged, session: admission.sessions[admission.judged.session]! }

/**
 * Checks that before and after were read under conditions that may be compared: throttle, plugs out, hot, warm or cold, cranking or
 * running; says which one differs. A rebore, another head or another camshaft ends a baseline. Cranking speeds more than 20 percent
 * apart are objected to, not refused.
 */
export function checkBaseline(before: Side, after: Side, work: readonly Operation[]): Baseline {
  const old = judgedSession(before)
  const now = judgedSession(after)
  const objections: ComparisonObjection[] = []
  if (!old || !now) {
    objections.push({ code: 'no-sister', in: !old && !now ? 'both' : old ? 'after' : 'before', readings: [], says: 'There are no compression readings that could be compared.', do: 'Read all cylinders in one session, as before the work.' })
    return { comparable: false, objections }
  }
  const readings = now.judged.cylinders.flatMap((cylinder) => cylinder.readings)
  const refuse = (says: string, todo: string): void => {
    objections.push({ code: 'mixed-conditions', in: 'both', readings, says, do: todo })
  }
  const differing = [
    old.session.conditions.throttle === now.session.conditions.throttle ? '' : `throttle (${old.session.conditions.throttle} before, ${now.session.conditions.throttle} after)`,
    old.session.conditions.plugsOut === now.session.conditions.plugsOut ? '' : `plugs out (${old.session.conditions.plugsOut} before, ${now.session.conditions.plugsOut} after)`,
    old.session.conditions.engine === now.session.conditions.engine ? '' : `engine (${old.session.conditions.engine} before, ${now.session.conditions.engine} after)`,
    old.judged.kind === now.judged.kind ? '' : `kind of test (${old.judged.kind} before, ${now.judged.kind} after)`,
  ].filter(Boolean)
  if (differing.length > 0) refuse(`Before and after differ in ${differing.join(', ')}.`, 'Repeat the readings under the conditions of the baseline.')
  const another = anotherEngine(before, after, work)
  if (another) refuse(`${another} ends the baseline: the old readings no longer measure this engine.`, 'Take these readings as the new baseline, and judge by evenness and by the expected window.')
  const comparable = objections.length === 0
  const speeds = [old.session.conditions.crankingRpm, now.session.conditions.crankingRpm]
  if (speeds[0] !== undefined && speeds[1] !== undefined && Math.abs(speeds[0] - speeds[1]) > SPEEDS_APART * Math.max(speeds[0], speeds[1])) {
    refuse('Cranking speeds differ by more than 20 percent: the slower one reads lower.', 'Charge the battery and repeat at the speed of the baseline.')
  }
  return { comparable, objections }
}

function anotherEngine(before: Side, after: Side, work: readonly Operation[]): string | null {
  const done = work.find((operation) => ENDS_BASELINE.includes(operation))
  if (done) return `The work done (${done})`
  const [old, now] = [before.case.engine, after.case.engine]
  if ((old.camshaft ?? 'standard') !== (now.camshaft ?? 'standard')) return 'Another camshaft'
  if (!(old.history?.headSkimmed ?? false) && (now.history?.headSkimmed ?? false)) return 'A skimmed head'
  const differs = (a: number | undefined, b: number | undefined): boolean => a !== undefined && b !== undefined && Math.abs(a - b) > 0.002 * Math.max(a, b)
  if (differs(old.boreMm, now.boreMm)) return 'Another bore'
  if (differs(old.compressionRatio, now.compressionRatio)) return 'Another compression ratio'
  return null
}
