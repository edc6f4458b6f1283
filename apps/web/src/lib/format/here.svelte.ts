import { deviceSettings } from './device-settings.svelte.ts'
import { formatMoney } from '@evenbore/words/format/money.ts'
import { formatNumber, inHundred } from '@evenbore/words/format/number.ts'
import { formatDate, formatDay, formatDistance, formatWhen } from '@evenbore/words/format/time.ts'

/** The clock of this screen, as state: moves twice a minute, so that "since" and "today" stay true on a page left open. */
class Clock {
  now = $state.raw(new Date())
  constructor() {
    if (typeof window !== 'undefined') setInterval(() => (this.now = new Date()), 30_000)
  }
}
export const clock = new Clock()

/** Formats as this person, on this device, reads: locale and zone of the settings. State, so a changed language redraws. */
export const here = {
  /** Today only the clock, this year the day, else with the year. */
  when: (instant: string | Date) => formatWhen(instant, deviceSettings.now.timeZone, deviceSettings.now.locale, clock.now),
  day: (instant: string | Date) => formatDay(instant, deviceSettings.now.timeZone, deviceSettings.now.locale),
  /** A calendar day without an hour. */
  date: (day: string) => formatDate(day, deviceSettings.now.locale),
  distance: (instant: string | Date) => formatDistance(instant, deviceSettings.now.locale, clock.now),
  money: (minor: number, currency: string) => formatMoney(minor, currency, deviceSettings.now.locale),
  number: (value: number, most = 0, least = 0) => formatNumber(value, deviceSettings.now.locale, most, least),
  /** Hundredths of a percent, as the percent that people say: 2000 reads "20". */
  percent: (basisPoints: number) => formatNumber(basisPoints / 100, deviceSettings.now.locale, 2),
  inHundred: (probability: number) => inHundred(probability, deviceSettings.now.locale),
}
