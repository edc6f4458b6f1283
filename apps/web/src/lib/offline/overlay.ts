import type { EnteredReading, NewSession, ReadingPut, Session, StoredReading } from '@evenbore/contract'
import type { OutboxEntry } from './outbox-entry.ts'

/** A session as this tablet knows it: what the server has, and what waits here. */
export interface BenchSession extends Session {
  /** True while the server has not answered for it. */
  readonly waiting: boolean
}

/** What a session needs beside the request that opens it: names and specifications, known here from the garage's gauges. */
export interface LocalNames {
  readonly engine: string
  readonly person: { readonly id: string; readonly name: string } | null
  readonly gauges: ReadonlyMap<string, { readonly name: string; readonly specification: unknown }>
}

/**
 * Lays what waits in the outbox over what the server answered, so that a screen shows one truth. Pure.
 * An entry that the server has meanwhile is recognised by its id and not counted twice.
 */
export function overlay(sessions: readonly Session[], entries: readonly OutboxEntry[], names: LocalNames): BenchSession[] {
  const all = new Map<string, BenchSession>(sessions.map((session) => [session.id, { ...session, waiting: false }]))
  for (const entry of entries) {
    if (entry.kind === 'session' && !all.has(entry.id)) all.set(entry.id, opened(entry, names))
    if (entry.kind === 'reading' && entry.session && entry.conflict?.why !== 'unplaced') {
      const session = all.get(entry.session)
      if (session) all.set(session.id, withReading(session, entry, names))
    }
    if (entry.kind === 'close' && entry.session) {
      const session = all.get(entry.session)
      if (session && !session.closedAt) all.set(session.id, { ...session, closedAt: entry.madeAt })
    }
  }
  return [...all.values()].sort((a, b) => (a.openedAt < b.openedAt ? -1 : a.openedAt > b.openedAt ? 1 : a.id < b.id ? -1 : 1))
}

function opened(entry: OutboxEntry, names: LocalNames): BenchSession {
  const body = entry.body as NewSession
  const gauge = body.gauge ? names.gauges.get(body.gauge) : undefined
  const tester = body.tester ? names.gauges.get(body.tester) : undefined
  return {
    id: entry.id,
    job: entry.job,
    engine: names.engine,
    purpose: body.purpose ?? 'test',
    conditions: body.conditions,
    gauge: body.gauge ? { id: body.gauge, name: gauge?.name ?? '' } : null,
    gaugeSpecification: (gauge?.specification ?? null) as Session['gaugeSpecification'],
    tester: body.tester ? { id: body.tester, name: tester?.name ?? '' } : null,
    testerSpecification: (tester?.specification ?? null) as Session['testerSpecification'],
    apps: [],
    openedAt: body.openedAt ?? entry.madeAt,
    openedBy: names.person,
    closedAt: null,
    readings: [],
    version: 1,
    waiting: true,
  }
}

function withReading(session: BenchSession, entry: OutboxEntry, names: LocalNames): BenchSession {
  if (session.readings.some((reading) => reading.id === entry.id)) return session
  const put = entry.body as ReadingPut
  const stored: StoredReading = {
    id: entry.id,
    session: session.id,
    reading: (put.reading ?? null) as EnteredReading | null,
    state: 'placed',
    current: !put.withdrawn,
    replaces: put.replaces ?? null,
    replacedBy: null,
    withdrawn: put.withdrawn ?? false,
    reason: put.reason ?? null,
    takenAt: put.takenAt,
    receivedAt: entry.madeAt,
    takenBy: names.person,
    offline: put.offline ?? false,
  }
  const readings = session.readings.map((reading) => (reading.id === put.replaces ? { ...reading, current: false, replacedBy: entry.id } : reading))
  return { ...session, readings: [...readings, stored] }
}

/** The readings that count now, oldest first. */
export function currentReadings(session: Session): StoredReading[] {
  return session.readings.filter((reading) => reading.current && reading.state === 'placed' && reading.reading !== null)
}

/** Two people, one cylinder, within minutes: the same crank, or a repeat? Pairs of ids, oldest first; answered pairs are left out. */
export function doubles(session: Session, answered: ReadonlySet<string>, withinMs = 10 * 60_000): [StoredReading, StoredReading][] {
  const pairs: [StoredReading, StoredReading][] = []
  const readings = currentReadings(session)
  readings.forEach((a, i) => {
    for (const b of readings.slice(i + 1)) {
      if (!sameSpot(a, b) || !a.takenBy || !b.takenBy || a.takenBy.id === b.takenBy.id) continue
      if (Math.abs(Date.parse(a.takenAt) - Date.parse(b.takenAt)) > withinMs || answered.has(`${a.id} ${b.id}`)) continue
      pairs.push([a, b])
    }
  })
  return pairs
}

function sameSpot(a: StoredReading, b: StoredReading): boolean {
  const [x, y] = [a.reading, b.reading]
  if (x?.test !== 'compression' || y?.test !== 'compression') return false
  return x.cylinder === y.cylinder && (x.wet ?? false) === (y.wet ?? false) && (x.running ?? false) === (y.running ?? false) && (x.snap ?? false) === (y.snap ?? false)
}
