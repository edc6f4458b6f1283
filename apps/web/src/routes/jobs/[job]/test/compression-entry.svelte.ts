import type { CompressionReading, EnteredReading, Pressure, PressureUnit, StoredReading } from '@evenbore/contract'
import { nextUnread, readingOrder } from '#lib/evaluate/banks.ts'
import { parsePressure, type ParsedPressure } from '@evenbore/words/format/pressure.ts'
import { press, type PadKey } from '#lib/keypad/typed.ts'
import { getDraft, putDraft } from '#lib/offline/draft-store.ts'
import type { Bench } from './bench.svelte.ts'
import { compressionKinds, type CompressionKind } from './test-kinds.ts'

/** What is being typed: the value after the last stroke, that of the first, or the peak of each in turn. */
export type EntryMode = 'final' | 'first' | 'each'

interface Draft {
  readonly cylinder: number | undefined
  readonly typed: string
  readonly mode: EntryMode
  readonly first: Pressure | undefined
  readonly strokes: readonly Pressure[]
  readonly counted: number | undefined
}

const NOTHING: Draft = { cylinder: undefined, typed: '', mode: 'final', first: undefined, strokes: [], counted: undefined }

/** The state of the number-pad screen: which cylinder, what is typed, what was kept. Survives a killed tab at every key. */
export class CompressionEntry {
  readonly #bench: Bench
  readonly kind: CompressionKind
  readonly unit: () => PressureUnit
  order = $state<'firing' | 'bank'>('firing')
  again = $state(false)
  error = $state<Exclude<ParsedPressure['error'], undefined> | undefined>(undefined)
  errorUnit = $state('')
  #draft = $state.raw<Draft>(NOTHING)
  #last = $state.raw<{ id: string; cylinder: number; at: number } | undefined>(undefined)

