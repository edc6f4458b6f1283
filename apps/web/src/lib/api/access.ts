import type { AuditEntry, Me, MyPreferences, NewOutsideApp, NewPerson, NewTablet, OutsideApp, OutsideAppMade, Person, PersonEdit, Reliability, Tablet, TabletMade } from '@evenbore/contract'
import { answer } from './answer.ts'
import { client } from './client.ts'
import type { Page } from './page.ts'

export const editMe = (body: MyPreferences) => answer<Me>(client.PATCH('/v1/me', { body }))
export const listPeople = (after?: string) => answer<Page<Person>>(client.GET('/v1/people', { params: { query: { after } } }))
export const newPerson = (body: NewPerson) => answer<Person>(client.POST('/v1/people', { body }))
export const editPerson = (person: string, version: number, body: PersonEdit) => answer<Person>(client.PATCH('/v1/people/{person}', { params: { path: { person } }, headers: { 'if-match': `"${version}"` }, body }))
export const listTablets = (garage: string) => answer<Page<Tablet>>(client.GET('/v1/garages/{garage}/tablets', { params: { path: { garage } } }))
/** The code that enrols it is answered this once. */
export const newTablet = (garage: string, body: NewTablet) => answer<TabletMade>(client.POST('/v1/garages/{garage}/tablets', { params: { path: { garage } }, body }))
export const revokeTablet = (tablet: string) => answer<Tablet>(client.POST('/v1/tablets/{tablet}/revocation', { params: { path: { tablet } } }))
export const newEnrolmentCode = (tablet: string) => answer<TabletMade>(client.POST('/v1/tablets/{tablet}/enrolment-code', { params: { path: { tablet } } }))
export const listApps = () => answer<Page<OutsideApp>>(client.GET('/v1/apps', {}))
/** The secret is answered this once. */
export const newApp = (body: NewOutsideApp) => answer<OutsideAppMade>(client.POST('/v1/apps', { body }))
export const revokeApp = (app: string) => answer<OutsideApp>(client.POST('/v1/apps/{app}/revocation', { params: { path: { app } } }))
export const newAppSecret = (app: string) => answer<OutsideAppMade>(client.POST('/v1/apps/{app}/secret', { params: { path: { app } } }))
export const listAudit = (after?: string) => answer<Page<AuditEntry>>(client.GET('/v1/audit', { params: { query: { after } } }))
export const readReliability = (garage: string) => answer<Reliability>(client.GET('/v1/garages/{garage}/reliability', { params: { path: { garage } } }))
