import type { Refusal } from '#lib/ui/refusal.ts'
import type { Answer } from './answer.ts'

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
  readonly #fetch: () => Promise<Answer<Value>>
  #wanted = 0
  #running: Promise<void> | undefined

  constructor(fetch: () => Promise<Answer<Value>>, options: { readonly later?: boolean } = {}) {
    this.#fetch = fetch
    if (!options.later) void this.again()
  }

  /** Fetches anew. Calls that come while one runs are gathered into one more fetch after it. */
  again = async (): Promise<void> => {
    this.#wanted += 1
    this.#running ??= this.#run().finally(() => {
      this.#running = undefined
    })
    await this.#running
  }

  /** Puts in what an action answered, without asking again. */
  set(value: Value, etag?: string): void {
    this.value = value
    this.etag = etag
    this.refusal = undefined
  }

  async #run(): Promise<void> {
    this.loading = true
    while (this.#wanted > 0) {
      this.#wanted = 0
      const answered = await this.#fetch()
      if (answered.refusal === undefined) this.set(answered.value, answered.etag)
      else if (this.value === undefined || answered.refusal.status !== 0) this.refusal = answered.refusal
    }
    this.loading = false
  }
}
