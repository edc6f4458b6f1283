import { expect, test } from 'vitest'
import { dayIn, formatClock, formatDate, formatDistance, formatWhen } from './time.ts'

const now = new Date('2026-05-06T10:20:00Z')

test('a time is the garage\'s, not the device\'s', () => {
  expect(formatClock('2026-05-06T23:30:00Z', 'Europe/Lisbon', 'en-GB')).toBe('00:30')
  expect(dayIn('Europe/Lisbon', new Date('2026-05-06T23:30:00Z'))).toBe('2026-05-07')
})

test('today is said by the clock alone, other days with their date', () => {
  expect(formatWhen('2026-05-06T08:05:00Z', 'UTC', 'en-GB', now)).toBe('08:05')
  expect(formatWhen('2026-05-02T08:05:00Z', 'UTC', 'en-GB', now)).toBe('2 May, 08:05')
  expect(formatWhen('2025-05-02T08:05:00Z', 'UTC', 'en-GB', now)).toBe('2 May 2025, 08:05')
})

test('a due date stays the day that was written', () => {
  expect(formatDate('2026-05-20', 'en-GB')).toBe('20 May 2026')
})

test('a distance is said in one unit', () => {
  expect(formatDistance('2026-04-30T10:20:00Z', 'en-GB', now)).toBe('6 days ago')
  expect(formatDistance('2026-05-06T10:08:00Z', 'en-GB', now)).toBe('12 minutes ago')
})
