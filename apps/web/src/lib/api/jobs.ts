import type { Contact, Floor, HandOver, Job, JobEdit, JobSummary, NewContact, NewJob, NewPartsOrder, PartsOrder, SearchHit, TestingClosed } from '@evenbore/contract'
import { answer } from './answer.ts'
import { client } from './client.ts'
import type { Page } from './page.ts'

const of = (job: string) => ({ params: { path: { job } } })

/** The garage seen from above, with its three lists. */
export const readFloor = (garage: string) => answer<Floor>(client.GET('/v1/garages/{garage}/floor', { params: { path: { garage } } }))
/** Jobs found by plate, code, name or phone, typed loosely. */
export const searchJobs = (garage: string, q: string) => answer<Page<SearchHit>>(client.GET('/v1/garages/{garage}/search', { params: { path: { garage }, query: { q } } }))
export const listJobs = (garage: string, query: { after?: string; open?: 'true' | 'false'; q?: string }) => answer<Page<JobSummary>>(client.GET('/v1/garages/{garage}/jobs', { params: { path: { garage }, query } }))
export const bookIn = (garage: string, body: NewJob) => answer<Job>(client.POST('/v1/garages/{garage}/jobs', { params: { path: { garage } }, body }))
export const readJob = (job: string) => answer<Job>(client.GET('/v1/jobs/{job}', of(job)))
export const editJob = (job: string, etag: string, body: JobEdit) => answer<Job>(client.PATCH('/v1/jobs/{job}', { ...of(job), headers: { 'if-match': etag }, body }))
export const placeJob = (job: string, bay: string | null) => answer<Job>(client.POST('/v1/jobs/{job}/bay', { ...of(job), body: { bay } }))
export const noteContact = (job: string, body: NewContact) => answer<Contact>(client.POST('/v1/jobs/{job}/contacts', { ...of(job), body }))
export const cancelJob = (job: string, reason: string) => answer<Job>(client.POST('/v1/jobs/{job}/cancellation', { ...of(job), body: { reason } }))
export const closeTesting = (job: string, body: TestingClosed) => answer<Job>(client.POST('/v1/jobs/{job}/testing-closed', { ...of(job), body }))
export const handOver = (job: string, body: HandOver) => answer<Job>(client.POST('/v1/jobs/{job}/hand-over', { ...of(job), body }))
export const orderParts = (job: string, body: NewPartsOrder) => answer<PartsOrder>(client.POST('/v1/jobs/{job}/parts', { ...of(job), body }))
export const partsArrived = (part: string) => answer<PartsOrder>(client.POST('/v1/parts/{part}/arrival', { params: { path: { part } } }))
