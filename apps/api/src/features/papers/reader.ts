import { PASCALS_PER_UNIT, type Objection, type Pressure, type PressureUnit, type Reading, type VacuumPressure } from '@evenbore/contract'
import { de } from '@evenbore/words/de.ts'
import { sheet as sheetDe } from '@evenbore/words/de/sheet.ts'
import { en, type Words } from '@evenbore/words/en.ts'
import { sheet as sheetEn, type SheetWords } from '@evenbore/words/en/sheet.ts'
import { es } from '@evenbore/words/es.ts'
import { sheet as sheetEs } from '@evenbore/words/es/sheet.ts'
import { formatMoney } from '@evenbore/words/format/money.ts'
import { formatNumber, inHundred } from '@evenbore/words/format/number.ts'
import { formatPressure } from '@evenbore/words/format/pressure.ts'
import { formatClock, formatDate, formatDay } from '@evenbore/words/format/time.ts'
import { locales, type Language } from '@evenbore/words/languages.ts'
import { objectionWords } from '@evenbore/words/sentences/reasons.ts'

/** Who reads a sheet: language, unit of pressure, and the zone of the garage. */
export type SheetReader = { readonly language: Language; readonly unit: PressureUnit; readonly timeZone: string }

const WORDS: Readonly<Record<Language, Words & { readonly sheet: SheetWords }>> = { en: { ...en, sheet: sheetEn }, de: { ...de, sheet: sheetDe }, es: { ...es, sheet: sheetEs } }

/** Words and formats as the reader of a sheet has them. */
export type Here = ReturnType<typeof formatsOf>

/** The formats of one reader. */
export function formatsOf({ language, unit, timeZone }: SheetReader) {
  const locale = locales[language]
  const day = (instant: string | Date) => formatDay(instant, timeZone, locale)
  return {
    words: WORDS[language],
    unit,
    locale,
    number: (value: number, most = 0, least = 0) => formatNumber(value, locale, most, least),
    /** "12 Aug 2026, 10:20": on paper always with the year. */
    when: (instant: string) => `${day(instant)}, ${formatClock(instant, timeZone, locale)}`,
    day,
    date: (calendarDay: string) => formatDate(calendarDay, locale),
    money: (minor: number, currency: string) => formatMoney(minor, currency, locale),
    inHundred: (probability: number) => inHundred(probability, locale),
    pressure: (pressure: Pressure | VacuumPressure) => formatPressure(pressure, unit, locale),
    pascals: (pressure: Pressure | VacuumPressure) => pressure.value * PASCALS_PER_UNIT[pressure.unit],
  }
}

/** A reason not to compare or believe, and what to do about it, as one line. */
export function objectionLine(objection: Objection, judged: readonly Reading[], here: Here): string {
  const said = objectionWords(objection, judged, here)
  return `${said.says} ${said.do}`
}

/** The language asked for first by Accept-Language (RFC 9110, 12.5.4) among ours; undefined where none of them is. */
export function preferredLanguage(header: string | undefined): Language | undefined {
  const asked = (header ?? '').slice(0, 500).split(',').map((part) => {
    const [tag = '', ...parameters] = part.trim().toLowerCase().split(';')
    const weight = parameters.map((each) => /^\s*q=([\d.]+)\s*$/.exec(each)?.[1]).find((each) => each !== undefined)
    return { language: tag.trim().split('-')[0] ?? '', weight: weight === undefined ? 1 : Number(weight) }
  })
  const ours = asked.filter(({ language, weight }) => language in locales && weight > 0).sort((a, b) => b.weight - a.weight)
  return ours[0]?.language as Language | undefined
}
