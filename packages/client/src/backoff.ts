/** How patient a client is: how often it asks at most, and how long it waits between. */
export interface Patience {
  /** Times one call is sent at most, the first included. */
  readonly attempts: number
  /** Longest single wait in milliseconds; a server that asks for more is not waited for. */
  readonly longestWaitMs: number
}

export const PATIENCE: Patience = { attempts: 4, longestWaitMs: 8_000 }

const FIRST_WAIT_MS = 250

/**
 * Wait before another try: doubles each time, with up to half of it taken off at random so that many clients do not come back at once.
 * @param attempt tries made so far, from 1
 * @param random 0 (whole wait) to 1 (half of it)
 * @example backoffMs(3, 8000, 0) // 1000
 */
export function backoffMs(attempt: number, longestWaitMs: number, random: number): number {
  const whole = Math.min(longestWaitMs, FIRST_WAIT_MS * 2 ** (attempt - 1))
  return Math.round(whole * (1 - random / 2))
}

/**
 * Milliseconds that `Retry-After` (RFC 9110 section 10.2.3: seconds or a date) asks for, or undefined where it says nothing we can read.
 */
export function retryAfterMs(header: string | null, now: number): number | undefined {
  if (header === null) return undefined
  if (/^\d{1,9}$/.test(header.trim())) return Number(header) * 1000
  const date = Date.parse(header)
  return Number.isNaN(date) ? undefined : Math.max(0, date - now)
}

/** Waits; rejects at once when the signal says so. */
export function pause(ms: number, signal?: AbortSignal | null): Promise<void> {
  return new Promise((resolve, reject) => {
    if (signal?.aborted) return reject(signal.reason as Error)
    const stop = () => {
      clearTimeout(timer)
      reject(signal?.reason as Error)
    }
    const timer = setTimeout(() => {
      signal?.removeEventListener('abort', stop)
      resolve()
    }, ms)
    signal?.addEventListener('abort', stop, { once: true })
  })
}
