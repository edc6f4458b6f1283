import type { Action, Actor, Customer, CustomerEdit, NewCustomer } from '@evenbore/contract'
import { z } from 'zod'
import { audit } from '../../access/audit.ts'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { decodeCursor, toPage, type Page } from '../../platform/http/cursor.ts'
import { demandChanged, demandVersion } from '../../platform/http/etag.ts'
import { emit } from '../../platform/live/outbox.ts'
import { problem } from '../../platform/problems/problem.ts'
import { demandGarage } from '../garages/service.ts'
import { phoneDigits } from './phone-digits.ts'
import { bayOfCustomer, customerById, customersOf, insertCustomer, openJobOf, updateCustomer, type CustomerRow } from './store.ts'

export { phoneDigits }

/** How a list is asked for: a page, and a loosely typed name or phone number. */
export type CustomerQuery = { readonly q?: string | undefined; readonly after?: string | undefined; readonly limit: number }

/** Customers of a garage by name. */
export async function listCustomers(database: Database, actor: Actor, garage: string, query: CustomerQuery): Promise<Page<Customer>> {
  demand(actor, 'customers.read', { garage, bay: null })
  await demandGarage(database.prisma, actor, 'customers.read', garage)
  const after = decodeCursor(query.after, z.tuple([z.string(), z.uuid()]))
  const q = query.q?.trim() ?? ''
  const search = q === '' ? null : { words: q.split(/\s+/), digits: phoneDigits(q) }
  const rows = await customersOf(database, garage, search, after, query.limit)
  return toPage(rows, query.limit, ({ name, id }) => [name, id], shownCustomer)
}

export async function readCustomer(database: Database, actor: Actor, id: string): Promise<Customer> {
  const row = await demandCustomer(database.prisma, actor, 'customers.read', id)
  return shownCustomer(row)
}

/** Makes a customer of a garage, within the transaction of what needs him (book-in makes him along the way). */
export async function makeCustomer(tx: Transaction, actor: Actor, garage: string, customer: NewCustomer): Promise<CustomerRow> {
  await demandGarage(tx, actor, 'customers.write', garage)
  const row = await insertCustomer(tx, garage, { ...customer, phoneDigits: phoneDigits(customer.phone) })
  await tell(tx, row)
  return row
}

export async function editCustomer(database: Database, actor: Actor, id: string, version: number, edit: CustomerEdit): Promise<Customer> {
  return database.transaction(async (tx) => {
    const present = await demandCustomer(tx, actor, 'customers.write', id)
    demandVersion(present.version, version)
    if (present.erasedAt !== null) throw problem('conflict', 'This customer was erased; book a new one.')
    const digits = edit.phone === undefined ? {} : { phoneDigits: phoneDigits(edit.phone) }
    const row = demandChanged(await updateCustomer(tx, id, version, { ...edit, ...digits }))
    await tell(tx, row)
    return shownCustomer(row)
  })
}

/**
 * Erases what is known of a person. Jobs, quotes and trails hold ids and stay whole; the name reads "erased".
 * Asked again it changes nothing. Refused while a job is open: its garage must be able to ring.
 */
export async function eraseCustomer(database: Database, actor: Actor, id: string): Promise<Customer> {
  return database.transaction(async (tx) => {
    const present = await demandCustomer(tx, actor, 'customers.write', id)
    if (present.erasedAt !== null) return shownCustomer(present)
    const open = await openJobOf(tx, id)
    if (open !== null) throw problem('conflict', `Job ${open} of this customer is open; hand it over or cancel it first.`)
    const nothing = { name: 'erased', phone: null, phoneDigits: null, email: null, address: null, note: null, erasedAt: new Date() }
    const row = demandChanged(await updateCustomer(tx, id, present.version, nothing))
    await audit(tx, actor, present.garageId, 'customer.erased', { customer: id })
    await tell(tx, row)
    return shownCustomer(row)
  })
}

/**
 * A customer that somebody names.
 * @throws problem `not-found`, also for another garage's and, on a tablet, for one whose car is not in its bay
 */
export async function demandCustomer(tx: Transaction, actor: Actor, action: Action, id: string): Promise<CustomerRow> {
  const row = await customerById(tx, id)
  const bay = row !== null && actor.kind === 'tablet' ? await bayOfCustomer(tx, id, actor.bay) : null
  demand(actor, action, { garage: row?.garageId, bay })
  if (row === null) throw problem('not-found')
  return row
}

async function tell(tx: Transaction, { id, garageId }: CustomerRow): Promise<void> {
  await emit(tx, { kind: 'customer.changed', garageId, body: { customer: id } })
}

/** A customer as the API shows him. */
export function shownCustomer(row: Omit<CustomerRow, 'createdAt' | 'phoneDigits'>): Customer {
  const { id, name, phone, email, address, note, version } = row
  return { id, garage: row.garageId, name, phone, email, address, note, erasedAt: row.erasedAt?.toISOString() ?? null, version }
}
