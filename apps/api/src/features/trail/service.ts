import type { Actor, TrailCheck, TrailKind } from '@evenbore/contract'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { newId } from '../../platform/ids.ts'
import { canonicalText, trailActor } from './actor-text.ts'
import { checkTrails, insertEntry } from './store.ts'

export { canonicalText, trailActor } from './actor-text.ts'

/** Something that happened to an engine, to be kept in its trail. */
export type TrailEvent = {
  readonly engine: string
  readonly job?: string | null
  readonly garage?: string | null
  readonly kind: TrailKind
  readonly actor: Actor
  /** Facts and ids, never a customer's or a person's data. */
  readonly body: Readonly<Record<string, unknown>>
}

/**
 * Appends to the trail of an engine, in the transaction of what it tells. The text is kept exactly as hashed (RFC 8785 form); the
 * database gives it its place in the chain, so two writers of one engine wait for each other: append last, just before the commit.
 */
export async function appendTrail(tx: Transaction, event: TrailEvent): Promise<void> {
  const { engine, job = null, garage = null, kind, actor, body } = event
  await insertEntry(tx, { id: newId(), engine, job, garage, kind, actor: canonicalText(trailActor(actor)), body: canonicalText(body) })
}

/** What the model made of readings, as a note behind them. The model acts under its version. */
export async function appendModelNote(tx: Transaction, note: { readonly engine: string; readonly job: string; readonly garage: string; readonly model: string; readonly body: Readonly<Record<string, unknown>> }): Promise<void> {
  const { model, body, ...rest } = note
  await insertEntry(tx, { id: newId(), ...rest, kind: 'evaluation', actor: canonicalText({ kind: 'model', id: model }), body: canonicalText(body) })
}

/** Recomputes the hashes of every trail of the database; for the one who keeps it, who needs no permission. */
export async function verifyTrails(database: Database): Promise<TrailCheck[]> {
  return checkTrails(database, null)
}
