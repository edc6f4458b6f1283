import type { Actor } from '@evenbore/contract'
import type { Transaction } from '../platform/database/database.ts'
import { newId } from '../platform/ids.ts'

/** Writes who changed settings, people, instruments or apps; in the transaction of the change. `subject` holds ids, never secrets or names. */
export async function audit(tx: Transaction, actor: Actor | null, garageId: string | null, action: string, subject: Readonly<Record<string, unknown>>): Promise<void> {
  await tx.auditEntry.create({ data: { id: newId(), garageId, actor: actorRef(actor), action, subject: subject as object } })
}

/** An actor as the record keeps it: kind and ids. null: the server itself, such as the setup of the first owner. */
export function actorRef(actor: Actor | null): { readonly kind: string; readonly id: string; readonly tablet?: string } {
  if (actor === null) return { kind: 'server', id: 'server' }
  if (actor.kind === 'app') return { kind: 'app', id: actor.app }
  if (actor.kind === 'person') return { kind: 'person', id: actor.person }
  return actor.person === null ? { kind: 'tablet', id: actor.tablet } : { kind: 'person', id: actor.person, tablet: actor.tablet }
}
