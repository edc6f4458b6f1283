/** Runs a task while no other tab of this origin runs one under the same name; where the browser has no locks, just runs it. */
export function alone<T>(name: string, task: () => Promise<T>): Promise<T> {
  const locks = globalThis.navigator?.locks
  return locks ? locks.request(name, task) as Promise<T> : task()
}

const UNDER_WAY = 'evenbore.refreshing'
/** A renewal that a page began and did not see end (it was reloaded) has its answer within this long, or never. */
const SETTLED_MS = 1_500

/**
 * Runs a renewal of the sign-in alone. A refresh token works once, and a second use ends the sign-in: one that was under way when its page
 * was reloaded is waited for, so that its new cookie is there.
 */
export function renewAlone<T>(task: () => Promise<T>): Promise<T> {
  return alone('evenbore.refresh', async () => {
    const began = Number(mark() ?? 0)
    if (Date.now() - began < SETTLED_MS) await new Promise((done) => setTimeout(done, SETTLED_MS - (Date.now() - began)))
    mark(String(Date.now()))
    try {
      return await task()
    } finally {
      mark('')
    }
  })
}

/** Reads, sets or (by '') removes the mark; where storage is refused there is none. */
function mark(value?: string): string | null {
  try {
    if (value === undefined) return localStorage.getItem(UNDER_WAY)
    if (value === '') localStorage.removeItem(UNDER_WAY)
    else localStorage.setItem(UNDER_WAY, value)
  } catch {
    // refused storage
  }
  return null
}
