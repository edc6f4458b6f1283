const PATIENCE_MS = 2_000

/** Does something when the page has nothing better to do, within two seconds; where the browser cannot tell, after one. */
export function whenIdle(task: () => void): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(task, { timeout: PATIENCE_MS })
  else setTimeout(task, PATIENCE_MS / 2)
}
