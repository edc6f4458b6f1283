import { numberFormat } from './kept-formats.ts'

/** What a typed number turned out to be. */
export type ParsedNumber = { readonly value: number; readonly decimals: number; readonly error?: undefined } | { readonly error: 'bad-number' | 'two-marks' | 'negative'; readonly value?: undefined }

/**
 * Reads one number as people type it: `148`, `15.5`, `15,5`, full-width digits, spaces around.
 * One mark, comma or point, is the decimal mark; two of them are refused, because 1.020,5 and 1,020.5 mean different things to different people.
 *
 * Where the field's own unit stands after it, that is read over; any other unit is no number.
 *
 * @example parseNumber('15,5') // { value: 15.5, decimals: 1 }
 * @example parseNumber('84200 km', 'km') // { value: 84200, decimals: 0 }
 */
export function parseNumber(typed: string, unit?: string): ParsedNumber {
  const written = typed.normalize('NFKC').replaceAll(/\s/gu, '').replace('−', '-')
  const text = unit !== undefined && written.toLowerCase().endsWith(unit.toLowerCase()) ? written.slice(0, -unit.length) : written
  if (/^-/.test(text)) return { error: 'negative' }
  if (/^\d*[.,]\d*[.,][\d.,]*$/.test(text)) return { error: 'two-marks' }
  const match = /^(\d*)(?:[.,](\d*))?$/.exec(text)
  if (!match || (match[1] === '' && !match[2]) || text.length > 12) return { error: 'bad-number' }
  return { value: Number(`${match[1] || '0'}.${match[2] || '0'}`), decimals: match[2]?.length ?? 0 }
}

/** Decimal places with which a value was entered, as far as the number itself still knows. */
export function decimalsOf(value: number): number {
  const text = String(value)
  if (text.includes('e')) return 0
  return text.split('.')[1]?.length ?? 0
}

/** Digits a reader can rely on: 148 has three, 10.2 three, 0.95 two. Zeros before the first digit do not count. */
export function significantDigits(value: number): number {
  const digits = Math.abs(value).toFixed(decimalsOf(value)).replace('.', '').replace(/^0+/, '')
  return Math.max(1, digits.length)
}

/** A plain number with at most so many decimals, in the person's locale. */
export function formatNumber(value: number, locale: string, maximumFractionDigits = 0, minimumFractionDigits = 0): string {
  return numberFormat(locale, { maximumFractionDigits, minimumFractionDigits, useGrouping: value >= 10_000 }).format(value)
}

/** A probability as "54" of "54 in 100": never 0 or 100 for what is not certain. */
export function inHundred(probability: number, locale: string): string {
  const value = probability * 100
  if (value < 1) return `<${formatNumber(1, locale)}`
  if (value > 99) return formatNumber(99, locale)
  return formatNumber(Math.round(value), locale)
}

/** The sign in front, as decibans are written: +11.2, −2.1. */
export function formatSigned(value: number, locale: string, decimals = 1): string {
  return numberFormat(locale, { maximumFractionDigits: decimals, minimumFractionDigits: decimals, signDisplay: 'always' }).format(value)
}

/** Rounds to so many significant digits. */
export function roundTo(value: number, digits: number): number {
  return value === 0 ? 0 : Number(value.toPrecision(Math.max(1, Math.min(15, digits))))
}
