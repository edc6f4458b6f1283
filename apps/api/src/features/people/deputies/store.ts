import type { Deputy as DeputyRow, Prisma } from '../../../generated/prisma/client.ts'
import type { Transaction } from '../../../platform/database/database.ts'
import { newId } from '../../../platform/ids.ts'

export type { DeputyRow }

/** Deputies of a garage: those of now and to come first. */
export function deputiesOf(tx: Transaction, garageId: string): Promise<DeputyRow[]> {
  return tx.deputy.findMany({ where: { garageId }, orderBy: [{ until: 'desc' }, { id: 'desc' }], take: 500 })
}

export function deputyById(tx: Transaction, id: string): Promise<DeputyRow | null> {
  return tx.deputy.findUnique({ where: { id } })
}

export function insertDeputy(tx: Transaction, deputy: Omit<Prisma.DeputyUncheckedCreateInput, 'id'>): Promise<DeputyRow> {
  return tx.deputy.create({ data: { id: newId(), ...deputy } })
}

export function revokeDeputy(tx: Transaction, id: string): Promise<DeputyRow> {
  return tx.deputy.update({ where: { id }, data: { revokedAt: new Date() } })
}

/** Names of people by their ids. */
export async function names(tx: Transaction, ids: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const people = await tx.person.findMany({ where: { id: { in: [...new Set(ids)] } }, select: { id: true, name: true } })
  return new Map(people.map(({ id, name }) => [id, name]))
}

/** Does somebody who has not left hold a role there? `role` null: any. */
export async function holds(tx: Transaction, personId: string, garageId: string, role: string | null): Promise<boolean> {
  return (await tx.personRole.count({ where: { personId, person: { leftAt: null }, ...(role === null ? { OR: [{ garageId }, { garageId: null }] } : { garageId, role }) } })) > 0
}
