/** A page just opened is still busy with itself, and the hand that opened it goes on at once. */
const SETTLED_MS = 700
const PATIENCE_MS = 1_500

/** Does something when the page has been there a moment and has nothing better to do, within some two seconds. */
export function whenIdle(task: () => void): void {
  setTimeout(() => {
    if (typeof requestIdleCallback === 'function') requestIdleCallback(task, { timeout: PATIENCE_MS })
    else task()
  }, SETTLED_MS)
}
