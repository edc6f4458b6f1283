import type { Transaction } from '../database/database.ts'

/** An event to be told once its transaction has committed: what changed, and whom it concerns. */
export type NewEvent = {
  readonly kind: string
  readonly garageId: string | null
  readonly jobId?: string | null
  readonly engineId?: string | null
  /** Never personal data: screens fetch what they may see. */
  readonly body?: Readonly<Record<string, unknown>>
}

/** Writes an event into the outbox, in the transaction of what it tells. */
export async function emit(tx: Transaction, event: NewEvent): Promise<void> {
  const { kind, garageId, jobId = null, engineId = null, body = {} } = event
  await tx.$executeRaw`
    INSERT INTO outbox_event (kind, garage_id, job_id, engine_id, body)
    VALUES (${kind}, ${garageId}::uuid, ${jobId}::uuid, ${engineId}::uuid, ${JSON.stringify(body)}::jsonb)`
}
