import type { JobSummary } from '@evenbore/contract'
import { standingOf, type StandingFacts } from './standing.ts'

/** A row of `sql/facts.sql`: what lists show of a job, and what decides where it stands. */
export type JobFacts = Omit<StandingFacts, 'inBay'> & {
  readonly id: string
  readonly garage: string
  readonly code: string
  readonly plate: string
  readonly vehicle: string
  readonly customer: string
  readonly complaint: string
  readonly bay: string | null
  readonly bayName: string | null
  readonly engine: string
  readonly cylinders: number
}

/** What decides where the job of a row stands. */
export function standingFacts(row: JobFacts): StandingFacts {
  return { ...row, inBay: row.bay !== null }
}

/** A job as lists show it. `seesCustomer` false: the name is left out, and nothing waits on it by name. */
export function summaryOf(row: JobFacts, seesCustomer: boolean): JobSummary {
  const standing = standingOf(standingFacts(seesCustomer ? row : { ...row, customer: '' }))
  return {
    id: row.id,
    garage: row.garage,
    code: row.code,
    plate: row.plate,
    vehicle: row.vehicle,
    customer: seesCustomer ? row.customer : '',
    complaint: row.complaint,
    bay: row.bay === null ? null : { id: row.bay, name: row.bayName ?? '' },
    engine: row.engine,
    cylinders: row.cylinders,
    standing: standing.waitsOn === '' ? { ...standing, waitsOn: null } : standing,
    promisedAt: row.promisedAt === null ? null : new Date(row.promisedAt).toISOString(),
    bookedAt: new Date(row.bookedAt).toISOString(),
  }
}
