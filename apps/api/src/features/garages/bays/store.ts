import type { NewBay } from '@evenbore/contract'
import type { Bay as BayRow, Prisma } from '../../../generated/prisma/client.ts'
import type { Transaction } from '../../../platform/database/database.ts'
import { newId } from '../../../platform/ids.ts'

export type { BayRow }

export function baysOf(tx: Transaction, garageId: string): Promise<BayRow[]> {
  return tx.bay.findMany({ where: { garageId }, orderBy: [{ position: 'asc' }, { name: 'asc' }], take: 1000 })
}

export function bayById(tx: Transaction, id: string): Promise<BayRow | null> {
  return tx.bay.findUnique({ where: { id } })
}

export function insertBay(tx: Transaction, garageId: string, bay: NewBay): Promise<BayRow> {
  return tx.bay.create({ data: { id: newId(), garageId, ...bay } })
}

export function updateBay(tx: Transaction, id: string, version: number, data: Prisma.BayUpdateManyMutationInput): Promise<BayRow[]> {
  return tx.bay.updateManyAndReturn({ where: { id, version }, data: { ...data, version: { increment: 1 } } })
}

/** The code of the open job that stands in the bay. */
export async function jobInBay(tx: Transaction, bayId: string): Promise<string | undefined> {
  return (await tx.job.findFirst({ where: { bayId, handedOverAt: null, cancelledAt: null }, select: { code: true } }))?.code
}
