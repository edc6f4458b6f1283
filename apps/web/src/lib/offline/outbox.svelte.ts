import { contact } from './contact.svelte.ts'
import { database } from './database.ts'
import { newId } from './identifier.ts'
import { problemCode } from '#lib/api/answer.ts'
import type { OutboxEntry } from './outbox-entry.ts'
import { isHeldBack, pointedAt } from './outbox-photos.ts'
import { request } from './request.ts'
import type { Refusal } from '#lib/ui/refusal.ts'

const CHANNEL = 'evenbore.outbox'
const LONGEST_WAIT_MS = 60_000
const SCREEN_FIRST_MS = 150
/** A photo on a slow line; the server waits as long for a request to arrive. */
const PHOTO_TIMEOUT_MS = 60_000
/** The refusal after which a thing is sent as made without network: a closed session, a job that is over. */
const LATE_INSTEAD: Partial<Record<OutboxEntry['kind'], string>> = { reading: 'session-closed', photo: 'wrong-state' }

interface OutboxStore {
  readonly getAll: () => Promise<OutboxEntry[]>
  readonly delete: (seq: number) => Promise<void>
}

/** What a caller gives; id, order and state are the outbox's. */
export type NewEntry = Pick<OutboxEntry, 'kind' | 'method' | 'path' | 'body' | 'job' | 'session' | 'reading' | 'person' | 'says'> & { readonly id?: string }

/**
 * The tablet's outbox: everything made here is stored first, then sent in the order it was made, each thing exactly once
 * (the server knows it by its id). One tab sends; all tabs see. Nothing is dropped: what the server refuses waits for a person's word.
 */
class Outbox {
  /** Everything not yet on the server, oldest first, as state. */
  entries = $state.raw<readonly OutboxEntry[]>([])
  /** Asked before anything is sent: is there somebody in whose name it may go? Set by take-over. */
  gate: () => Promise<boolean> = () => Promise.resolve(true)
  /** Counts up when something was sent or given up: what was fetched before may be old. */
  sentCount = $state(0)
  readonly waiting = $derived(this.entries.filter((entry) => entry.state === 'waiting'))
  readonly conflicts = $derived(this.entries.filter((entry) => entry.state === 'conflict'))

  #channel: BroadcastChannel | undefined
  #flushing: Promise<void> | undefined
  #failures = 0
  #timer: ReturnType<typeof setTimeout> | undefined
  #started: Promise<void> | undefined

  /** Reads what is stored and begins to send; once for each page. */
  start(): Promise<void> {
    this.#started ??= this.#start()
    return this.#started
  }

