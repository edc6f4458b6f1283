import { numberFormat } from './kept-formats.ts'

/** Money in integer minor units, shown in its own currency: 81408 and EUR read "€814.08" or "814,08 €". Decimals follow the currency. */
export function formatMoney(minor: number, currency: string, locale: string): string {
  const format = numberFormat(locale, { style: 'currency', currency })
  return format.format(minor / 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2))
}

/** A typed amount into minor units of a currency, or undefined where it is none: "95", "95,50", "95.5". */
export function parseMoney(typed: string, currency: string): number | undefined {
  const digits = numberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2
  const match = /^(\d{1,9})(?:[.,](\d*))?$/.exec(typed.normalize('NFKC').replaceAll(/\s/gu, ''))
  if (!match || (match[2]?.length ?? 0) > digits) return undefined
  return Number(match[1]) * 10 ** digits + Number((match[2] ?? '').padEnd(digits, '0') || '0')
}
