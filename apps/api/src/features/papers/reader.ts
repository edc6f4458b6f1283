import { PASCALS_PER_UNIT, type Pressure, type PressureUnit, type VacuumPressure } from '@evenbore/contract'
import { de } from './words/de.ts'
import { en, type SheetWords } from './words/en.ts'
import { es } from './words/es.ts'

export type SheetLanguage = 'en' | 'de' | 'es'

/** Who reads a sheet: language, unit of pressure, and the zone of the garage. */
export type Reader = { readonly language: SheetLanguage; readonly unit: PressureUnit; readonly timeZone: string }

const WORDS: Readonly<Record<SheetLanguage, SheetWords>> = { en, de, es }
const LOCALES = { en: 'en-GB', de: 'de-DE', es: 'es-ES' } as const
const UNIT_NAMES: Readonly<Record<string, string>> = { 'kgf/cm2': 'kgf/cm²' }

/** Words and formats as the reader of a sheet has them. */
export type Here = ReturnType<typeof formatsOf>

/** The formats of one reader. */
export function formatsOf({ language, unit, timeZone }: Reader) {
  const locale = LOCALES[language]
  const number = (value: number, most = 0, least = 0) => new Intl.NumberFormat(locale, { maximumFractionDigits: most, minimumFractionDigits: least, useGrouping: value >= 10_000 }).format(value)
  return {
    words: WORDS[language],
    unit,
    number,
    /** "12 Aug 2026, 10:20". */
    when: (instant: string) => new Intl.DateTimeFormat(locale, { timeZone, day: 'numeric', month: 'short', year: 'numeric', hour: '2-digit', minute: '2-digit' }).format(new Date(instant)),
    day: (instant: Date) => new Intl.DateTimeFormat(locale, { timeZone, day: 'numeric', month: 'short', year: 'numeric' }).format(instant),
    date: (day: string) => new Intl.DateTimeFormat(locale, { timeZone: 'UTC', day: 'numeric', month: 'short', year: 'numeric' }).format(new Date(`${day}T00:00:00Z`)),
    money: (minor: number, currency: string) => {
      const format = new Intl.NumberFormat(locale, { style: 'currency', currency })
      return format.format(minor / 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2))
    },
    /** "54" of "54 in 100": never 0 or 100 for what is not certain. */
    inHundred: (probability: number) => (probability < 0.01 ? `<${number(1)}` : number(Math.min(99, Math.round(probability * 100)))),
    /** In the reader's unit, never with more digits than were entered. */
    pressure: (pressure: Pressure | VacuumPressure, as: string = unit) => `${figure(pressure, as, number)} ${UNIT_NAMES[as] ?? as}`,
    pascals: (pressure: Pressure | VacuumPressure) => pressure.value * PASCALS_PER_UNIT[pressure.unit],
  }
}

function figure(pressure: Pressure | VacuumPressure, unit: string, number: (value: number, most?: number, least?: number) => string): string {
  const decimals = String(pressure.value).split('.')[1]?.length ?? 0
  if (pressure.unit === unit) return number(pressure.value, decimals, decimals)
  const digits = Math.max(1, Math.abs(pressure.value).toFixed(decimals).replace('.', '').replace(/^0+/, '').length)
  const exact = (pressure.value * PASCALS_PER_UNIT[pressure.unit]) / PASCALS_PER_UNIT[unit as PressureUnit]
  const value = exact === 0 ? 0 : Number(exact.toPrecision(Math.min(15, digits)))
  const whole = value === 0 ? 1 : Math.floor(Math.log10(Math.abs(value))) + 1
  const places = Math.min(6, Math.max(0, digits - Math.max(whole, value < 1 ? whole : 1)))
  return number(value, places, places)
}

/** The language asked for first by Accept-Language (RFC 9110, 12.5.4) among ours; undefined where none of them is. */
export function preferredLanguage(header: string | undefined): SheetLanguage | undefined {
  const asked = (header ?? '').slice(0, 500).split(',').map((part) => {
    const [tag = '', ...parameters] = part.trim().toLowerCase().split(';')
    const weight = parameters.map((each) => /^\s*q=([\d.]+)\s*$/.exec(each)?.[1]).find((each) => each !== undefined)
    return { language: tag.trim().split('-')[0] ?? '', weight: weight === undefined ? 1 : Number(weight) }
  })
  const ours = asked.filter(({ language, weight }) => language in LOCALES && weight > 0).sort((a, b) => b.weight - a.weight)
  return ours[0]?.language as SheetLanguage | undefined
}
