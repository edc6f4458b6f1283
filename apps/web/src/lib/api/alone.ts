/** Runs a task while no other tab of this origin runs one under the same name; where the browser has no locks, just runs it. */
export function alone<T>(name: string, task: () => Promise<T>): Promise<T> {
  const locks = globalThis.navigator?.locks
  return locks ? locks.request(name, task) as Promise<T> : task()
}

const UNDER_WAY = 'evenbore.refreshing'
const LEAVING = 'evenbore.leaving'
/** A renewal that a page began and did not see end (it was reloaded) has its answer within this long, or never. */
const SETTLED_MS = 1_500

/**
 * Runs a renewal of the sign-in alone. A refresh token works once, and a second use ends the sign-in: one that was under way when its page
 * was reloaded is waited for, so that its new cookie is there.
 */
export function renewAlone<T>(task: () => Promise<T>): Promise<T> {
  return alone('evenbore.refresh', async () => {
    const began = Number(mark(UNDER_WAY) ?? 0)
    if (Date.now() - began < SETTLED_MS) await new Promise((done) => setTimeout(done, SETTLED_MS - (Date.now() - began)))
    setMark(UNDER_WAY, String(Date.now()))
    try {
      return await task()
    } finally {
      setMark(UNDER_WAY, undefined)
    }
  })
}

/** A sign-out that the server has not heard of, remembered over reloads. */
export const leaving = {
  get: () => mark(LEAVING) !== null,
  set: (now: boolean) => setMark(LEAVING, now ? '1' : undefined),
}

/** Marks live in the device's storage; where that is refused there are none. */
function mark(name: string): string | null {
  try {
    return localStorage.getItem(name)
  } catch {
    return null
  }
}

function setMark(name: string, value: string | undefined): void {
  try {
    if (value === undefined) localStorage.removeItem(name)
    else localStorage.setItem(name, value)
  } catch {
    // refused storage
  }
}
