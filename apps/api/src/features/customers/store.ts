import type { Customer as CustomerRow, Prisma } from '../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { anywhere } from '../../platform/database/sql-file.ts'
import { newId } from '../../platform/ids.ts'

export type { CustomerRow }

/** Whom to look for: every word somewhere in the name, or these digits somewhere in the phone number. */
export type CustomerSearch = { readonly words: readonly string[]; readonly digits: string | null }

/** Customers by name; erased ones are left out. One more than `limit`, where there is one. */
export function customersOf(database: Database, garage: string, search: CustomerSearch | null, after: readonly [string, string] | undefined, limit: number): Promise<CustomerRow[]> {
  const words = search === null || search.words.length === 0 ? null : search.words.map(anywhere)
  const digits = search?.digits == null ? null : anywhere(search.digits)
  return database.run(LIST, [garage, search === null, words, digits, after?.[0] ?? null, after?.[1] ?? null, limit + 1])
}

const LIST = {
  name: 'customers-list',
  // Name and phone by trigram indexes when they are asked for; otherwise the garage's customers are sorted, some thousands at most.
  text: `SELECT id, garage_id AS "garageId", name, phone, email, address, note, erased_at AS "erasedAt", version FROM customer
    WHERE garage_id = $1 AND erased_at IS NULL AND ($2::bool OR name ILIKE ALL ($3::text[]) OR phone_digits LIKE $4)
      AND ($5::text IS NULL OR (name, id) > ($5, $6::uuid))
    ORDER BY name, id LIMIT $7`,
}

export function customerById(tx: Transaction, id: string): Promise<CustomerRow | null> {
  return tx.customer.findUnique({ where: { id } })
}

/** The bay in which a car of this customer stands: a tablet sees the customer of its own bay. */
export async function bayOfCustomer(tx: Transaction, customerId: string, bay: string): Promise<string | null> {
  const job = await tx.job.findFirst({ where: { customerId, bayId: bay, handedOverAt: null, cancelledAt: null }, select: { bayId: true } })
  return job?.bayId ?? null
}

/** The code of an open job of this customer. */
export async function openJobOf(tx: Transaction, customerId: string): Promise<string | null> {
  return (await tx.job.findFirst({ where: { customerId, handedOverAt: null, cancelledAt: null }, select: { code: true } }))?.code ?? null
}

export function insertCustomer(tx: Transaction, garageId: string, customer: Omit<Prisma.CustomerCreateManyInput, 'id' | 'garageId'>): Promise<CustomerRow> {
  return tx.customer.create({ data: { id: newId(), garageId, ...customer } })
}

export function updateCustomer(tx: Transaction, id: string, version: number, data: Prisma.CustomerUpdateManyMutationInput): Promise<CustomerRow[]> {
  return tx.customer.updateManyAndReturn({ where: { id, version }, data: { ...data, version: { increment: 1 } } })
}
