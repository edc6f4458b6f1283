import { tick } from 'svelte'

type Box = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement

/** A field as it stood before it was changed, and as it was left. */
interface Change {
  readonly was: string
  readonly now: string
}

/** Secrets, files and searches are nobody's half-written work. */
const NOT_KEPT = new Set(['password', 'file', 'search', 'submit', 'button', 'hidden'])

/**
 * What was changed in a form and not yet sent, kept on this device: `Draft` for forms that begin with what the record says.
 * After a reload a change is put back only where the field still says what it said before: somebody else's change is never written over.
 *
 * @example const draft = new FormDraft('bay.7'); // <form {@attach draft.attach}>; draft.drop() once sent
 */
export class FormDraft {
  readonly #key: string
  #changes: Record<string, Change>
  #before = new Map<string, string>()

  constructor(name: string) {
    this.#key = `evenbore.draft.${name}`
    this.#changes = this.#read()
  }

  /** Follows the fields inside an element, and puts back what was left in them. Fields that come later are found when they come. */
  attach = (form: HTMLElement): (() => void) => {
    const remember = ({ target }: Event) => isKept(target) && this.#remember(form, target)
    const keep = ({ target }: Event) => isKept(target) && this.#keep(form, target)
    form.addEventListener('focusin', remember)
    form.addEventListener('input', keep)
    form.addEventListener('change', keep)
    void this.#putBack(form)
    return () => {
      form.removeEventListener('focusin', remember)
      form.removeEventListener('input', keep)
      form.removeEventListener('change', keep)
    }
  }

  /** Forgets what was written: it is sent, or not wanted. */
  drop(): void {
    this.#changes = {}
    this.#before.clear()
    this.#write()
  }

  #remember(form: HTMLElement, box: Box): void {
    const name = nameOf(form, box)
    // a touch on one of a few choices changes the one that was chosen, which has no focus then
    for (const [other, value] of isChoice(box) ? boxes(form).filter(([, { name: group }]) => group === box.name).map(([called, each]) => [called, valueOf(each)] as const) : [[name, valueOf(box)] as const]) {
      if (!this.#before.has(other)) this.#before.set(other, this.#changes[other]?.was ?? value)
    }
  }

  #keep(form: HTMLElement, box: Box): void {
    const changed = isChoice(box) ? boxes(form).filter(([, { name }]) => name === box.name) : [[nameOf(form, box), box] as const]
    for (const [name, each] of changed) {
      const was = this.#before.get(name)
      const now = valueOf(each)
      const { [name]: _left, ...others } = this.#changes
      this.#changes = was === undefined || was === now ? others : { ...others, [name]: { was, now } }
    }
    this.#write()
  }

  async #putBack(form: HTMLElement): Promise<void> {
    const left = new Map(Object.entries(this.#changes))
    // a field put back may bring further fields: each round finds those
    for (let round = 0; round < 3 && left.size > 0; round += 1) {
      await tick()
      for (const [name, box] of boxes(form)) {
        const change = left.get(name)
        if (!change) continue
        left.delete(name)
        if (valueOf(box) === change.was) {
          // known before the field says that it changed: what is put back is kept on
          this.#before.set(name, change.was)
          put(box, change.now)
        } else {
          const { [name]: _overtaken, ...others } = this.#changes
          this.#changes = others
          this.#write()
        }
      }
    }
  }

  #read(): Record<string, Change> {
    try {
      return (JSON.parse(localStorage.getItem(this.#key) ?? '{}') as Record<string, Change>) ?? {}
    } catch {
      return {}
    }
  }

  #write(): void {
    try {
      if (Object.keys(this.#changes).length === 0) localStorage.removeItem(this.#key)
      else localStorage.setItem(this.#key, JSON.stringify(this.#changes))
    } catch {
      // refused storage: what is written lives as long as the page
    }
  }
}

function isKept(target: EventTarget | null): target is Box {
  return (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement) && !NOT_KEPT.has(target.type)
}

function isChoice(box: Box): box is HTMLInputElement {
  return box instanceof HTMLInputElement && box.type === 'radio'
}

/** The words that stand at a field name it: its id is made anew at every start. Of several with the same words the place tells them apart. */
function boxes(form: HTMLElement): (readonly [string, Box])[] {
  const seen = new Map<string, number>()
  return [...form.querySelectorAll('input, textarea, select')].filter(isKept).map((box) => {
    const words = [box.closest('fieldset')?.querySelector('legend')?.textContent, box.labels?.[0]?.textContent].filter(Boolean).join(': ').trim()
    const place = (seen.get(words) ?? 0) + 1
    seen.set(words, place)
    return [place === 1 ? words : `${words} ${place}`, box] as const
  })
}

function nameOf(form: HTMLElement, box: Box): string {
  return boxes(form).find(([, each]) => each === box)?.[0] ?? ''
}

function valueOf(box: Box): string {
  return box instanceof HTMLInputElement && (box.type === 'radio' || box.type === 'checkbox') ? String(box.checked) : box.value
}

/** As a hand would: what is bound to the field hears of it. */
function put(box: Box, value: string): void {
  if (box instanceof HTMLInputElement && (box.type === 'radio' || box.type === 'checkbox')) {
    if (String(box.checked) !== value && (box.type === 'checkbox' || value === 'true')) box.click()
    return
  }
  box.value = value
  box.dispatchEvent(new Event(box instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }))
}
