import type { EnteredReading, PressureUnit, TrailEntry } from '@evenbore/contract'
import { inUnit } from '@evenbore/words/format/pressure.ts'

export interface YearSession {
  readonly at: Date
  readonly readings: { readonly cylinder: number; readonly value: number }[]
}

/** Dry compression of an engine over the years, from its trail: one column for each session, the latest reading of each cylinder. */
export function drySessions(entries: readonly TrailEntry[], unit: PressureUnit): YearSession[] {
  const sessions = new Map<string, { at: Date; readings: Map<number, number> }>()
  for (const entry of [...entries].sort((a, b) => a.seq - b.seq)) {
    if (!entry.kind.startsWith('reading') || typeof entry.body !== 'object' || entry.body === null) continue
    const { session, entered: reading, takenAt } = entry.body as { session?: string; entered?: EnteredReading; takenAt?: string }
    if (!session || reading?.test !== 'compression' || reading.wet || reading.running || reading.snap) continue
    const known = sessions.get(session) ?? { at: new Date(takenAt ?? entry.at), readings: new Map<number, number>() }
    known.readings.set(reading.cylinder, inUnit(reading.pressure, unit))
    sessions.set(session, known)
  }
  return [...sessions.values()].map(({ at, readings }) => ({ at, readings: [...readings].map(([cylinder, value]) => ({ cylinder, value })) })).sort((a, b) => a.at.getTime() - b.at.getTime())
}

/** What happened to the engine between, for marks below the years. */
export function yearEvents(entries: readonly TrailEntry[], word: (kind: TrailEntry['kind']) => string): { readonly at: Date; readonly word: string }[] {
  const told: readonly TrailEntry['kind'][] = ['fitted', 'removed', 'engine-event', 'repair-finished', 'finding']
  return entries.filter(({ kind }) => told.includes(kind)).map(({ at, kind }) => ({ at: new Date(at), word: word(kind) }))
}
