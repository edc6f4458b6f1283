import type { NewCatalogueItem } from '@evenbore/contract'
import type { CatalogueItem as ItemRow, Prisma } from '../../../generated/prisma/client.ts'
import type { Transaction } from '../../../platform/database/database.ts'
import { newId } from '../../../platform/ids.ts'

export type { ItemRow }

export function itemsOf(tx: Transaction, garageId: string): Promise<ItemRow[]> {
  return tx.catalogueItem.findMany({ where: { garageId }, orderBy: [{ kind: 'asc' }, { text: 'asc' }, { id: 'asc' }], take: 5000 })
}

export function itemById(tx: Transaction, id: string): Promise<ItemRow | null> {
  return tx.catalogueItem.findUnique({ where: { id } })
}

export function insertItem(tx: Transaction, garageId: string, item: NewCatalogueItem): Promise<ItemRow> {
  return tx.catalogueItem.create({ data: { id: newId(), garageId, ...item } })
}

export function updateItem(tx: Transaction, id: string, version: number, data: Prisma.CatalogueItemUpdateManyMutationInput): Promise<ItemRow[]> {
  return tx.catalogueItem.updateManyAndReturn({ where: { id, version }, data: { ...data, version: { increment: 1 } } })
}
