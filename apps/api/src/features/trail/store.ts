import type { Transaction } from '../../platform/database/database.ts'

/** A row to append; sequence number, time and hashes are the database's (trigger `trail_entry_chain`). */
export type EntryRow = {
  readonly id: string
  readonly engine: string
  readonly job: string | null
  readonly garage: string | null
  readonly kind: string
  readonly actor: string
  readonly body: string
}

/** Appends one entry; the head of the engine's trail stays locked until the transaction ends. */
export async function insertEntry(tx: Transaction, row: EntryRow): Promise<void> {
  await tx.$executeRaw`
    INSERT INTO trail_entry (id, engine_id, job_id, garage_id, kind, actor, body)
    VALUES (${row.id}::uuid, ${row.engine}::uuid, ${row.job}::uuid, ${row.garage}::uuid, ${row.kind}, ${row.actor}, ${row.body})`
}
