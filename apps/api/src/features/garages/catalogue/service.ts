import type { Actor, CatalogueItem, CatalogueItemEdit, NewCatalogueItem } from '@evenbore/contract'
import { demand } from '../../../access/door.ts'
import type { Database } from '../../../platform/database/database.ts'
import { demandChanged, demandVersion } from '../../../platform/http/etag.ts'
import { badField, problem } from '../../../platform/problems/problem.ts'
import { changed, demandGarage } from '../service.ts'
import { insertItem, itemById, itemsOf, updateItem, type ItemRow } from './store.ts'

/** What a garage charges for, retired items included. */
export async function listCatalogue(database: Database, actor: Actor, garage: string): Promise<CatalogueItem[]> {
  await demandGarage(database.prisma, actor, 'quotes.read', garage)
  return (await itemsOf(database.prisma, garage)).map(shown)
}

export async function makeCatalogueItem(database: Database, actor: Actor, garage: string, item: NewCatalogueItem): Promise<CatalogueItem> {
  return database.transaction(async (tx) => {
    await demandGarage(tx, actor, 'settings.write', garage)
    demandPrice(item)
    const row = await insertItem(tx, garage, item)
    await changed(tx, actor, garage, 'catalogue.made', { item: row.id })
    return shown(row)
  })
}

/** Edits an item. Quotes on record keep the price they were written with. */
export async function editCatalogueItem(database: Database, actor: Actor, id: string, version: number, { retired, ...edit }: CatalogueItemEdit): Promise<CatalogueItem> {
  return database.transaction(async (tx) => {
    const present = await itemById(tx, id)
    demand(actor, 'settings.write', { garage: present?.garageId })
    if (present === null) throw problem('not-found')
    demandVersion(present.version, version)
    demandPrice({ ...present, ...edit } as NewCatalogueItem)
    const retiredAt = retired === undefined ? {} : { retiredAt: retired ? (present.retiredAt ?? new Date()) : null }
    const row = demandChanged(await updateItem(tx, id, version, { ...edit, ...retiredAt }))
    await changed(tx, actor, row.garageId, 'catalogue.edited', { item: id })
    return shown(row)
  })
}

/** Labour is priced by minutes at the garage's rate, a part by the piece: one without the other cannot be quoted. */
function demandPrice({ kind, minutes, unitPriceMinor }: Pick<NewCatalogueItem, 'kind' | 'minutes' | 'unitPriceMinor'>): void {
  if (kind === 'labour' && minutes === null) throw badField('/minutes', 'minutes, since this is labour', 'null')
  if (kind === 'part' && unitPriceMinor === null) throw badField('/unitPriceMinor', 'a price, since this is a part', 'null')
}

function shown(row: ItemRow): CatalogueItem {
  return {
    id: row.id, garage: row.garageId, kind: row.kind, operation: row.operation, text: row.text, minutes: row.minutes,
    unitPriceMinor: row.unitPriceMinor, taxBasisPoints: row.taxBasisPoints, retiredAt: row.retiredAt?.toISOString() ?? null, version: row.version,
  } as CatalogueItem
}
