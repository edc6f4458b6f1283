import type { Database } from '../../platform/database/database.ts'
import { emit } from '../../platform/live/outbox.ts'
import { headsExported, readHeads } from './store.ts'

/** An event of this many heads is about 60 kB. */
const HEADS_IN_AN_EVENT = 500

/**
 * Tells the heads of all trails once a day (UTC), so that somebody outside holds what a rewritten trail would not fit.
 * Any process may ask at any time: one of them does it.
 * @returns the number of heads told, 0 where today's were told already
 */
export async function exportHeads(database: Database, now: Date): Promise<number> {
  const day = now.toISOString().slice(0, 10)
  return database.transaction(async (tx) => {
    if (await headsExported(tx, new Date(`${day}T00:00:00Z`))) return 0
    const heads = await readHeads(tx)
    for (let at = 0; at < heads.length; at += HEADS_IN_AN_EVENT) {
      await emit(tx, { kind: 'trail.heads', garageId: null, body: { day, heads: heads.slice(at, at + HEADS_IN_AN_EVENT) } })
    }
    return heads.length
  })
}
