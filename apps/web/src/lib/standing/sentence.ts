import type { JobSummary, Standing } from '@evenbore/contract'
import type { Words } from '@evenbore/words/en.ts'

type When = (instant: string) => string
const FINAL: ReadonlySet<string> = new Set(['handed-over', 'cancelled'])

/**
 * Where a job stands, as people say it: "waits for Ruth’s yes since 10:20".
 * @param when writes an instant in the garage's zone
 */
export function standingSentence(standing: Standing, words: Words, when: When): string {
  const says = words.desk.says[standing.state]?.(standing.waitsOn ?? undefined) ?? standing.state
  return (FINAL.has(standing.state) ? words.desk.at : words.desk.since)(says, when(standing.since))
}

/** Facts said beside it, in words: what else is true, and what is due when. */
export function besideStanding(standing: Standing, promisedAt: string | null, words: Words, when: When): string[] {
  const facts = standing.beside.filter((fact) => !(fact === 'sent' && standing.state === 'waiting-for-manager')).map((fact) => words.desk.beside[fact] ?? fact)
  const { until } = words.desk
  if (standing.until) {
    if (standing.state === 'waiting-for-customer') facts.push(until.customer(when(standing.until)))
    else if (standing.state === 'waiting-for-parts') facts.push(until.parts(when(standing.until)))
    else if (standing.until !== promisedAt) facts.push(until.promise(when(standing.until)))
  }
  if (promisedAt && !FINAL.has(standing.state)) facts.push(until.promise(when(promisedAt)))
  return facts
}

/** The sentence and what is said beside it, in one line for lists. */
export function standingLine(job: Pick<JobSummary, 'standing' | 'promisedAt'>, words: Words, when: When): string {
  return [standingSentence(job.standing, words, when), ...besideStanding(job.standing, job.promisedAt, words, when)].join('; ')
}
