import { expect } from 'vitest'

/** Asks until it is so: two cores may be busy with a dozen other tests. */
export const soon = <Value>(ask: () => Value | Promise<Value>) => expect.poll(ask, { timeout: 60_000, interval: 100 })
