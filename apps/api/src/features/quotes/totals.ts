import type { QuoteLine, QuoteLineInput, Totals } from '@evenbore/contract'
import { add, dinero, halfEven, multiply, toSnapshot, transformScale, type Dinero } from 'dinero.js'
import * as currencies from 'dinero.js/currencies'

/** How a garage writes prices. */
export type Pricing = { readonly currency: string; readonly pricesIncludeTax: boolean }

/** The most that a quote can come to, in minor units: what a column holds, and far beyond any engine. */
export const MOST_MINOR = 2_000_000_000
const QUANTITY_DECIMALS = 3
const BASIS_POINT_DECIMALS = 4

/** A line with its amount: quantity x rate, rounded half-even to the minor unit. */
export function pricedLine(line: QuoteLineInput, currency: string): QuoteLine {
  // Quantities have at most three decimals, so this whole number is exact.
  const thousandths = Math.round(line.quantity * 10 ** QUANTITY_DECIMALS)
  const amount = multiply(money(line.rateMinor, currency), { amount: thousandths, scale: QUANTITY_DECIMALS })
  return { ...line, unit: line.kind === 'labour' ? 'hour' : 'piece', amountMinor: minor(amount) }
}

/**
 * Sum and tax of priced lines: tax for each rate on the sum of its lines, rounded half-even once. Where prices include tax, it is the
 * part of each rate's sum that makes the rest grow to the sum.
 * @returns undefined where the sum is beyond MOST_MINOR
 */
export function totalsOf(lines: readonly QuoteLine[], { currency, pricesIncludeTax }: Pricing): Totals | undefined {
  const rates = [...new Set(lines.map(({ taxBasisPoints }) => taxBasisPoints))].sort((a, b) => a - b)
  const taxes: Totals['taxes'] = []
  for (const basisPoints of rates) {
    const sum = lines.filter(({ taxBasisPoints }) => taxBasisPoints === basisPoints).map(({ amountMinor }) => money(amountMinor, currency)).reduce(add)
    if (toSnapshot(sum).amount > MOST_MINOR) return undefined
    const taxMinor = pricesIncludeTax ? taxWithin(toSnapshot(sum).amount, basisPoints) : minor(multiply(sum, { amount: basisPoints, scale: BASIS_POINT_DECIMALS }))
    taxes.push({ basisPoints, onMinor: toSnapshot(sum).amount - (pricesIncludeTax ? taxMinor : 0), taxMinor })
  }
  const netMinor = taxes.reduce((total, { onMinor }) => total + onMinor, 0)
  const taxMinor = taxes.reduce((total, tax) => total + tax.taxMinor, 0)
  const totalMinor = netMinor + taxMinor
  return totalMinor > MOST_MINOR ? undefined : { currency, pricesIncludeTax, netMinor, taxMinor, totalMinor, taxes }
}

function money(amount: number, code: string): Dinero<number> {
  const currency = (currencies as Readonly<Record<string, { readonly code: string; readonly base: number; readonly exponent: number } | undefined>>)[code]
  return dinero({ amount, currency: currency ?? { code, base: 10, exponent: 2 } })
}

/** Rounded half-even to the minor unit. */
function minor(amount: Dinero<number>): number {
  return toSnapshot(transformScale(amount, toSnapshot(amount).currency.exponent, halfEven)).amount
}

/** sum x rate / (1 + rate), half-even. One step of scale of a "currency" with base 10000 + rate divides by just that. */
function taxWithin(sumMinor: number, basisPoints: number): number {
  const whole = 10 ** BASIS_POINT_DECIMALS + basisPoints
  const scaled = dinero({ amount: sumMinor * basisPoints, currency: { code: 'XXX', base: whole, exponent: 0 }, scale: 1 })
  return toSnapshot(transformScale(scaled, 0, halfEven)).amount
}
