import type { ProblemCode } from '@evenbore/contract'
import { constraintOf, sqlStateOf } from '../database/sql-state.ts'
import { problem, type ProblemError } from './problem.ts'

/** What a refusal of the database means to whoever sent the request (PostgreSQL manual, appendix A). */
const MEANINGS: Readonly<Record<string, readonly [ProblemCode, string]>> = {
  '23505': ['conflict', 'Another record has this value already'],
  '23503': ['conflict', 'A record that this one names does not exist, or is still needed by another'],
  '23P01': ['conflict', 'This overlaps another record'],
  '23001': ['conflict', 'This record is kept as it was written; correct it with a new one'],
  '23514': ['invalid-request', 'A value is outside what the record allows'],
  '23502': ['invalid-request', 'A value is missing'],
  '22001': ['invalid-request', 'A text is too long'],
  '22003': ['invalid-request', 'A number is too large'],
  '22007': ['invalid-request', 'A date is not a date'],
  '22008': ['invalid-request', 'A date is out of range'],
  '22021': ['invalid-request', 'A text holds a character that cannot be stored (such as NUL)'],
  '22P02': ['invalid-request', 'A value has the wrong form'],
  '22P05': ['invalid-request', 'A text holds a character that cannot be stored (such as NUL)'],
  '40001': ['conflict', 'Somebody else was changing the same record; try again'],
  '40P01': ['conflict', 'Somebody else was changing the same record; try again'],
  '55P03': ['conflict', 'Somebody else is changing the same record; try again'],
  '53300': ['unavailable', 'The database has no connection left; try again'],
  '57P01': ['unavailable', 'The database is stopping'],
  '57P03': ['unavailable', 'The database is starting'],
  '08006': ['unavailable', 'The database does not answer'],
}

/** The problem that a database error amounts to, or undefined where it is a fault of ours. */
export function databaseProblem(error: unknown): ProblemError | undefined {
  const state = sqlStateOf(error)
  const meaning = state === undefined ? undefined : MEANINGS[state]
  if (meaning === undefined) return notThere(error)
  const constraint = constraintOf(error)
  return problem(meaning[0], constraint === undefined ? `${meaning[1]}.` : `${meaning[1]} (${constraint}).`)
}

/** P2025: Prisma was to change or find a record that is not there. */
function notThere(error: unknown): ProblemError | undefined {
  return (error as { code?: unknown } | null)?.code === 'P2025' ? problem('not-found') : undefined
}
