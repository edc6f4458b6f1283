import type { AuditEntry as AuditRow } from '../../../generated/prisma/client.ts'
import type { Database } from '../../../platform/database/database.ts'

/** An entry with the name of whoever acted, where the record still has one. */
export type NamedAuditRow = AuditRow & { readonly name: string | null }

/** Entries of these garages (null: of the chain), newest first. One more than `limit`, where there is one. */
export async function auditEntries(database: Database, garages: readonly string[] | null, after: string | undefined, limit: number): Promise<NamedAuditRow[]> {
  const rows = await database.prisma.auditEntry.findMany({
    where: { ...(garages === null ? {} : { garageId: { in: [...garages] } }), ...(after === undefined ? {} : { id: { lt: after } }) },
    orderBy: { id: 'desc' }, take: limit + 1,
  })
  const ids = rows.map(({ actor }) => (actor as { id: string }).id)
  const people = await database.prisma.person.findMany({ where: { id: { in: ids.filter((id) => /^[0-9a-f-]{36}$/.test(id)) } }, select: { id: true, name: true } })
  const names = new Map(people.map(({ id, name }) => [id, name]))
  return rows.map((row) => ({ ...row, name: names.get((row.actor as { id: string }).id) ?? null }))
}
