import { CASE_LIMITS, type Case, type CaseSession, type Conditions, type PriorWork, type Reading } from '@evenbore/contract'
import type { Database } from '../../platform/database/database.ts'
import { problem } from '../../platform/problems/problem.ts'
import { readCase, readReadingsOfCase, type CaseRow, type ReadingOfCase, type SessionOfCase } from './store.ts'

/** A job's case; `readings[i]` is the stored reading `readingIds[i]`. */
export type JobCase = { readonly job: string; readonly garage: string; readonly bay: string | null; readonly engine: string; readonly given: Case; readonly readingIds: readonly string[] }

/** What a case says of conditions while there is no session: the usual ones, which no reading is judged by. */
const NO_SESSION: Conditions = { engine: 'cold', throttle: 'open', plugsOut: 'all' }

/**
 * The case of a job as it stands: its engine, its sessions and the readings that count. Only some `sessions` where they are named.
 * @throws problems `not-found`; `invalid-case` where there are more readings than a case may hold
 */
export async function caseOfJob(database: Database, job: string, sessions?: readonly string[]): Promise<JobCase> {
  const row = await readCase(database, job)
  if (row === undefined) throw problem('not-found')
  const used = sessions === undefined ? ofPresentState(row.sessions) : row.sessions.filter(({ id }) => sessions.includes(id))
  const readings = await readReadingsOfCase(database, used.map(({ id }) => id), CASE_LIMITS.readings + 1)
  if (readings.length > CASE_LIMITS.readings) {
    throw problem('invalid-case', undefined, { errors: [{ path: '/readings', expected: `at most ${CASE_LIMITS.readings} readings`, got: 'more in the sessions of this job' }] })
  }
  return { job, garage: row.garage, bay: row.bay, engine: row.engine, given: caseOf(row, used, readings), readingIds: readings.map(({ id }) => id) }
}

/** After a repair the sessions before it speak of an engine that is no more; until there is a later one they are the latest word. */
function ofPresentState(sessions: readonly SessionOfCase[]): readonly SessionOfCase[] {
  const repaired = sessions.filter((session) => session.repaired === true)
  return repaired.length > 0 ? repaired : sessions
}

function caseOf(row: CaseRow, sessions: readonly SessionOfCase[], readings: readonly ReadingOfCase[]): Case {
  const described = Object.fromEntries(sessions.map((session) => [session.id, sessionOf(session, row)]))
  const first = sessions[0]
  return {
    engine: { ...row.description, history: historyOf(row) },
    conditions: first === undefined ? NO_SESSION : described[first.id]!.conditions,
    sessions: described,
    readings: readings.map(({ body, session }): Reading => ({ ...body, session })),
  }
}

function sessionOf({ conditions, gauge, tester }: SessionOfCase, row: CaseRow): CaseSession {
  return {
    conditions: { ...toldAtBookIn(row.priorWork), ...altitude(conditions, row.elevationM), ...conditions },
    ...(gauge === null ? {} : { gauge }),
    ...(tester === null ? {} : { leakageTester: tester }),
  }
}

/** Where the air was not noted, it is that of the garage's height. */
function altitude(conditions: Conditions, elevationM: number | null): Partial<Conditions> {
  return elevationM === null || conditions.altitudeM !== undefined || conditions.airPressure !== undefined ? {} : { altitudeM: elevationM }
}

function toldAtBookIn({ headTorqued, clearancesSet }: PriorWork): Partial<Conditions> {
  return { ...(headTorqued === undefined ? {} : { headTorqued }), ...(clearancesSet === undefined ? {} : { clearancesSet }) }
}

/** What was told at book-in is newer than the engine's own record. */
function historyOf({ history, priorWork }: CaseRow): NonNullable<Case['engine']['history']> {
  const { overheated, monthsStored, ringsNew } = priorWork
  return {
    ...history,
    ...(overheated === undefined ? {} : { overheated }),
    ...(monthsStored === undefined ? {} : { monthsStored }),
    ...(ringsNew === true && history.kmSinceRings === undefined ? { kmSinceRings: 0 } : {}),
  }
}
