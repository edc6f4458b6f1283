import { expect } from 'vitest'

/** How long a browser is waited for: two cores may be busy with a dozen other tests. */
export const PATIENCE_MS = 60_000

/** Asks until it is so. */
export const soon = <Value>(ask: () => Value | Promise<Value>) => expect.poll(ask, { timeout: PATIENCE_MS, interval: 100 })
