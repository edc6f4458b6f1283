import type { Refusal } from '#lib/ui/refusal.ts'
import type { Answer } from './answer.ts'

interface Page<Item> {
  readonly items: readonly Item[]
  /** Absent where the whole list comes at once. */
  readonly next?: string | null
}

/** A paged list as state: what is there so far, whether there is more, and why not. */
export class Pages<Item> {
  items = $state.raw<readonly Item[] | undefined>(undefined)
  refusal = $state.raw<Refusal | undefined>(undefined)
  loading = $state(false)
  #next: string | null = $state(null)
  readonly #fetch: (after: string | undefined) => Promise<Answer<Page<Item>>>
  #round = 0
  #soon: ReturnType<typeof setTimeout> | undefined

  constructor(fetch: (after: string | undefined) => Promise<Answer<Page<Item>>>, options: { readonly later?: boolean } = {}) {
    this.#fetch = fetch
    if (!options.later) void this.again()
  }

  get there(): boolean {
    return this.items !== undefined
  }

  get hasMore(): boolean {
    return this.#next !== null
  }

  /** Reads the first page anew; an answer to an earlier question that comes late is dropped. */
  again = (): Promise<void> => this.#read(undefined)

  /** The same once no further key has been pressed for a moment. */
  soon = (): void => {
    clearTimeout(this.#soon)
    this.#soon = setTimeout(() => void this.again(), 250)
  }

  more = (): Promise<void> => (this.#next === null || this.loading ? Promise.resolve() : this.#read(this.#next))

  async #read(after: string | undefined): Promise<void> {
    const round = (this.#round += 1)
    this.loading = true
    const answered = await this.#fetch(after)
    if (round !== this.#round) return
    this.loading = false
    this.refusal = answered.refusal
    if (answered.refusal !== undefined) return
    const { items, next } = answered.value
    this.items = after === undefined ? items : [...(this.items ?? []), ...items]
    this.#next = next ?? null
  }
}
