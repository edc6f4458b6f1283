import type { JobEvaluation, NewSuggestionDecision, Session, StoredEvaluation, SuggestionDecision, TrailCheck, TrailEntry } from '@evenbore/contract'
import { answer } from './answer.ts'
import { client } from './client.ts'
import type { Page } from './page.ts'

const of = (job: string) => ({ params: { path: { job } } })

export const listSessions = (job: string) => answer<Page<Session>>(client.GET('/v1/jobs/{job}/sessions', of(job)))
/** What the model makes of the job as it stands; without the ranking of next tests it comes sooner. */
export const readEvaluation = (job: string, ranking = true) => answer<JobEvaluation>(client.GET('/v1/jobs/{job}/evaluation', { params: { path: { job }, query: { ranking: ranking ? 'true' : 'false' } } }))
/** An evaluation kept because somebody decided on it. */
export const readStoredEvaluation = (evaluation: string) => answer<StoredEvaluation>(client.GET('/v1/evaluations/{evaluation}', { params: { path: { evaluation } } }))
export const listSuggestionDecisions = (job: string) => answer<Page<SuggestionDecision>>(client.GET('/v1/jobs/{job}/suggestions', of(job)))
export const decideSuggestion = (job: string, body: NewSuggestionDecision) => answer<SuggestionDecision>(client.POST('/v1/jobs/{job}/suggestions', { ...of(job), body }))
export const listJobTrail = (job: string, after?: string) => answer<Page<TrailEntry>>(client.GET('/v1/jobs/{job}/trail', { params: { path: { job }, query: { after } } }))
export const listEngineTrail = (engine: string, after?: string) => answer<Page<TrailEntry>>(client.GET('/v1/engines/{engine}/trail', { params: { path: { engine }, query: { after } } }))
export const checkTrail = (engine: string) => answer<TrailCheck>(client.GET('/v1/engines/{engine}/trail/check', { params: { path: { engine } } }))
