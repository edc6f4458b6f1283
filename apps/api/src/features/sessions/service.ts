import type { Actor, NewSession, Session, StoredReading } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { newId } from '../../platform/ids.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { appendTrail } from '../trail/service.ts'
import { demandOpen, jobPlace } from './job.ts'
import { closeSessionRows, insertSession, knownApps, readInstrument, readReadings, readSessions, releaseRetestOwed, sessionExists, type JobPlace } from './store.ts'
import { toSession, toStoredReading } from './wire.ts'

export { demandOpen, jobPlace } from './job.ts'
export { readReadings, readSessions, type JobPlace, type ReadingRow, type SessionRow } from './store.ts'
export { isCurrent } from './wire.ts'

/** The sessions of a job with their readings. */
export async function listSessions(database: Database, actor: Actor, job: string): Promise<Session[]> {
  const place = await jobPlace(database.prisma, job)
  demand(actor, 'sessions.read', { garage: place.garage, bay: place.bay })
  const sessions = await readSessions(database, { job })
  const readings = await readReadings(database, sessions.map(({ id }) => id))
  return sessions.map((session) => toSession(session, readings))
}

/** One session with its readings. */
export async function readSession(database: Database, actor: Actor, session: string): Promise<Session> {
  const [row] = await readSessions(database, { session })
  if (row === undefined) throw problem('not-found')
  demand(actor, 'sessions.read', { garage: row.garage, bay: row.bay })
  return toSession(row, await readReadings(database, [session]))
}

/** Readings that came late, into a session closed meanwhile, and that nobody has placed yet. */
export async function listUnplaced(database: Database, actor: Actor, job: string): Promise<StoredReading[]> {
  const place = await jobPlace(database.prisma, job)
  demand(actor, 'sessions.read', { garage: place.garage, bay: place.bay })
  const sessions = await readSessions(database, { job })
  const readings = await readReadings(database, sessions.map(({ id }) => id))
  return readings.filter(({ state, replacedBy }) => state === 'unplaced' && replacedBy === null).map(toStoredReading)
}

/**
 * Opens a session: conditions and instruments never change afterwards. The same id again answers the session that is there.
 * @returns the id, and whether the session is new
 */
export async function openSession(database: Database, actor: Actor, job: string, input: NewSession): Promise<{ readonly id: string; readonly isNew: boolean }> {
  return database.transaction(async (tx) => {
    const place = await jobPlace(tx, job)
    demand(actor, 'sessions.write', { garage: place.garage })
    const id = input.id ?? newId()
    const there = input.id === undefined ? undefined : await sessionExists(tx, id)
    if (there !== undefined) {
      if (there.job !== job) throw problem('id-reused', 'A session of another job has this id.')
      return { id, isNew: false }
    }
    demandOpen(place)
    if (input.purpose === 'release' && !(await releaseRetestOwed(tx, job))) throw problem('wrong-state', 'No release retest is owed: a repair is finished first.')
    const openedAt = input.openedAt ?? new Date().toISOString()
    const gaugeSpecification = await instrument(tx, input.gauge, place, ['compression', 'vacuum'], '/gauge')
    const testerSpecification = await instrument(tx, input.tester, place, ['leakage'], '/tester')
    await demandApps(tx, input.apps)
    await insertSession(tx, {
      id, jobId: job, engineId: place.engine, purpose: input.purpose, conditions: input.conditions as never, openedAt, openedById: personOf(actor), appIds: input.apps,
      gaugeId: input.gauge, testerId: input.tester, ...(gaugeSpecification === undefined ? {} : { gaugeSpecification }), ...(testerSpecification === undefined ? {} : { testerSpecification }),
    })
    const { purpose, conditions, gauge, tester, apps } = input
    await emit(tx, { kind: 'session.opened', garageId: place.garage, jobId: job, engineId: place.engine, body: { session: id, purpose } })
    await appendTrail(tx, {
      engine: place.engine, job, garage: place.garage, kind: 'session-opened', actor,
      body: { session: id, purpose, conditions, gauge, gaugeSpecification: gaugeSpecification ?? null, tester, testerSpecification: testerSpecification ?? null, apps, openedAt },
    })
    return { id, isNew: true }
  })
}

/** Closes a session; closing a closed one changes nothing. */
export async function closeSession(database: Database, actor: Actor, session: string): Promise<Session> {
  const [row] = await readSessions(database, { session })
  if (row === undefined) throw problem('not-found')
  demand(actor, 'sessions.write', { garage: row.garage })
  await database.transaction(async (tx) => closeSessions(tx, actor, await jobPlace(tx, row.job), session))
  return readSession(database, actor, session)
}

/** Closes every open session of a job (or the one named), each with its trail entry and event. For actions that end testing. */
export async function closeSessions(tx: Transaction, actor: Actor, job: JobPlace, session?: string): Promise<void> {
  const closed = await closeSessionRows(tx, { job: job.id, session }, personOf(actor))
  for (const id of closed) {
    await emit(tx, { kind: 'session.closed', garageId: job.garage, jobId: job.id, engineId: job.engine, body: { session: id } })
    await appendTrail(tx, { engine: job.engine, job: job.id, garage: job.garage, kind: 'session-closed', actor, body: { session: id } })
  }
}

async function instrument(tx: Transaction, id: string | null, job: JobPlace, kinds: readonly string[], path: string) {
  if (id === null) return undefined
  const found = await readInstrument(tx, id, job.garage)
  if (found === null || !kinds.includes(found.kind)) throw badField(path, `the id of a ${kinds.join(' or ')} ${path === '/tester' ? 'tester' : 'gauge'} of this garage, in use`, id)
  return found.specification as object
}

async function demandApps(tx: Transaction, apps: readonly string[]): Promise<void> {
  if (apps.length === 0) return
  const known = await knownApps(tx, apps)
  const index = apps.findIndex((app) => !known.includes(app))
  if (index >= 0) throw badField(`/apps/${index}`, 'the id of an outside app in use', apps[index])
}
