import { expect, test } from 'vitest'
import { backoffMs, retryAfterMs } from './backoff.ts'

test('waits double, up to the longest, less at most half by chance', () => {
  expect([1, 2, 3, 4, 9].map((attempt) => backoffMs(attempt, 8000, 0))).toEqual([250, 500, 1000, 2000, 8000])
  expect(backoffMs(3, 8000, 1)).toBe(500)
})

test('Retry-After is read as seconds or as a date, and nothing else', () => {
  const now = Date.parse('2026-05-06T10:00:00Z')
  expect(retryAfterMs('3', now)).toBe(3000)
  expect(retryAfterMs('Wed, 06 May 2026 10:00:05 GMT', now)).toBe(5000)
  expect(retryAfterMs('Wed, 06 May 2026 09:00:00 GMT', now)).toBe(0)
  expect(retryAfterMs('soon', now)).toBeUndefined()
  expect(retryAfterMs(null, now)).toBeUndefined()
})
