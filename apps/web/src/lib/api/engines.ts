import type { Engine, EngineEdit, EngineEvent, EngineHistoryEntry, EngineFamily, EngineFamilyEdit, Fitting, NewEngine, NewEngineEvent, NewEngineFamily, NewFitting, Removal, SameEngine } from '@evenbore/contract'
import { answer } from './answer.ts'
import { client } from './client.ts'
import type { Page } from './page.ts'

const of = (engine: string) => ({ params: { path: { engine } } })
const match = (etag: string) => ({ headers: { 'if-match': etag } })

export const listFamilies = (after?: string) => answer<Page<EngineFamily>>(client.GET('/v1/engine-families', { params: { query: { after, limit: 200 } } }))
export const newFamily = (body: NewEngineFamily) => answer<EngineFamily>(client.POST('/v1/engine-families', { body }))
export const readFamily = (family: string) => answer<EngineFamily>(client.GET('/v1/engine-families/{family}', { params: { path: { family } } }))
export const editFamily = (family: string, etag: string, body: EngineFamilyEdit) => answer<EngineFamily>(client.PATCH('/v1/engine-families/{family}', { params: { path: { family } }, ...match(etag), body }))
export const listEngines = (query: { q?: string; after?: string }) => answer<Page<Engine>>(client.GET('/v1/engines', { params: { query } }))
export const newEngine = (body: NewEngine) => answer<Engine>(client.POST('/v1/engines', { body }))
export const readEngine = (engine: string) => answer<Engine>(client.GET('/v1/engines/{engine}', of(engine)))
export const editEngine = (engine: string, etag: string, body: EngineEdit) => answer<Engine>(client.PATCH('/v1/engines/{engine}', { ...of(engine), ...match(etag), body }))
export const fitEngine = (engine: string, body: NewFitting) => answer<Fitting>(client.POST('/v1/engines/{engine}/fittings', { ...of(engine), body }))
/** Records that the engine of this fitting was taken out. */
export const removeEngine = (fitting: string, body: Removal) => answer<Fitting>(client.POST('/v1/fittings/{fitting}/removal', { params: { path: { fitting } }, body }))
/** Says in both trails that two records are one engine. */
export const sameEngine = (engine: string, body: SameEngine) => answer<SameEngine>(client.POST('/v1/engines/{engine}/same', { ...of(engine), body }))
export const noteEngineEvent = (engine: string, body: NewEngineEvent) => answer<EngineEvent>(client.POST('/v1/engines/{engine}/events', { ...of(engine), body }))
/** The engine over years: dated entries, newest first. */
export const readHistory = (engine: string) => answer<Page<EngineHistoryEntry>>(client.GET('/v1/engines/{engine}/history', of(engine)))
