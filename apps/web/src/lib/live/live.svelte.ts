import { StreamRefused } from '@evenbore/client'
import type { EventKind, LiveEvent } from '@evenbore/contract'
import { client } from '#lib/api/client.ts'

/** Which events a screen wants: all fields that are given must fit. */
export interface Wanted {
  readonly kinds?: readonly EventKind[]
  readonly garage?: string
  readonly job?: string
  readonly engine?: string
}
type Listener = (event: LiveEvent) => void

const CHANNEL = 'evenbore.live'

/**
 * The server's live events for every open tab. One tab holds the connection (a browser has few for each server) and tells the others;
 * when it closes, another takes over and goes on after the last event that it heard.
 */
class Live {
  /** True while events arrive; screens say quietly when they do not. */
  open = $state(false)
  #last: string | undefined
  #listeners = new Set<{ readonly wanted: Wanted; readonly listener: Listener }>()
  #stop: AbortController | undefined
  #channel: BroadcastChannel | undefined

  /** Begins to listen, when somebody is signed in; a second call does nothing. */
  start(): void {
    if (this.#stop) return
    const stop = new AbortController()
    this.#stop = stop
    this.#channel = new BroadcastChannel(CHANNEL)
    this.#channel.onmessage = ({ data }: MessageEvent<{ event?: LiveEvent; open?: boolean; asks?: true }>) => {
      if (data.event) this.#tell(data.event)
      else if (data.open !== undefined) this.open = data.open
      else if (data.asks && this.#leads) this.#channel?.postMessage({ open: this.open })
    }
    this.#channel.postMessage({ asks: true })
    const follow = () => this.#follow(stop.signal)
    if (navigator.locks) navigator.locks.request(CHANNEL, { signal: stop.signal }, follow).catch(() => undefined)
    else void follow()
  }

  /** Ends with the sign-in. */
  stop(): void {
    this.#stop?.abort()
    this.#stop = undefined
    this.#channel?.close()
    this.#channel = undefined
    this.#last = undefined
    this.open = false
  }

  /** Calls `listener` for each fitting event; returns how to leave. Made for `$effect(() => live.on(...))`. */
  on(wanted: Wanted, listener: Listener): () => void {
    const entry = { wanted, listener }
    this.#listeners.add(entry)
    return () => void this.#listeners.delete(entry)
  }

  #leads = false
  async #follow(signal: AbortSignal): Promise<void> {
    this.#leads = true
    try {
      for await (const event of client.events({ signal, lastEventId: this.#last, onConnection: (open) => this.#connected(open) })) {
        this.#channel?.postMessage({ event })
        this.#tell(event)
      }
    } catch (error) {
      if (!(error instanceof StreamRefused)) throw error
    } finally {
      this.#leads = false
      this.open = false
    }
  }

  #connected(open: boolean): void {
    this.open = open
    this.#channel?.postMessage({ open })
  }

  #tell(event: LiveEvent): void {
    this.#last = event.id
    for (const { wanted, listener } of this.#listeners) if (fits(event, wanted)) listener(event)
  }
}

/** Does an event concern what a screen shows? */
export function fits(event: LiveEvent, wanted: Wanted): boolean {
  return (
    (wanted.kinds === undefined || wanted.kinds.includes(event.kind)) &&
    (wanted.garage === undefined || event.garage === null || event.garage === wanted.garage) &&
    (wanted.job === undefined || event.job === wanted.job) &&
    (wanted.engine === undefined || event.engine === wanted.engine)
  )
}

export const live = new Live()
