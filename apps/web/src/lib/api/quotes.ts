import type { Approval, Approve, Authorisation, Decision, NewAuthorisation, Quote, QuoteDraft, QuoteDraftPut, QuoteVersion, Refuse, SendBack, SuggestedLine } from '@evenbore/contract'
import { answer } from './answer.ts'
import { client } from './client.ts'
import type { Page } from './page.ts'

const of = (job: string) => ({ params: { path: { job } } })
const on = (version: string) => ({ params: { path: { version } } })

export const readQuote = (job: string) => answer<Quote>(client.GET('/v1/jobs/{job}/quote', of(job)))
/** Keeps the draft; `version` is the one it was read at, undefined starts it. */
export const putDraft = (job: string, version: number | undefined, body: QuoteDraftPut) =>
  answer<QuoteDraft>(client.PUT('/v1/jobs/{job}/quote/draft', { ...of(job), headers: version === undefined ? { 'if-none-match': '*' } : { 'if-match': `"${version}"` }, body }))
export const dropDraft = (job: string, version: number) => answer<undefined>(client.DELETE('/v1/jobs/{job}/quote/draft', { ...of(job), headers: { 'if-match': `"${version}"` } }))
/** Lines the evidence carries, priced from the garage's catalogue. */
export const listSuggestedLines = (job: string) => answer<Page<SuggestedLine>>(client.GET('/v1/jobs/{job}/quote/suggested-lines', of(job)))
export const sendVersion = (job: string) => answer<QuoteVersion>(client.POST('/v1/jobs/{job}/quote/versions', { ...of(job), body: {} }))
/** `key` is made once for the press of a button, so that a repeat of the same press counts once. */
const keyed = (version: string, key: string) => ({ ...on(version), headers: { 'idempotency-key': key } })
export const approve = (version: string, key: string, body: Approve) => answer<Approval>(client.POST('/v1/quote-versions/{version}/approval', { ...keyed(version, key), body }))
export const sendBack = (version: string, key: string, body: SendBack) => answer<Approval>(client.POST('/v1/quote-versions/{version}/send-back', { ...keyed(version, key), body }))
export const refuse = (version: string, key: string, body: Refuse) => answer<Approval>(client.POST('/v1/quote-versions/{version}/refusal', { ...keyed(version, key), body }))
export const withdraw = (version: string, key: string, body: { reason: string }) => answer<Approval>(client.POST('/v1/quote-versions/{version}/withdrawal', { ...keyed(version, key), body }))
export const authorise = (version: string, key: string, body: NewAuthorisation) => answer<Authorisation>(client.POST('/v1/quote-versions/{version}/authorisations', { ...keyed(version, key), body }))
export const listDecisions = (garage: string) => answer<Page<Decision>>(client.GET('/v1/garages/{garage}/decisions', { params: { path: { garage } } }))
