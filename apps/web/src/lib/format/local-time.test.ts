import { expect, test } from 'vitest'
import { instantFrom, localFrom } from './local-time.ts'

test('a time typed at the counter is the garage’s, not the device’s', () => {
  expect(instantFrom('2026-05-06T10:20', 'Europe/Lisbon')).toBe('2026-05-06T09:20:00.000Z')
  expect(instantFrom('2026-01-06T10:20', 'Europe/Lisbon')).toBe('2026-01-06T10:20:00.000Z')
  expect(instantFrom('2026-05-06T10:20', 'Asia/Kathmandu')).toBe('2026-05-06T04:35:00.000Z')
  expect(localFrom('2026-05-06T09:20:00.000Z', 'Europe/Lisbon')).toBe('2026-05-06T10:20')
})

test('what was typed comes back as typed, all through the days when clocks change', () => {
  for (const zone of ['Europe/Lisbon', 'Europe/Berlin', 'America/New_York', 'UTC']) {
    for (const day of ['2026-03-08', '2026-03-28', '2026-03-29', '2026-10-24', '2026-10-25', '2026-11-01']) {
      for (const clock of ['00:00', '00:30', '03:30', '12:00', '23:59']) {
        expect(localFrom(instantFrom(`${day}T${clock}`, zone)!, zone)).toBe(`${day}T${clock}`)
      }
    }
  }
})

test('an hour that the clock skips is read as the hour after; one that comes twice as the first', () => {
  expect(instantFrom('2026-03-29T02:30', 'Europe/Berlin')).toBe('2026-03-29T01:30:00.000Z')
  expect(instantFrom('2026-10-25T02:30', 'Europe/Berlin')).toBe('2026-10-25T00:30:00.000Z')
})

test('what is no time is none', () => {
  for (const typed of ['', 'soon', '2026-05-06', '10:20']) expect(instantFrom(typed, 'UTC')).toBeUndefined()
})
