import type { Statement } from '../../platform/database/database.ts'
import { sqlFile } from '../../platform/database/sql-file.ts'

const read = (name: string, parts: Readonly<Record<string, string>> = {}): string => sqlFile(import.meta.url, `./sql/${name}.sql`, parts)
/** The facts of the jobs whose ids `wanted` answers: the one statement that everything which shows a job is made of. */
const factsOf = (wanted: string): string => read('facts', { wanted })
const found = read('found')

/** The floor of a garage: $1 its id. */
export const FLOOR: Statement = { name: 'jobs-floor', text: read('floor', { facts: factsOf(read('open-jobs')) }) }
/** A page of jobs: parameters as `sql/page.sql` says. */
export const LIST: Statement = { name: 'jobs-list', text: `${factsOf(read('page', { found }))}ORDER BY j.booked_at DESC, j.id DESC` }
/** Search: parameters as `sql/found.sql` says. */
export const SEARCH: Statement = { name: 'jobs-search', text: read('search', { found, facts: factsOf('SELECT id FROM hits') }) }
/** The facts of the jobs with the ids in $1. */
export const OF_JOBS = factsOf('SELECT unnest($1::uuid[]) AS id')
