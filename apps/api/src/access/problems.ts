import { problem, type ProblemError } from '../platform/problems/problem.ts'

/** One answer for whatever did not fit, so that nobody learns which names exist. */
export function wrongCredentials(): ProblemError {
  return problem('wrong-credentials')
}

/** Too many wrong attempts: when to come back. */
export function lockedOut(until: Date): ProblemError {
  const seconds = Math.max(1, Math.ceil((until.getTime() - Date.now()) / 1000))
  return problem('locked-out', `Try again in ${seconds} seconds.`, { headers: { 'retry-after': String(seconds) } })
}
