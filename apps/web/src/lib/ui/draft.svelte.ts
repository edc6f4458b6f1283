/**
 * A form's half-written content, kept on this device until it is sent: survives reload, back button and a locked screen.
 * Storage that refuses (full, private window) costs only the survival. Made while a component starts: its effect ends with the component.
 *
 * @example const draft = new Draft('book-in', { plate: '', complaint: '' }); // bind:value={draft.now.plate}; draft.drop() once sent
 */
export class Draft<Content extends object> {
  now: Content
  readonly #key: string
  readonly #empty: Content
  /** True when something was found from before. */
  readonly found: boolean

  constructor(name: string, empty: Content) {
    this.#key = `evenbore.draft.${name}`
    this.#empty = empty
    const stored = this.#read()
    this.found = stored !== undefined
    const content = $state<Content>({ ...structuredClone(empty), ...stored })
    this.now = content
    $effect(() => {
      const text = JSON.stringify(this.now)
      try {
        if (text === JSON.stringify(this.#empty)) localStorage.removeItem(this.#key)
        else localStorage.setItem(this.#key, text)
      } catch {
        // refused storage: the draft lives as long as the page
      }
    })
  }

  /** Forgets what was written, here and in storage. */
  drop(): void {
    Object.assign(this.now, structuredClone(this.#empty))
    try {
      localStorage.removeItem(this.#key)
    } catch {
      // nothing was stored then
    }
  }

  #read(): Partial<Content> | undefined {
    try {
      const value: unknown = JSON.parse(localStorage.getItem(this.#key) ?? 'null')
      return typeof value === 'object' && value !== null ? (value as Partial<Content>) : undefined
    } catch {
      return undefined
    }
  }
}
