import type { EngineFamily as FamilyRow, Prisma } from '../../../generated/prisma/client.ts'
import type { Transaction } from '../../../platform/database/database.ts'
import { newId } from '../../../platform/ids.ts'

export type { FamilyRow }

/** Families by name, behind the one named `after`. One more than `limit`, where there is one. */
export function families(tx: Transaction, q: string | undefined, after: string | undefined, limit: number): Promise<FamilyRow[]> {
  return tx.engineFamily.findMany({
    where: { AND: [q === undefined ? {} : { name: { contains: q, mode: 'insensitive' } }, after === undefined ? {} : { name: { gt: after } }] },
    orderBy: { name: 'asc' },
    take: limit + 1,
  })
}

export function familyById(tx: Transaction, id: string): Promise<FamilyRow | null> {
  return tx.engineFamily.findUnique({ where: { id } })
}

export function insertFamily(tx: Transaction, family: Omit<Prisma.EngineFamilyCreateInput, 'id'>): Promise<FamilyRow> {
  return tx.engineFamily.create({ data: { id: newId(), ...family } })
}

export function updateFamily(tx: Transaction, id: string, version: number, data: Prisma.EngineFamilyUpdateManyMutationInput): Promise<FamilyRow[]> {
  return tx.engineFamily.updateManyAndReturn({ where: { id, version }, data: { ...data, version: { increment: 1 } } })
}

/** The engines of a family with their own values: what a changed family must still fit. */
export function enginesOfFamily(tx: Transaction, familyId: string): Promise<{ id: string; description: string; specification: unknown }[]> {
  return tx.engine.findMany({ where: { familyId }, select: { id: true, description: true, specification: true } })
}
