import type { Transaction } from '../../platform/database/database.ts'
import { emit } from '../../platform/live/outbox.ts'
import type { JobFacts } from './facts.ts'

/** Tells screens and apps that a job changed: which fields, never their contents. */
export async function told(tx: Transaction, facts: Pick<JobFacts, 'id' | 'garage' | 'engine'>, body: Readonly<Record<string, unknown>>): Promise<void> {
  await emit(tx, { kind: 'job.changed', garageId: facts.garage, jobId: facts.id, engineId: facts.engine, body })
}
