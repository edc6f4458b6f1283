import type { Case } from '@evenbore/contract'
import { combineRepeats } from './repeats.ts'
import { cylinderWords, objection, oilInDiesel, type Remark } from './remark.ts'
import type { AdmittedSession, CompressionEvidence, CompressionKind, Judged } from './types.ts'

const WARMTH = { hot: 0, warm: 1, cold: 2 } as const

/** What may be compared, and why the rest may not. */
export interface Comparable {
  readonly evidence: CompressionEvidence[]
  readonly judged: Judged | null
  readonly remarks: Remark[]
}

/**
 * Decides which compression readings may be compared: within one session, equal stroke counts (a minority is left out, in a tie
 * all are), dry with dry, running with running. Consistency is judged on the dry cranking readings of the session with most
 * comparable cylinders, then the warmer, then the greater id; on running ones where no two dry cylinders compare.
 */
export function comparable(value: Case, sessions: readonly AdmittedSession[], all: readonly CompressionEvidence[]): Comparable {
  const remarks: Remark[] = []
  const out = new Set<number>()
  const leaveOut = (list: readonly CompressionEvidence[]): void => list.forEach((entry) => out.add(entry.reading))
  const usable = (kind: CompressionKind, session?: number): CompressionEvidence[] =>
    all.filter((entry) => entry.kind === kind && !out.has(entry.reading) && (session === undefined || entry.session === session))

  if (value.engine.fuel === 'diesel') {
    const oiled = usable('wet')
    leaveOut(oiled)
    remarks.push(...oilInDiesel(value.engine.fuel, oiled))
  }
  for (let session = 0; session < sessions.length; session++) {
    const dropped = unequalStrokes(usable('dry', session))
    leaveOut(dropped.out)
    if (dropped.out.length > 0) {
      const says = dropped.tie
        ? 'Stroke counts differ and no count has the majority, so none of these readings can be compared.'
        : `The readings of ${cylinderWords(dropped.out)} were taken with another number of strokes and are left out.`
      remarks.push(objection('mixed-strokes', dropped.out, says, 'Crank every cylinder for the same number of strokes and read again.'))
    }
    const strokes = usable('dry', session).find((entry) => entry.strokes !== null)?.strokes ?? null
    const wet = usable('wet', session).filter((entry) => strokes !== null && entry.strokes !== null && entry.strokes !== strokes)
    leaveOut(wet)
    if (wet.length > 0) {
      remarks.push(objection('mixed-strokes', wet, `The wet reading of ${cylinderWords(wet)} was taken with another number of strokes than the dry ones.`, 'Repeat it with as many strokes as the dry test.'))
    }
  }

  const dry = bestSession('dry', sessions, usable)
  const running = bestSession('running', sessions, usable)
  const snap = bestSession('snap', sessions, usable)
  const judged = [dry, running, snap].find((choice) => choice.cylinders >= 2) ?? [dry, running, snap].find((choice) => choice.cylinders > 0)
  for (const choice of [dry, running, snap]) {
    const others = usable(choice.kind).filter((entry) => entry.session !== choice.session)
    leaveOut(others)
    if (others.length > 0) {
      remarks.push(objection('mixed-conditions', others, 'These readings were taken in another session, under other conditions, and are not compared with the rest.', 'Compare within one session, or take all cylinders again under one set of conditions.'))
    }
  }
  if (dry.cylinders > 0) {
    const strayWet = usable('wet').filter((entry) => entry.session !== dry.session)
    leaveOut(strayWet)
    if (strayWet.length > 0) {
      remarks.push(objection('mixed-conditions', strayWet, `The wet reading of ${cylinderWords(strayWet)} belongs to another session than the dry ones.`, 'Repeat the dry and the wet test in one session.'))
    }
  }
  const evidence = all.map((entry) => ({
    ...entry,
    usable: !out.has(entry.reading),
    judged: judged !== undefined && !out.has(entry.reading) && entry.session === judged.session && entry.kind === judged.kind,
  }))
  return {
    evidence,
    judged: judged ? { session: judged.session, kind: judged.kind, cylinders: combineRepeats(evidence.filter((entry) => entry.judged)) } : null,
    remarks,
  }
}

/** Readings whose stroke count is not that of the majority; where two counts tie for it, all. Uncounted ones go with the majority. */
function unequalStrokes(readings: readonly CompressionEvidence[]): { out: readonly CompressionEvidence[]; tie: boolean } {
  const counts = new Map<number, number>()
  for (const { strokes } of readings) if (strokes !== null) counts.set(strokes, (counts.get(strokes) ?? 0) + 1)
  if (counts.size < 2) return { out: [], tie: false }
  const most = Math.max(...counts.values())
  const winners = [...counts].filter(([, count]) => count === most)
  if (winners.length > 1) return { out: readings, tie: true }
  return { out: readings.filter(({ strokes }) => strokes !== null && strokes !== winners[0]![0]), tie: false }
}

interface Choice<K> {
  readonly kind: K
  readonly session: number
  readonly cylinders: number
}

/** The session judged for one kind: sessions stand in order of id with the top level first, so the later wins a full tie. */
function bestSession<K extends CompressionKind>(
  kind: K, sessions: readonly AdmittedSession[], usable: (kind: CompressionKind, session: number) => CompressionEvidence[],
): Choice<K> {
  let best: Choice<K> = { kind, session: 0, cylinders: 0 }
  sessions.forEach((session, index) => {
    const cylinders = new Set(usable(kind, index).map((entry) => entry.cylinder)).size
    const warmer = WARMTH[session.conditions.engine] <= WARMTH[sessions[best.session]!.conditions.engine]
    if (cylinders > best.cylinders || (cylinders > 0 && cylinders === best.cylinders && warmer)) best = { kind, session: index, cylinders }
  })
  return best
}
