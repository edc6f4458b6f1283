import type { Case, CompressionReading } from '@evenbore/contract'
import { PSI, finestPlacePa, toPascal } from '../units/pressure.ts'
import { THRESHOLDS } from './thresholds.ts'
import type { AdmittedSession, CompressionEvidence, CompressionKind } from './types.ts'

/** A gauge past its span says only "at least": how far past is believed at most, as a part of the reading (from memory). */
const PAST_SPAN = 1.25

/** The kind of a compression reading. */
export function kindOf(reading: CompressionReading): CompressionKind {
  if (reading.snap) return 'snap'
  if (reading.running) return 'running'
  return reading.wet ? 'wet' : 'dry'
}

/** Compression strokes behind a reading: its own count, else the strokes it lists, else the session's; null where nobody counted. */
function strokesOf(reading: CompressionReading, session: AdmittedSession): number | null {
  if (reading.running || reading.snap) return null
  return reading.strokeCount ?? reading.strokes?.length ?? session.conditions.strokes ?? null
}

/** Every compression reading of a case in SI with its gauge interval; `usable` and `judged` are decided afterwards. */
export function compressionEvidence(value: Case, sessions: readonly AdmittedSession[]): CompressionEvidence[] {
  const places = new Map(sessions.map((session, index) => [session.id, index]))
  const found = value.readings.flatMap((reading, index) => {
    if (reading.test !== 'compression') return []
    const session = places.get(reading.session ?? null)!
    return [{ reading, index, session, kind: kindOf(reading), strokes: strokesOf(reading, sessions[session]!) }]
  })
  const groups = Map.groupBy(found, ({ session, kind }) => `${session} ${kind}`)
  return found.map(({ reading, index, session, kind, strokes }) => {
    const { gauge } = sessions[session]!
    const group = groups.get(`${session} ${kind}`)!
    const resolutionPa = gauge.statedResolutionPa ?? unstatedResolutionPa(group.map((entry) => entry.reading))
    const marks = gauge.statedResolutionPa === null ? resolutionPa : roundedResolutionPa(resolutionPa, group.map((entry) => entry.reading))
    const pa = toPascal(reading.pressure)
    return {
      reading: index,
      cylinder: reading.cylinder,
      session,
      kind,
      strokes,
      pa,
      ...needleInterval(pa, marks, gauge.spanPa),
      resolutionPa: marks,
      sdPa: Math.max(THRESHOLDS.repeatability.value * pa, marks / 20, 1),
      usable: true,
      judged: false,
      seq: reading.seq ?? null,
      firstStrokePa: reading.firstStroke ? toPascal(reading.firstStroke) : reading.strokes ? toPascal(reading.strokes[0]!) : null,
      strokesPa: reading.strokes?.map(toPascal) ?? null,
      oilMl: reading.oilMl ?? null,
      heldTenSeconds: reading.heldTenSeconds ?? null,
    }
  })
}

/** Without a stated resolution: the finest decimal place among the readings, and at least 1 psi. */
function unstatedResolutionPa(readings: readonly CompressionReading[]): number {
  return Math.max(THRESHOLDS.leastResolutionPsi.value * PSI, finestPlacePa(readings.map((reading) => reading.pressure)))
}

/**
 * A resolution was claimed, yet the readings of four cylinders or more are all multiples of five marks: they were read to five
 * marks. Holds in any unit, and counts cylinders, so that an agreeing repeat can never coarsen what is known.
 */
export function roundedResolutionPa(statedPa: number, readings: readonly CompressionReading[]): number {
  const coarse = statedPa * THRESHOLDS.roundedTo.value
  if (coarse === 0 || new Set(readings.map(({ cylinder }) => cylinder)).size < THRESHOLDS.roundedReadings.value) return statedPa
  const marks = readings.map(({ pressure }) => toPascal(pressure) / coarse)
  const rounded = marks.every((mark) => Math.abs(mark - Math.round(mark)) < 1e-6)
  return rounded ? coarse : statedPa
}

function needleInterval(pa: number, resolutionPa: number, spanPa: number | null): { lowPa: number; highPa: number } {
  if (spanPa !== null && pa >= spanPa * (1 - 1e-9)) return { lowPa: pa - resolutionPa / 2, highPa: pa * PAST_SPAN + resolutionPa / 2 }
  if (pa < resolutionPa / 2) return { lowPa: 0, highPa: Math.max(resolutionPa, 2) }
  return { lowPa: pa - resolutionPa / 2, highPa: pa + resolutionPa / 2 }
}

/** Whether a reading stood at or past the end of its gauge. */
export function overSpan(evidence: CompressionEvidence, session: AdmittedSession): boolean {
  return session.gauge.spanPa !== null && evidence.pa >= session.gauge.spanPa * (1 - 1e-9)
}
