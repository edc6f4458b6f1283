import { dateFormat } from '@evenbore/words/format/kept-formats.ts'

/** Between the times a person types (in the garage's zone, wherever the device stands) and the instants that go on the wire. */

/** Minutes that a zone is ahead of UTC at an instant. */
function offsetMinutes(zone: string, instant: number): number {
  const parts = dateFormat('en-US', { timeZone: zone, hourCycle: 'h23', year: 'numeric', month: 'numeric', day: 'numeric', hour: 'numeric', minute: 'numeric', second: 'numeric' }).formatToParts(new Date(instant))
  const at = (type: string) => Number(parts.find((part) => part.type === type)?.value)
  const shown = Date.UTC(at('year'), at('month') - 1, at('day'), at('hour'), at('minute'), at('second'))
  return Math.round((shown - Math.floor(instant / 1000) * 1000) / 60_000)
}

/**
 * The instant of a local date and time `2026-05-06T10:20`, or undefined where it is none.
 * A time that the clock skips in spring is read as the hour after; one that comes twice in autumn as the first.
 *
 * @example instantFrom('2026-05-06T10:20', 'Europe/Lisbon') // '2026-05-06T09:20:00.000Z'
 */
export function instantFrom(local: string, zone: string): string | undefined {
  const match = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})/.exec(local)
  if (!match) return undefined
  const [year, month, day, hour, minute] = match.slice(1).map(Number) as [number, number, number, number, number]
  const asUtc = Date.UTC(year, month - 1, day, hour, minute)
  if (Number.isNaN(asUtc)) return undefined
  // the offset before and after agree except near a change of clocks; the larger one is the earlier instant
  const before = offsetMinutes(zone, asUtc - 86_400_000)
  const after = offsetMinutes(zone, asUtc + 86_400_000)
  const candidates = [before, after].map((offset) => asUtc - offset * 60_000).sort((a, b) => a - b)
  const fits = candidates.find((instant) => asUtc - offsetMinutes(zone, instant) * 60_000 === instant)
  return new Date(fits ?? asUtc - before * 60_000).toISOString()
}

/** What stands in a date and time field for an instant: `2026-05-06T10:20`. */
export function localFrom(instant: string | Date, zone: string): string {
  const at = new Date(instant).getTime()
  return new Date(at + offsetMinutes(zone, at) * 60_000).toISOString().slice(0, 16)
}
