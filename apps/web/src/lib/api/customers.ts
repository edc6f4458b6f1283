import type { Customer, CustomerEdit, NewCustomer, NewVehicle, Vehicle, VehicleEdit } from '@evenbore/contract'
import { answer } from './answer.ts'
import { client } from './client.ts'
import type { Page } from './page.ts'

type Looking = {
  readonly q?: string
  readonly after?: string
  readonly limit?: number
}
const match = (etag: string) => ({ headers: { 'if-match': etag } })

export const listCustomers = (garage: string, query: Looking) => answer<Page<Customer>>(client.GET('/v1/garages/{garage}/customers', { params: { path: { garage }, query } }))
export const newCustomer = (garage: string, body: NewCustomer) => answer<Customer>(client.POST('/v1/garages/{garage}/customers', { params: { path: { garage } }, body }))
export const readCustomer = (customer: string) => answer<Customer>(client.GET('/v1/customers/{customer}', { params: { path: { customer } } }))
export const editCustomer = (customer: string, etag: string, body: CustomerEdit) => answer<Customer>(client.PATCH('/v1/customers/{customer}', { params: { path: { customer } }, ...match(etag), body }))
/** Erases the person, never the records. */
export const eraseCustomer = (customer: string) => answer<Customer>(client.POST('/v1/customers/{customer}/erasure', { params: { path: { customer } } }))

export const listVehicles = (garage: string, query: Looking) => answer<Page<Vehicle>>(client.GET('/v1/garages/{garage}/vehicles', { params: { path: { garage }, query } }))
export const newVehicle = (garage: string, body: NewVehicle) => answer<Vehicle>(client.POST('/v1/garages/{garage}/vehicles', { params: { path: { garage } }, body }))
export const readVehicle = (vehicle: string) => answer<Vehicle>(client.GET('/v1/vehicles/{vehicle}', { params: { path: { vehicle } } }))
export const editVehicle = (vehicle: string, etag: string, body: VehicleEdit) => answer<Vehicle>(client.PATCH('/v1/vehicles/{vehicle}', { params: { path: { vehicle } }, ...match(etag), body }))
