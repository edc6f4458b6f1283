import type { QuoteLineInput } from '@evenbore/contract'

/** Divides whole numbers, rounding half to even: 5/2 is 2, 7/2 is 4. */
export function divideHalfEven(dividend: bigint, divisor: bigint): bigint {
  const quotient = dividend / divisor
  const twice = (dividend % divisor) * 2n
  if (twice > divisor || (twice === divisor && quotient % 2n === 1n)) return quotient + 1n
  return quotient
}

/** A line's amount in minor units: quantity (three decimals) times rate, half to even. */
export function amountMinor(line: Pick<QuoteLineInput, 'quantity' | 'rateMinor'>): number {
  return Number(divideHalfEven(BigInt(Math.round(line.quantity * 1000)) * BigInt(line.rateMinor), 1000n))
}

export interface Preview {
  readonly netMinor: number
  readonly taxes: readonly { readonly basisPoints: number; readonly taxMinor: number }[]
  readonly totalMinor: number
}

/** What the lines come to while they are being typed; tax for each rate on the sum of its lines. What counts is what the server answers. */
export function previewTotals(lines: readonly QuoteLineInput[], pricesIncludeTax: boolean): Preview {
  const sums = new Map<number, number>()
  for (const line of lines) sums.set(line.taxBasisPoints, (sums.get(line.taxBasisPoints) ?? 0) + amountMinor(line))
  const taxes = [...sums].sort(([a], [b]) => b - a).map(([basisPoints, sum]) => ({
    basisPoints,
    taxMinor: Number(divideHalfEven(BigInt(sum) * BigInt(basisPoints), BigInt(pricesIncludeTax ? 10_000 + basisPoints : 10_000))),
  }))
  const sum = [...sums.values()].reduce((all, each) => all + each, 0)
  const tax = taxes.reduce((all, { taxMinor }) => all + taxMinor, 0)
  return pricesIncludeTax ? { netMinor: sum - tax, taxes, totalMinor: sum } : { netMinor: sum, taxes, totalMinor: sum + tax }
}
