import type { Finding, FinishRepair, NewFinding, NewRetest, NewRetestDate, RepairRecord, Retest, RetestComparison, RetestOutcome, Waiver } from '@evenbore/contract'
import { answer } from './answer.ts'
import { client } from './client.ts'
import type { Page } from './page.ts'

const of = (job: string) => ({ params: { path: { job } } })
const on = (retest: string) => ({ params: { path: { retest } } })

export const startRepair = (job: string) => answer<RepairRecord>(client.POST('/v1/jobs/{job}/repair', { ...of(job), body: {} }))
export const finishRepair = (job: string, body: FinishRepair) => answer<RepairRecord>(client.POST('/v1/jobs/{job}/repair/finish', { ...of(job), body }))
export const listFindings = (job: string) => answer<Page<Finding>>(client.GET('/v1/jobs/{job}/findings', of(job)))
export const recordFinding = (job: string, body: NewFinding) => answer<Finding>(client.POST('/v1/jobs/{job}/findings', { ...of(job), body }))

/** Retests of a garage; `due` leaves out those decided or fulfilled. */
export const listRetests = (garage: string, query: { due?: 'true'; after?: string }) => answer<Page<Retest>>(client.GET('/v1/garages/{garage}/retests', { params: { path: { garage }, query } }))
export const listJobRetests = (job: string) => answer<Page<Retest>>(client.GET('/v1/jobs/{job}/retests', of(job)))
export const promiseRetest = (job: string, body: NewRetest) => answer<Retest>(client.POST('/v1/jobs/{job}/retests', { ...of(job), body }))
export const moveRetest = (retest: string, body: NewRetestDate) => answer<Retest>(client.POST('/v1/retests/{retest}/dates', { ...on(retest), body }))
export const readComparison = (retest: string) => answer<RetestComparison>(client.GET('/v1/retests/{retest}/comparison', on(retest)))
export const decideRetest = (retest: string, body: RetestOutcome) => answer<Retest>(client.POST('/v1/retests/{retest}/outcome', { ...on(retest), body }))
export const waiveRetest = (retest: string, body: Waiver) => answer<Retest>(client.POST('/v1/retests/{retest}/waiver', { ...on(retest), body }))