  async #start(): Promise<void> {
    this.#channel = new BroadcastChannel(CHANNEL)
    this.#channel.onmessage = () => void this.#reload().then(() => (this.sentCount += 1))
    contact.whenBack(() => void this.flush())
    await this.#reload()
    const dayAgo = new Date(Date.now() - 24 * 3_600_000).toISOString()
    await this.forget((entry) => (entry.sentAt ?? '') < dayAgo)
    void this.flush()
  }

  /** Stores an entry, then tries to send. Resolves when it is stored: from then on it survives a killed tab. */
  async add(entry: NewEntry): Promise<OutboxEntry> {
    const stored: OutboxEntry = { ...entry, id: entry.id ?? newId(), madeAt: new Date().toISOString(), state: 'waiting', tried: false }
    const seq = await (await database()).add('outbox', $state.snapshot(stored) as OutboxEntry)
    const kept = { ...stored, seq }
    this.entries = [...this.entries, kept]
    this.#channel?.postMessage('changed')
    // the screen first: what the hand sees next must not wait for what is sent
    clearTimeout(this.#timer)
    this.#timer = setTimeout(() => void this.flush(), SCREEN_FIRST_MS)
    return kept
  }

  /** Takes an entry back that was never tried; false when it may have reached the server already. */
  async takeBack(id: string): Promise<boolean> {
    const db = await database()
    const transaction = db.transaction('outbox', 'readwrite')
    const entry = await transaction.store.index('id').get(id)
    const free = entry !== undefined && !entry.tried
    if (free) {
      await transaction.store.delete(entry.seq!)
      await this.#dropPhotos(transaction.store, entry.id)
    }
    await transaction.done
    if (free) await this.#changed()
    return free
  }

  /** Puts a refused entry back in the queue, with another path or body where a person decided so; it gets a new id, as another body must. */
  async resolve(entry: OutboxEntry, change: { readonly path: string; readonly body: unknown; readonly id: string } | undefined): Promise<void> {
    const transaction = (await database()).transaction('outbox', 'readwrite')
    await transaction.store.put(plain({ ...entry, ...change, state: 'waiting', tried: false, conflict: undefined }))
    // what the server refused was never there: its photos belong to the reading that takes its place
    if (change && entry.conflict?.why !== 'unplaced') {
      for (const photo of await transaction.store.getAll()) if (photo.reading === entry.id) await transaction.store.put(plain(pointedAt(photo, change.id)))
    }
    await transaction.done
    await this.#changed()
    void this.flush()
  }

  /** Ends an entry that a person decided about (set aside with a reason, or placed by another request). */
  async close(entry: OutboxEntry): Promise<void> {
    const transaction = (await database()).transaction('outbox', 'readwrite')
    await transaction.store.delete(entry.seq!)
    await this.#dropPhotos(transaction.store, entry.id)
    await transaction.done
    await this.#changed()
  }

  /** Photos of a reading that never came to be go with it. */
  async #dropPhotos(store: OutboxStore, reading: string): Promise<void> {
    for (const photo of await store.getAll()) if (photo.reading === reading && photo.state !== 'sent') await store.delete(photo.seq!)
  }

  /** Lets go of sent entries that a fetched list has by now. */
  async forget(seen: (entry: OutboxEntry) => boolean): Promise<void> {
    const gone = this.entries.filter((entry) => entry.state === 'sent' && seen(entry))
    if (gone.length === 0) return
    const transaction = (await database()).transaction('outbox', 'readwrite')
    await Promise.all(gone.map((entry) => transaction.store.delete(entry.seq!)))
    await transaction.done
    await this.#reload()
  }

  /** Sends what waits, in order, until done or until the network or the sign-in is missing. */
  flush(): Promise<void> {
    this.#flushing ??= this.#flush().finally(() => (this.#flushing = undefined))
    return this.#flushing
  }

  async #flush(): Promise<void> {
    clearTimeout(this.#timer)
    const send = () => this.#sendAll()
    // another tab that is sending does it for us, and tells
    if (navigator.locks) await navigator.locks.request(CHANNEL, { ifAvailable: true }, async (lock) => (lock ? send() : undefined))
    else await send()
  }

  async #sendAll(): Promise<void> {
    for (;;) {
      const all = await this.#stored()
      const next = all.find((entry) => entry.state === 'waiting' && !isHeldBack(entry, all))
      if (!next) return
      if (!(await this.gate())) return this.#later()
      const goOn = await this.#sendOne(next)
      await this.#changed()
      if (goOn) this.#failures = 0
      else return this.#later()
    }
  }

  /** True when the next entry may go; false when it is better to wait. */
  async #sendOne(entry: OutboxEntry): Promise<boolean> {
    const db = await database()
    if (!entry.tried) await db.put('outbox', plain({ ...entry, tried: true }))
    const isPhoto = entry.kind === 'photo'
    const body = isPhoto ? await withPicture(entry) : entry.body
    const answer = await request<{ state?: string }>(entry.method, entry.path, body, { ...(isPhoto ? { timeoutMs: PHOTO_TIMEOUT_MS } : {}), headers: entry.method === 'POST' ? { 'idempotency-key': entry.id } : {} })
    if (answer.refusal === undefined) {
      if (answer.value?.state === 'unplaced') await db.put('outbox', plain({ ...entry, tried: true, state: 'conflict', conflict: { why: 'unplaced' }, sentAt: new Date().toISOString() }))
      // kept a while as sent, so that a screen does not lose it between the answer and the next fetch
      else if (entry.kind === 'suggestion') await db.delete('outbox', entry.seq!)
      else await db.put('outbox', plain({ ...entry, tried: true, state: 'sent', sentAt: new Date().toISOString() }))
      return true
    }
    const { refusal } = answer
    if (mustWait(refusal)) return false
    if (LATE_INSTEAD[entry.kind] === problemCode(refusal) && isLive(entry.body)) {
      // nothing was stored under this id, so it may be sent anew as late: a reading is kept until somebody places it, a photo stays with its reading
      await db.put('outbox', plain({ ...entry, tried: false, body: { ...(entry.body as object), offline: true } }))
      return true
    }
    const why = refusal.status === 403 ? 'rights' : problemCode(refusal) === 'session-closed' ? 'closed' : 'refused'
    await db.put('outbox', plain({ ...entry, tried: true, state: 'conflict', conflict: { why, problem: refusal } }))
    return true
  }

  #later(): void {
    this.#failures += 1
    const wait = Math.min(LONGEST_WAIT_MS, 1000 * 2 ** Math.min(6, this.#failures))
    this.#timer = setTimeout(() => void this.flush(), wait * (0.75 + Math.random() / 2))
  }

  async #changed(): Promise<void> {
    await this.#reload()
    this.sentCount += 1
    this.#channel?.postMessage('changed')
  }

  async #reload(): Promise<void> {
    this.entries = await this.#stored()
  }

  async #stored(): Promise<OutboxEntry[]> {
    return (await database()).getAll('outbox')
  }
}

/** No answer, not signed in just now, too much asked, or the server is ill: none of it is the entry's fault. */
function mustWait(refusal: Refusal): boolean {
  return refusal.status === 0 || refusal.status === 401 || refusal.status === 408 || refusal.status === 429 || refusal.status >= 500
}

function isLive(body: unknown): boolean {
  return typeof body === 'object' && body !== null && !('offline' in body)
}

/** The body as the server wants it; the code for pictures is fetched when there is one. */
async function withPicture(entry: OutboxEntry): Promise<unknown> {
  const { storedPictureText } = await import('./photo-store.ts')
  return { ...(entry.body as object), picture: (await storedPictureText(entry.id)) ?? '' }
}

/** IndexedDB takes no proxies. */
function plain(entry: OutboxEntry): OutboxEntry {
  return JSON.parse(JSON.stringify(entry)) as OutboxEntry
}

export const outbox = new Outbox()
