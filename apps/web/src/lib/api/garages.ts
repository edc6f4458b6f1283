import type { Bay, BayEdit, CatalogueItem, CatalogueItemEdit, Deputy, Garage, GarageEdit, GarageGauge, GaugeEdit, NewBay, NewCatalogueItem, NewDeputy, NewGarage, NewGauge, Role } from '@evenbore/contract'
import { answer } from './answer.ts'
import { client } from './client.ts'
import type { Page } from './page.ts'

const of = (garage: string) => ({ params: { path: { garage } } })
const match = (version: number) => ({ headers: { 'if-match': `"${version}"` } })

export const listGarages = () => answer<Page<Garage>>(client.GET('/v1/garages', {}))
export const newGarage = (body: NewGarage) => answer<Garage>(client.POST('/v1/garages', { body }))
export const readGarage = (garage: string) => answer<Garage>(client.GET('/v1/garages/{garage}', of(garage)))
export const editGarage = (garage: string, version: number, body: GarageEdit) => answer<Garage>(client.PATCH('/v1/garages/{garage}', { ...of(garage), ...match(version), body }))
export const listBays = (garage: string) => answer<Page<Bay>>(client.GET('/v1/garages/{garage}/bays', of(garage)))
export const newBay = (garage: string, body: NewBay) => answer<Bay>(client.POST('/v1/garages/{garage}/bays', { ...of(garage), body }))
export const editBay = (bay: string, version: number, body: BayEdit) => answer<Bay>(client.PATCH('/v1/bays/{bay}', { params: { path: { bay } }, ...match(version), body }))
export const listGauges = (garage: string) => answer<Page<GarageGauge>>(client.GET('/v1/garages/{garage}/gauges', of(garage)))
export const newGauge = (garage: string, body: NewGauge) => answer<GarageGauge>(client.POST('/v1/garages/{garage}/gauges', { ...of(garage), body }))
export const editGauge = (gauge: string, version: number, body: GaugeEdit) => answer<GarageGauge>(client.PATCH('/v1/gauges/{gauge}', { params: { path: { gauge } }, ...match(version), body }))
export const listCatalogue = (garage: string) => answer<Page<CatalogueItem>>(client.GET('/v1/garages/{garage}/catalogue', of(garage)))
export const newCatalogueItem = (garage: string, body: NewCatalogueItem) => answer<CatalogueItem>(client.POST('/v1/garages/{garage}/catalogue', { ...of(garage), body }))
export const editCatalogueItem = (item: string, version: number, body: CatalogueItemEdit) => answer<CatalogueItem>(client.PATCH('/v1/catalogue/{item}', { params: { path: { item } }, ...match(version), body }))
/** Who works in a garage, for pickers. */
export const listStaff = (garage: string) => answer<Page<StaffMember>>(client.GET('/v1/garages/{garage}/staff', of(garage)))
export const listDeputies = (garage: string) => answer<Page<Deputy>>(client.GET('/v1/garages/{garage}/deputies', of(garage)))
export const newDeputy = (garage: string, body: NewDeputy) => answer<Deputy>(client.POST('/v1/garages/{garage}/deputies', { ...of(garage), body }))
export const revokeDeputy = (deputy: string) => answer<Deputy>(client.POST('/v1/deputies/{deputy}/revocation', { params: { path: { deputy } } }))

/** Somebody of a garage's staff, with the roles held there. */
export interface StaffMember {
  readonly id: string
  readonly name: string
  readonly roles: readonly Role[]
}
