import type { Actor, LiveEvent } from '@evenbore/contract'
import { may } from '@evenbore/contract'
import type { LiveEvents, StoredEvent } from '../../platform/live/live-events.ts'
import { badField } from '../../platform/problems/problem.ts'

export const eventStreamHeaders = { 'content-type': 'text/event-stream; charset=utf-8', 'cache-control': 'no-store', 'x-accel-buffering': 'no' } as const

/** A comment line that often keeps proxies from closing a quiet stream, and finds listeners that have gone. */
const HEARTBEAT_MS = 15_000
const BATCH = 500
/** A listener that reads too slowly is let go; it comes back with its Last-Event-ID. */
const MOST_UNREAD_BYTES = 1_000_000

/**
 * Follows the events that an actor may see, from now or from behind the event `lastEventId`.
 * @returns a function that starts writing to a stream, and answers how to stop
 * @throws problem `invalid-request` for an id that is none of ours
 */
export function followEvents(live: LiveEvents, actor: Actor, lastEventId: string | undefined) {
  if (lastEventId !== undefined && !/^\d{1,18}$/.test(lastEventId)) throw badField('/headers/last-event-id', 'the id of an event', lastEventId.slice(0, 40))

  return (write: (text: string) => void, unread: () => number, end: () => void): (() => void) => {
    let sent = BigInt(lastEventId ?? live.latest())
    let catchingUp = lastEventId !== undefined
    let stopped = false
    const send = (event: StoredEvent) => {
      if (stopped || BigInt(event.id) <= sent) return
      sent = BigInt(event.id)
      if (!sees(actor, event)) return
      if (unread() > MOST_UNREAD_BYTES) return leave()
      write(asText(event))
    }
    const unsubscribe = live.subscribe((event) => { if (!catchingUp) send(event) })
    const heartbeat = setInterval(() => write(':\n\n'), HEARTBEAT_MS)
    function stop() {
      stopped = true
      clearInterval(heartbeat)
      unsubscribe()
    }
    function leave() {
      stop()
      end()
    }
    async function catchUp() {
      for (;;) {
        const events = await live.since(String(sent), BATCH)
        events.forEach(send)
        if (events.length < BATCH || stopped) break
      }
      catchingUp = false
    }
    write('retry: 1000\n\n')
    // What came between the last batch and `catchingUp = false` is read by one more look.
    if (catchingUp) catchUp().then(() => live.since(String(sent), BATCH)).then((events) => events.forEach(send), leave)
    return stop
  }
}

function sees(actor: Actor, event: StoredEvent): boolean {
  return may(actor, 'events.read', { garage: event.garage_id })
}

function asText(event: StoredEvent): string {
  const shown: LiveEvent = { id: event.id, kind: event.kind as LiveEvent['kind'], at: event.at.toISOString(), garage: event.garage_id, job: event.job_id, engine: event.engine_id, body: event.body }
  return `id: ${event.id}\nevent: ${event.kind}\ndata: ${JSON.stringify(shown)}\n\n`
}
