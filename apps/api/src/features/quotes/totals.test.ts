import type { QuoteLineInput } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { MOST_MINOR, pricedLine, totalsOf } from './totals.ts'

const line = (quantity: number, rateMinor: number, taxBasisPoints = 2_000): QuoteLineInput => ({ kind: 'part', operation: null, cylinders: [], text: 'a part', quantity, rateMinor, taxBasisPoints })
const priced = (...lines: QuoteLineInput[]) => lines.map((each) => pricedLine(each, 'EUR'))
const NET = { currency: 'EUR', pricesIncludeTax: false }
const GROSS = { currency: 'EUR', pricesIncludeTax: true }

test.each([
  // Half-even: a half goes to the even neighbour (arithmetic by hand).
  [0.5, 5, 2],
  [0.5, 7, 4],
  [0.5, 15, 8],
  [1.25, 10, 12],
  [1.35, 10, 14],
  [0.001, 499, 0],
  [0.001, 501, 1],
  [1.5, 8_000, 12_000],
  [10_000, 100_000_000, 1_000_000_000_000],
])('%d at %d minor units is %d', (quantity, rate, amount) => {
  expect(pricedLine(line(quantity, rate), 'EUR').amountMinor).toBe(amount)
})

test('tax is rounded once, on the sum of a rate', () => {
  // Three times 0.12 at 20 percent: 0.024 each would make 0.06 rounded singly; on 0.36 it is 0.072, rounded 0.07.
  expect(totalsOf(priced(line(1, 12), line(1, 12), line(1, 12)), NET)).toMatchObject({ netMinor: 36, taxMinor: 7, totalMinor: 43 })
})

test('each rate has its own sum and tax', () => {
  expect(totalsOf(priced(line(1, 10_000), line(2, 500, 700), line(1, 100, 0)), NET)).toEqual({
    currency: 'EUR', pricesIncludeTax: false, netMinor: 11_100, taxMinor: 2_070, totalMinor: 13_170,
    taxes: [{ basisPoints: 0, onMinor: 100, taxMinor: 0 }, { basisPoints: 700, onMinor: 1_000, taxMinor: 70 }, { basisPoints: 2_000, onMinor: 10_000, taxMinor: 2_000 }],
  })
})

test('where prices include tax the total is the sum of the prices', () => {
  expect(totalsOf(priced(line(1, 12_000)), GROSS)).toMatchObject({ netMinor: 10_000, taxMinor: 2_000, totalMinor: 12_000 })
  // 100 at 7 percent within: 100 x 700 / 10700 = 6.54
  expect(totalsOf(priced(line(1, 100, 700)), GROSS)).toMatchObject({ netMinor: 93, taxMinor: 7, totalMinor: 100 })
  // 3 at 100 percent within: 1.5 goes to 2
  expect(totalsOf(priced(line(1, 3, 10_000)), GROSS)).toMatchObject({ netMinor: 1, taxMinor: 2, totalMinor: 3 })
})

test('an empty quote comes to nothing and one beyond measure has no total', () => {
  expect(totalsOf([], NET)).toMatchObject({ totalMinor: 0, taxes: [] })
  expect(totalsOf(priced(line(1, 100_000_000), line(10_000, 100_000_000)), NET)).toBeUndefined()
  expect(totalsOf(priced(line(1, 1), line(20, 100_000_000)), NET)).toBeUndefined()
  expect(MOST_MINOR).toBeLessThan(2 ** 31)
})

test('currencies without minor units are counted whole', () => {
  expect(pricedLine(line(1.5, 101), 'JPY').amountMinor).toBe(152)
})
