import type { Refusal } from '#lib/ui/refusal.ts'
import type { Answer } from './answer.ts'

/** No question while keys still come. */
const PAUSE_MS = 200

/**
 * What is known that fits what is being typed: asked once the keys pause, and only the answer to the newest text counts.
 *
 * @example const offered = new Offered((q) => listCustomers(garage, { q, limit: 4 }), 3); // oninput={() => offered.look(name)}
 */
export class Offered<Item> {
  /** Nothing was asked yet, or the text is too short: undefined. */
  items = $state.raw<readonly Item[] | undefined>(undefined)
  refusal = $state.raw<Refusal | undefined>(undefined)
  readonly #fetch: (q: string) => Promise<Answer<{ readonly items: readonly Item[] }>>
  readonly #fromLength: number
  #q = ''
  #timer: ReturnType<typeof setTimeout> | undefined

  constructor(fetch: (q: string) => Promise<Answer<{ readonly items: readonly Item[] }>>, fromLength = 2) {
    this.#fetch = fetch
    this.#fromLength = fromLength
  }

  look(typed: string): void {
    this.#q = typed.trim()
    clearTimeout(this.#timer)
    if (this.#q.length < this.#fromLength) this.drop()
    else this.#timer = setTimeout(() => void this.again(), PAUSE_MS)
  }

  again = async (): Promise<void> => {
    const q = this.#q
    const answered = await this.#fetch(q)
    if (q !== this.#q) return
    this.refusal = answered.refusal
    this.items = answered.value?.items
  }

  /** One was taken, or another question is asked: nothing is offered any more. */
  drop(): void {
    clearTimeout(this.#timer)
    this.#q = ''
    this.items = undefined
    this.refusal = undefined
  }
}
