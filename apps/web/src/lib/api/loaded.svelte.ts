import type { Refusal } from '#lib/ui/refusal.ts'
import type { Answer } from './answer.ts'
import { gathered } from './gathered.ts'
import { keptParts } from './kept-parts.ts'

/**
 * Something fetched for a screen, as state: nothing yet, a value, or why not. A second fetch keeps the value until the new one is there,
 * so that a live event never empties a screen.
 *
 * @example const job = new Loaded(() => jobs.read(id)); // {#if job.value} ... job.again()
 */
export class Loaded<Value> {
  value = $state.raw<Value | undefined>(undefined)
  etag = $state.raw<string | undefined>(undefined)
  refusal = $state.raw<Refusal | undefined>(undefined)
  loading = $state(false)
  /** Fetches anew. Calls that come while one runs are gathered into one more fetch after it. */
  readonly again: () => Promise<void>

  constructor(fetch: () => Promise<Answer<Value>>, options: { readonly later?: boolean } = {}) {
    this.again = gathered(() => this.#run(fetch))
    if (!options.later) void this.again()
  }

  get there(): boolean {
    return this.value !== undefined
  }

  /** Puts in what an action answered, without asking again. */
  set(value: Value, etag?: string): void {
    this.value = keptParts(this.value, value)
    this.etag = etag
    this.refusal = undefined
  }

  /** Forgets what was fetched: something else is spoken of now, or nothing. */
  leave(): void {
    this.value = undefined
    this.etag = undefined
    this.refusal = undefined
  }

  async #run(fetch: () => Promise<Answer<Value>>): Promise<void> {
    this.loading = true
    const answered = await fetch()
    if (answered.refusal === undefined) this.set(answered.value, answered.etag)
    else if (this.value === undefined || answered.refusal.status !== 0) this.refusal = answered.refusal
    this.loading = false
  }
}
