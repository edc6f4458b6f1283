import type { LiveEvent } from '@evenbore/contract'
import { createParser } from 'eventsource-parser'
import { backoffMs, pause } from './backoff.ts'

export interface EventStreamOptions {
  /** The address of the stream, e.g. `http://127.0.0.1:4080/v1/events`. */
  readonly url: string
  /** Sends a request with the token of who listens. */
  readonly send: (request: Request) => Promise<Response>
  /** Ends the stream. */
  readonly signal: AbortSignal
  /** Where to go on: the id of the last event seen. */
  readonly lastEventId?: string
  /** Told when the stream is open (true) and when it broke (false). */
  readonly onConnection?: (open: boolean) => void
  /** A stream silent for longer than this is taken for dead and opened anew; the server sends a comment more often. */
  readonly silenceMs?: number
  readonly wait?: typeof pause
}

const LONGEST_WAIT_MS = 15_000
const SILENCE_MS = 45_000

/** The server refused the stream for good: no right to it, or signed out. */
export class StreamRefused extends Error {
  readonly status: number
  constructor(status: number) {
    super(`the event stream was refused with status ${status}`)
    this.status = status
  }
}

/**
 * Live events, one after the other, across broken connections: resumes after the last event seen (`Last-Event-ID`), so none is missed.
 * @throws StreamRefused when the server says 401, 403 or 404
 */
export async function* eventStream(options: EventStreamOptions): AsyncGenerator<LiveEvent, void, undefined> {
  const { signal, onConnection } = options
  const wait = options.wait ?? pause
  let last = options.lastEventId
  let failures = 0
  while (!signal.aborted) {
    try {
      for await (const event of oneConnection(options, last, () => {
        failures = 0
        onConnection?.(true)
      })) {
        last = event.id
        yield event
      }
    } catch (error) {
      if (error instanceof StreamRefused) throw error
    }
    if (signal.aborted) break
    onConnection?.(false)
    failures += 1
    await wait(backoffMs(failures, LONGEST_WAIT_MS, Math.random()), signal).catch(() => undefined)
  }
}

async function* oneConnection(options: EventStreamOptions, last: string | undefined, opened: () => void): AsyncGenerator<LiveEvent, void, undefined> {
  const silence = new AbortController()
  const signal = AbortSignal.any([options.signal, silence.signal])
  const headers: Record<string, string> = { accept: 'text/event-stream', ...(last === undefined ? {} : { 'last-event-id': last }) }
  const response = await options.send(new Request(options.url, { headers, signal, cache: 'no-store' }))
  if ([401, 403, 404].includes(response.status)) throw new StreamRefused(response.status)
  if (!response.ok || !response.body) throw new Error(`status ${response.status}`)
  opened()
  const ready: LiveEvent[] = []
  const parser = createParser({ onEvent: (message) => ready.push(readEvent(message.data, message.id)) })
  const reader = response.body.pipeThrough(new TextDecoderStream()).getReader()
  let timer: ReturnType<typeof setTimeout> | undefined
  try {
    for (;;) {
      timer = setTimeout(() => silence.abort(), options.silenceMs ?? SILENCE_MS)
      const { done, value } = await reader.read()
      clearTimeout(timer)
      if (done) return
      parser.feed(value)
      yield* ready.splice(0)
    }
  } finally {
    clearTimeout(timer)
    await reader.cancel().catch(() => undefined)
  }
}

function readEvent(data: string, id: string | undefined): LiveEvent {
  const event = JSON.parse(data) as LiveEvent
  return id === undefined || event.id === id ? event : { ...event, id }
}
