import type { Garage, Quote, QuoteDraft, QuoteLineInput } from '@evenbore/contract'
import { Action } from '#lib/api/action.svelte.ts'
import { problemCode } from '#lib/api/answer.ts'
import { putDraft } from '#lib/api/quotes.ts'
import { Draft } from '#lib/ui/draft.svelte.ts'
import { draftsOf, lineInput, type LineDraft } from './line-draft.ts'

/** How long after the last key the draft goes to the server. */
const PAUSE_MS = 900

interface Typed {
  lines: LineDraft[]
  note: string
  /** True while the server does not have it yet. */
  unsaved: boolean
}

/**
 * A quote being written: kept on the server a moment after the last key, and on this device until it is there. Made while a component starts.
 */
export class Editing {
  readonly saving = new Action()
  readonly #job: string
  readonly #garage: Garage
  readonly #kept: Draft<Typed>
  /** The version of the server's draft that this one goes on from; undefined while there is none. */
  version = $state<number | undefined>(undefined)
  stale = $state(false)
  #timer: ReturnType<typeof setTimeout> | undefined

  constructor(job: string, quote: Quote, garage: Garage) {
    this.#job = job
    this.#garage = garage
    this.#kept = new Draft<Typed>(`quote.${job}`, { lines: [], note: '', unsaved: false })
    this.version = quote.draft?.version
    if (!this.#kept.now.unsaved) this.take(quote.draft)
  }

  get lines(): LineDraft[] {
    return this.#kept.now.lines
  }
  get note(): string {
    return this.#kept.now.note
  }
  set note(note: string) {
    this.#kept.now.note = note
    this.touched()
  }
  get unsaved(): boolean {
    return this.#kept.now.unsaved
  }

  /** Every line that can be read, as the API takes it. */
  readonly inputs: readonly QuoteLineInput[] = $derived.by(() => this.lines.flatMap((line) => lineInput(line, this.#garage.currency).input ?? []))
  readonly readable: boolean = $derived.by(() => this.inputs.length === this.lines.length)

  /** Puts the server's draft in place of what is here. */
  take(draft: QuoteDraft | null): void {
    this.#kept.now.lines = draft ? draftsOf(draft.lines, newLineId, this.#garage.currency) : []
    this.#kept.now.note = draft?.note ?? ''
    this.#kept.now.unsaved = false
    this.version = draft?.version
    this.stale = false
  }

  add(line: LineDraft): void {
    this.#kept.now.lines.push(line)
    this.touched()
  }

  remove(id: string): void {
    this.#kept.now.lines = this.lines.filter((line) => line.id !== id)
    this.touched()
  }

  /** Something was typed: keep it soon. */
  touched(): void {
    this.#kept.now.unsaved = true
    clearTimeout(this.#timer)
    this.#timer = setTimeout(() => void this.save(), PAUSE_MS)
  }

  /** Keeps the draft on the server now; false where it could not be. Lines that cannot be read wait here. */
  async save(): Promise<boolean> {
    clearTimeout(this.#timer)
    if (!this.readable) return false
    if (!this.unsaved && this.version !== undefined) return true
    const saved = await this.saving.run(
      () => putDraft(this.#job, this.version, { lines: [...this.inputs], note: this.note.trim() || null }),
      (draft) => {
        this.version = draft.version
        this.#kept.now.unsaved = false
      },
    )
    const code = problemCode(this.saving.refusal)
    if (code === 'stale' || code === 'conflict') this.stale = true
    return saved
  }

  /** The draft is gone: sent, or thrown away. */
  end(): void {
    clearTimeout(this.#timer)
    this.#kept.drop()
    this.version = undefined
  }
}

export function newLineId(): string {
  return crypto.randomUUID()
}
