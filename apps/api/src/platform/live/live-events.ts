import pg from 'pg'
import type { Database } from '../database/database.ts'

/** An event as its transaction wrote it into the outbox. `id` counts up in the order of writing. */
export type StoredEvent = {
  readonly id: string
  readonly kind: string
  readonly at: Date
  readonly garage_id: string | null
  readonly job_id: string | null
  readonly engine_id: string | null
  readonly body: Readonly<Record<string, unknown>>
}

/** The stream of committed events, in one process the same for every listener. */
export type LiveEvents = {
  /** Calls `listener` with each event from now on, in order; returns how to leave. */
  readonly subscribe: (listener: (event: StoredEvent) => void) => () => void
  /** Events after `id`, oldest first, at most `limit`: for a listener that comes back. */
  readonly since: (id: string, limit: number) => Promise<StoredEvent[]>
  /** Id of the newest event that every listener has been given. */
  readonly latest: () => string
  readonly start: () => Promise<void>
  readonly stop: () => Promise<void>
}

const CHANNEL = 'evenbore_outbox'
/**
 * Ids are drawn before their transaction commits, so a lower id may become visible after a higher one. Events of transactions that
 * began before one still running are held back; then a listener that goes by ids misses none.
 */
const READ_AFTER = {
  name: 'outbox-read-after',
  text: `SELECT id::text, kind, at, garage_id, job_id, engine_id, body FROM outbox_event
    WHERE id > $1 AND xmin::text::bigint < (pg_snapshot_xmin(pg_current_snapshot())::text::bigint & 4294967295)
    ORDER BY id LIMIT $2`,
}
const NEWEST = { name: 'outbox-newest', text: 'SELECT coalesce(max(id), 0)::text AS id FROM outbox_event' }
const BATCH = 500
/** Without a wake-up (another process died between commit and telling) events are still found after this long. */
const LOOK_ANYWAY_MS = 1_000
/** One wake-up serves all commits of this long: a notification takes a lock that every commit with one waits for. */
const GATHER_MS = 15

/** Follows the outbox: told by NOTIFY after commits of any process, and looking by itself every second. */
export function liveEvents(database: Database): LiveEvents {
  const listeners = new Set<(event: StoredEvent) => void>()
  let cursor = '0'
  let client: pg.Client | undefined
  let reading: Promise<void> | undefined
  let again = false
  let telling: NodeJS.Timeout | undefined
  let looking: NodeJS.Timeout | undefined
  let stopped = false

  async function readNew(): Promise<void> {
    do {
      again = false
      const events = await database.run<StoredEvent>(READ_AFTER, [cursor, BATCH])
      for (const event of events) {
        cursor = event.id
        for (const listener of listeners) listener(event)
      }
      if (events.length === BATCH) again = true
    } while (again && !stopped)
  }

  function look(): void {
    if (stopped) return
    if (reading !== undefined) {
      again = true
      return
    }
    // A database that is away for a moment is asked again a second later.
    reading = readNew().catch(() => undefined).finally(() => { reading = undefined })
  }

  function tell(): void {
    if (telling !== undefined || stopped) return
    telling = setTimeout(() => {
      telling = undefined
      look()
      database.pool.query(`NOTIFY ${CHANNEL}`).catch(() => undefined)
    }, GATHER_MS)
  }

  async function listen(): Promise<void> {
    const next = new pg.Client({ connectionString: database.url, application_name: 'evenbore' })
    next.on('error', () => undefined)
    next.on('end', () => { if (!stopped) setTimeout(() => void listen().catch(() => undefined), LOOK_ANYWAY_MS).unref() })
    next.on('notification', look)
    await next.connect()
    await next.query(`LISTEN ${CHANNEL}`)
    client = next
  }

  return {
    subscribe: (listener) => {
      listeners.add(listener)
      return () => void listeners.delete(listener)
    },
    since: (id, limit) => database.run<StoredEvent>(READ_AFTER, [id, limit]),
    latest: () => cursor,
    start: async () => {
      cursor = (await database.run<{ id: string }>(NEWEST, []))[0]?.id ?? '0'
      await listen()
      database.onCommit(tell)
      looking = setInterval(look, LOOK_ANYWAY_MS)
      looking.unref()
    },
    stop: async () => {
      stopped = true
      clearTimeout(telling)
      clearInterval(looking)
      await reading
      await client?.end().catch(() => undefined)
    },
  }
}
