import { dateFormat } from './kept-formats.ts'

/** Times are shown in the garage's zone wherever the device stands; the wire is UTC. */

const MINUTE = 60_000

/** The day of an instant in a zone, as YYYY-MM-DD. */
export function dayIn(zone: string, instant: Date): string {
  return dateFormat('en-CA', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(instant)
}

/** "10:20". */
export function formatClock(instant: string | Date, zone: string, locale: string): string {
  return dateFormat(locale, { timeZone: zone, hour: '2-digit', minute: '2-digit' }).format(new Date(instant))
}

/** "6 May 2026". */
export function formatDay(instant: string | Date, zone: string, locale: string): string {
  return dateFormat(locale, { timeZone: zone, day: 'numeric', month: 'short', year: 'numeric' }).format(new Date(instant))
}

/** A calendar day that has no hour (a due date), as written: "20 May 2026". */
export function formatDate(day: string, locale: string): string {
  return dateFormat(locale, { timeZone: 'UTC', day: 'numeric', month: 'short', year: 'numeric' }).format(new Date(`${day}T00:00:00Z`))
}

/** As short as the distance allows: today only the clock, this year the day, else with the year. */
export function formatWhen(instant: string | Date, zone: string, locale: string, now: Date): string {
  const at = new Date(instant)
  if (dayIn(zone, at) === dayIn(zone, now)) return formatClock(at, zone, locale)
  const sameYear = dayIn(zone, at).slice(0, 4) === dayIn(zone, now).slice(0, 4)
  const day = dateFormat(locale, { timeZone: zone, day: 'numeric', month: 'short', ...(sameYear ? {} : { year: 'numeric' }) }).format(at)
  return `${day}, ${formatClock(at, zone, locale)}`
}

/** "in 3 days", "6 days ago", "12 minutes ago": the distance in one unit. */
export function formatDistance(instant: string | Date, locale: string, now: Date): string {
  const away = new Date(instant).getTime() - now.getTime()
  const format = new Intl.RelativeTimeFormat(locale, { numeric: 'auto' })
  const size = Math.abs(away)
  if (size < 60 * MINUTE) return format.format(Math.round(away / MINUTE), 'minute')
  if (size < 24 * 60 * MINUTE) return format.format(Math.round(away / (60 * MINUTE)), 'hour')
  return format.format(Math.round(away / (24 * 60 * MINUTE)), 'day')
}
