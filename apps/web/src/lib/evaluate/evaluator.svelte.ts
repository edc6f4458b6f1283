import type { Case, Evaluation } from '@evenbore/contract'
import type { Question, WorkerAnswer } from './worker-messages.ts'

/**
 * The diagnosis in a worker of this page: with or without a network, and never in the way of a key press.
 * `evaluation` is the newest known; while a newer case is being reckoned the old one stays, and `stale` is true.
 *
 * @example const evaluator = new Evaluator(); evaluator.ask(theCase); // evaluator.evaluation, evaluator.ranked
 */
export class Evaluator {
  evaluation = $state.raw<Evaluation | undefined>(undefined)
  /** The case that `evaluation` speaks of; reading numbers are indexes into its readings. */
  of = $state.raw<Case | undefined>(undefined)
  ranked = $state(false)
  stale = $state(false)
  failed = $state<string | undefined>(undefined)
  #worker: Worker | undefined
  #asked = 0
  /** The case asked about last, as text. */
  #last: string | undefined
  #cases = new Map<number, Case>()

  /** Asks about a case; undefined means that there is nothing to reckon. */
  ask(value: Case | undefined): void {
    const text = value && JSON.stringify(value)
    // sessions fetched anew, or one page after the other, ask about the same numbers
    if (text !== undefined && text === this.#last) return
    this.#last = text
    this.#asked += 1
    if (!value) {
      this.evaluation = undefined
      this.of = undefined
      this.stale = false
      return
    }
    this.stale = true
    this.#cases.set(this.#asked, value)
    this.#start().postMessage({ id: this.#asked, case: $state.snapshot(value) as Case } satisfies Question)
  }

  /** Starts the worker and lets it reckon a case nobody waits for, so that the first real answer comes as fast as the later ones. */
  warm(value: Case): void {
    if (this.#asked === 0) this.#start().postMessage({ id: 0, case: $state.snapshot(value) as Case } satisfies Question)
  }

  /** Ends the worker with its page. */
  stop(): void {
    this.#worker?.terminate()
    this.#worker = undefined
    this.#last = undefined
  }

  #start(): Worker {
    if (this.#worker) return this.#worker
    this.#worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'evenbore-diagnosis' })
    this.#worker.onmessage = ({ data }: MessageEvent<WorkerAnswer>) => this.#hear(data)
    this.#worker.onerror = (event) => {
      this.failed = event.message || 'worker'
      this.stale = false
    }
    return this.#worker
  }

  #hear(answer: WorkerAnswer): void {
    if (answer.id !== this.#asked) {
      this.#cases.delete(answer.id)
      return
    }
    this.stale = false
    if (answer.failed !== undefined) {
      this.failed = answer.failed
      return
    }
    this.failed = undefined
    this.evaluation = answer.evaluation
    this.of = this.#cases.get(answer.id)
    this.ranked = answer.ranked
  }
}
