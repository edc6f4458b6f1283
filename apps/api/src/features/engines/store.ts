import type { Prisma } from '../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { anywhere, sqlFile } from '../../platform/database/sql-file.ts'
import { newId } from '../../platform/ids.ts'

const WITH = { family: true, fittings: { where: { until: null }, include: { vehicle: { select: { id: true, plate: true, garageId: true } } } } } as const

/** An engine with its family and the fitting it is in now. */
export type EngineRow = Prisma.EngineGetPayload<{ include: typeof WITH }>

/** What to look for: words of description or stamped number, or the key of a plate. */
export type EngineSearch = { readonly words: readonly string[]; readonly plateKey: string }
export type HistoryRow = { readonly at: number; readonly kind: string; readonly garage: string; readonly plate: string | null; readonly job: string | null; readonly code: string | null; readonly text: string | null }

const SEARCH = { name: 'engines-search', text: sqlFile(import.meta.url, './sql/search.sql') }
const HISTORY = { name: 'engines-history', text: sqlFile(import.meta.url, './sql/history.sql') }

/** Engines by description. One more than `limit`, where there is one. */
export async function engines(
  database: Database, search: EngineSearch | null, garages: readonly string[] | null, after: readonly [string, string] | undefined, limit: number,
): Promise<EngineRow[]> {
  const key = search === null || search.plateKey === '' ? null : anywhere(search.plateKey)
  const ids = await database.run<{ id: string }>(SEARCH, [search === null, search?.words.map(anywhere) ?? null, key, garages, after?.[0] ?? null, after?.[1] ?? null, limit + 1])
  const rows = await database.prisma.engine.findMany({ where: { id: { in: ids.map(({ id }) => id) } }, include: WITH })
  const byId = new Map(rows.map((row) => [row.id, row]))
  return ids.map(({ id }) => byId.get(id)).filter((row) => row !== undefined)
}

export function engineById(tx: Transaction, id: string): Promise<EngineRow | null> {
  return tx.engine.findUnique({ where: { id }, include: WITH })
}

export function insertEngine(tx: Transaction, engine: Omit<Prisma.EngineUncheckedCreateInput, 'id'>): Promise<EngineRow> {
  return tx.engine.create({ data: { id: newId(), ...engine }, include: WITH })
}

/** Changes an engine that is still at `version`; false when it is not. */
export async function updateEngine(tx: Transaction, id: string, version: number, data: Prisma.EngineUncheckedUpdateManyInput): Promise<boolean> {
  return (await tx.engine.updateMany({ where: { id, version }, data: { ...data, version: { increment: 1 } } })).count === 1
}

export function history(database: Database, engine: string, garages: readonly string[] | null): Promise<HistoryRow[]> {
  return database.run(HISTORY, [engine, garages])
}