  /** Current readings of this kind in the open session, the latest of each cylinder. */
  readonly readings = $derived.by(() => {
    const flags = compressionKinds[this.kind]
    const all = (this.#bench.session ? this.#bench.readings : []).filter(({ reading }) => reading !== null && isKind(reading, flags))
    return new Map(all.map((stored) => [(stored.reading as CompressionReading).cylinder, stored]))
  })
  readonly cylinders = $derived.by(() => (this.#bench.job ? readingOrder(this.#bench.job.engineRecord.specification, this.order) : []))
  /** Cylinders whose reading is on its way into the store of this tablet: read already, for the hand. */
  #storing = $state.raw<readonly number[]>([])
  readonly #read = $derived(new Set([...this.readings.keys(), ...this.#storing]))
  readonly cylinder = $derived(this.#draft.cylinder ?? nextUnread(this.cylinders, this.#read, undefined) ?? this.cylinders[0] ?? 1)
  /** The cylinder after this one; undefined when this value ends the test. */
  readonly next = $derived.by(() => {
    const next = nextUnread(this.cylinders, new Set([...this.#read, this.cylinder]), this.cylinder)
    if (next !== undefined) return next
    const first = this.cylinders[0]
    return this.again && first !== undefined && this.cylinder !== first ? first : undefined
  })
  readonly typed = $derived(this.#draft.typed)
  readonly mode = $derived(this.#draft.mode)
  readonly first = $derived(this.#draft.first)
  readonly strokes = $derived(this.#draft.strokes)
  readonly strokeCount = $derived.by(() => this.#draft.counted ?? (this.#draft.strokes.length > 0 ? this.#draft.strokes.length : this.#bench.session?.conditions.strokes))
  readonly canUndo = $derived(this.#last !== undefined || this.typed !== '')

  constructor(bench: Bench, kind: CompressionKind, unit: () => PressureUnit) {
    this.#bench = bench
    this.kind = kind
    this.unit = unit
  }

  get #key(): string {
    return `entry:${this.#bench.jobId}:${this.kind}`
  }

  /** Brings back what was half-entered when the tab was last closed. */
  async restore(): Promise<void> {
    this.order = (await getDraft<'firing' | 'bank'>('reading-order')) ?? 'firing'
    const kept = await getDraft<Draft>(this.#key)
    if (kept && this.#draft === NOTHING) this.#draft = { ...NOTHING, ...kept }
  }

  chooseOrder(order: 'firing' | 'bank'): void {
    this.order = order
    putDraft('reading-order', order)
  }

  key(key: PadKey, mark: '.' | ','): void {
    this.error = undefined
    this.#set({ typed: press(this.typed, key, mark) })
  }

  type(typed: string): void {
    this.error = undefined
    this.#set({ typed: typed.slice(0, 40) })
  }

  /** Another cylinder by a touch on the plan; what was typed stays, since a wrong touch must not cost digits. */
  pick(cylinder: number): void {
    this.error = undefined
    this.#set({ cylinder })
  }

  setMode(mode: EntryMode): void {
    this.error = undefined
    this.#set({ mode, typed: '' })
  }

  count(strokes: number): void {
    this.#set({ counted: strokes > 0 ? strokes : undefined })
  }

  /** Takes the typed value for the first stroke, or as one more peak. True when it was a pressure. */
  takePart(): boolean {
    const pressure = this.#parsed()
    if (!pressure) return false
    if (this.mode === 'first') this.#set({ first: pressure, mode: 'final', typed: '' })
    else this.#set({ strokes: [...this.strokes, pressure], typed: '' })
    return true
  }

  /**
   * Keeps the reading and moves on: at once, since a quick hand types the next value while this one is being stored. Resolves, once it is
   * stored, to what to show next, or undefined where the value is no pressure. What could not be stored stands in the line again.
   */
  async keep(says: (cylinder: number, pressure: Pressure) => string): Promise<'next' | 'done' | undefined> {
    const strokes = this.mode === 'each' ? this.#withTyped() : []
    const pressure = this.mode === 'each' ? strokes.at(-1) : this.#parsed()
    if (!pressure) return undefined
    const { cylinder, next } = this
    const before = this.#draft
    const { counted, first } = before
    const reading: EnteredReading = {
      test: 'compression',
      cylinder,
      ...compressionKinds[this.kind],
      pressure,
      ...(first && strokes.length === 0 ? { firstStroke: first } : {}),
      ...(strokes.length > 1 ? { strokes: [...strokes] } : {}),
      ...(strokes.length < 2 && counted !== undefined ? { strokeCount: counted } : {}),
      seq: this.#bench.readings.length + this.#storing.length + 1,
    }
    if (next !== undefined && next === this.cylinders[0] && this.#read.has(next)) this.again = false
    this.#storing = [...this.#storing, cylinder]
    const moved: Draft = { ...NOTHING, cylinder: next, mode: this.mode === 'each' ? 'each' : 'final' }
    this.#draft = moved
    let id: string | undefined
    try {
      id = await this.#bench.record(reading, says(cylinder, pressure))
    } finally {
      this.#storing = this.#storing.toSpliced(this.#storing.indexOf(cylinder), 1)
      if (id === undefined) this.#draft = before
    }
    if (!id) return undefined
    this.#last = { id, cylinder, at: Date.now() }
    if (this.#draft === moved) putDraft(this.#key, next === undefined ? undefined : moved)
    return next === undefined ? 'done' : 'next'
  }

  /** Takes back what is typed, else the value kept last; that goes back into the line to be mended. Answers the cylinder taken back. */
  async undo(reason: string, says: (cylinder: number) => string): Promise<number | undefined> {
    if (this.typed !== '' || this.strokes.length > 0 || this.first) {
      this.#set({ typed: '', strokes: [], first: undefined })
      return undefined
    }
    const last = this.#last
    const stored = last && this.#bench.readings.find(({ id }) => id === last.id)
    this.#last = undefined
    if (!stored) return undefined
    await this.#bench.withdraw(stored, reason, says(last.cylinder))
    const value = (stored.reading as CompressionReading).pressure.value
    this.#draft = { ...NOTHING, cylinder: last.cylinder, typed: String(value) }
    putDraft(this.#key, this.#draft)
    return last.cylinder
  }

  /** Readings that can be moved to another cylinder. */
  get movable(): readonly StoredReading[] {
    return [...this.readings.values()]
  }

  #withTyped(): readonly Pressure[] {
    if (this.typed === '') return this.strokes
    const pressure = this.#parsed()
    return pressure ? [...this.strokes, pressure] : []
  }

  #parsed(): Pressure | undefined {
    const parsed = parsePressure(this.typed, this.unit())
    this.error = parsed.error
    this.errorUnit = parsed.error === 'bad-unit' ? (parsed.unit ?? '') : ''
    return parsed.pressure
  }

  #set(change: Partial<Draft>): void {
    this.#draft = { ...this.#draft, cylinder: this.cylinder, ...change }
    putDraft(this.#key, this.#draft)
  }
}

function isKind(reading: EnteredReading, flags: { readonly wet?: boolean; readonly running?: boolean; readonly snap?: boolean }): boolean {
  return reading.test === 'compression' && (reading.wet ?? false) === (flags.wet ?? false) && (reading.running ?? false) === (flags.running ?? false) && (reading.snap ?? false) === (flags.snap ?? false)
}
