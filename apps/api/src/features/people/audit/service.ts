import type { Actor, AuditEntry } from '@evenbore/contract'
import { z } from 'zod'
import { demand } from '../../../access/door.ts'
import type { Database } from '../../../platform/database/database.ts'
import { decodeCursor, toPage, type Page } from '../../../platform/http/cursor.ts'
import { managedBy } from '../service.ts'
import { auditEntries, type NamedAuditRow } from './store.ts'

/** Changes of settings, newest first: an owner reads all, a manager those of his garages. */
export async function readAudit(database: Database, actor: Actor, query: { readonly after?: string | undefined; readonly limit: number }): Promise<Page<AuditEntry>> {
  demand(actor, 'settings.read', {})
  const after = decodeCursor(query.after, z.tuple([z.uuid()]))
  const rows = await auditEntries(database, managedBy(actor), after?.[0], query.limit)
  return toPage(rows, query.limit, ({ id }) => [id], shown)
}

function shown({ id, at, garageId, actor, action, subject, name }: NamedAuditRow): AuditEntry {
  const { kind, id: who } = actor as { kind: string; id: string }
  return { id, at: at.toISOString(), garage: garageId, actor: { kind, id: who, name }, action, subject }
}
