import { errorAt, type Refusal } from '#lib/ui/refusal.ts'
import type { Answer } from './answer.ts'

/**
 * One thing that can be done on a screen: whether it is under way, and why it was refused.
 * A second press while it is under way does nothing.
 *
 * @example const save = new Action(); // <Button busy={save.busy} onclick={() => save.run(() => jobs.book(body), (job) => goto(...))}>
 */
export class Action {
  busy = $state(false)
  refusal = $state.raw<Refusal | undefined>(undefined)

  async run<Value>(call: () => Promise<Answer<Value>>, done?: (value: Value, etag: string | undefined) => unknown): Promise<boolean> {
    if (this.busy) return false
    this.busy = true
    this.refusal = undefined
    try {
      const answered = await call()
      if (answered.refusal !== undefined) {
        this.refusal = answered.refusal
        return false
      }
      await done?.(answered.value, answered.etag)
      return true
    } finally {
      this.busy = false
    }
  }

  /** What the server expected at a field, by its JSON Pointer. */
  at(path: string): string | undefined {
    return errorAt(this.refusal, path)
  }

  /** True when the refusal names fields beyond those shown in place. */
  beyond(...shown: readonly string[]): boolean {
    if (!this.refusal) return false
    return !this.refusal.errors?.length || this.refusal.errors.some(({ path }) => !shown.includes(path))
  }
}
