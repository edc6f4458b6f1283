import { numberFormat } from './kept-formats.ts'

/** Money in integer minor units, shown in its own currency: 81408 and EUR read "€814.08" or "814,08 €". Decimals follow the currency. */
export function formatMoney(minor: number, currency: string, locale: string): string {
  return numberFormat(locale, { style: 'currency', currency }).format(minor / 10 ** minorDigits(currency))
}

/** Money as a person types it into a field: 9550 and EUR read "95.50". */
export function typedMoney(minor: number, currency: string): string {
  return (minor / 10 ** minorDigits(currency)).toFixed(minorDigits(currency))
}

/** A typed amount into minor units of a currency, or undefined where it is none: "95", "95,50", "95.5". */
export function parseMoney(typed: string, currency: string): number | undefined {
  const digits = minorDigits(currency)
  const match = /^(\d{1,9})(?:[.,](\d*))?$/.exec(typed.normalize('NFKC').replaceAll(/\s/gu, ''))
  if (!match || (match[2]?.length ?? 0) > digits) return undefined
  return Number(match[1]) * 10 ** digits + Number((match[2] ?? '').padEnd(digits, '0') || '0')
}

/** Decimal places of a currency's minor unit: 2 for euro, 0 for yen. */
function minorDigits(currency: string): number {
  return numberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2
}
