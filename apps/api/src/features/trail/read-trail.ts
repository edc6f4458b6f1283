import { may, type Actor, type TrailCheck, type TrailEntry, type TrailKind } from '@evenbore/contract'
import { z } from 'zod'
import { demand } from '../../access/door.ts'
import type { Database } from '../../platform/database/database.ts'
import { decodeCursor, toPage, type Page } from '../../platform/http/cursor.ts'
import { problem } from '../../platform/problems/problem.ts'
import { checkTrails, engineExists, jobGarage, readEntries, type EntryShown } from './store.ts'

/** Entries whose content stays in the garage that wrote them; others see that there was one, and its hash. */
const BELONGS_TO_GARAGE: ReadonlySet<TrailKind> = new Set([
  'quote-sent', 'quote-approved', 'quote-sent-back', 'quote-refused', 'approval-withdrawn', 'authorisation-given', 'authorisation-declined',
])

export type PageQuery = { readonly after?: string; readonly limit: number }

/** A page of an engine's trail, oldest first, over all its jobs in all garages. */
export async function engineTrail(database: Database, actor: Actor, engine: string, query: PageQuery): Promise<Page<TrailEntry>> {
  if (!(await engineExists(database, engine))) throw problem('not-found')
  demand(actor, 'trail.read', {})
  return pageOf(database, actor, { engine }, query)
}

/** A page of what one job wrote into its engine's trail. */
export async function jobTrail(database: Database, actor: Actor, job: string, query: PageQuery): Promise<Page<TrailEntry>> {
  const garage = await jobGarage(database, job)
  if (garage === undefined) throw problem('not-found')
  demand(actor, 'trail.read', { garage })
  return pageOf(database, actor, { job }, query)
}

/** Recomputes every hash of an engine's trail. */
export async function checkTrail(database: Database, actor: Actor, engine: string): Promise<TrailCheck> {
  if (!(await engineExists(database, engine))) throw problem('not-found')
  demand(actor, 'trail.read', {})
  const [check] = await checkTrails(database, engine)
  return check ?? { engine, entries: 0, head: '0'.repeat(64), whole: true, broken: null }
}

async function pageOf(database: Database, actor: Actor, of: { readonly engine: string } | { readonly job: string }, query: PageQuery): Promise<Page<TrailEntry>> {
  const after = decodeCursor(query.after, z.tuple([z.int().min(0)]))?.[0] ?? 0
  const rows = await readEntries(database, of, after, query.limit + 1)
  return toPage(rows, query.limit, ({ seq }) => [seq], (row) => shown(row, actor))
}

function shown(row: EntryShown, actor: Actor): TrailEntry {
  const { name, at, actor: actorText, body, ...rest } = row
  const hidden = BELONGS_TO_GARAGE.has(row.kind) && !may(actor, 'quotes.read', { garage: row.garage })
  const { kind, id } = JSON.parse(actorText) as { kind: string; id: string }
  return { ...rest, at: at.toISOString(), actor: hidden ? null : { kind, id, name }, body: hidden ? null : JSON.parse(body) }
}
