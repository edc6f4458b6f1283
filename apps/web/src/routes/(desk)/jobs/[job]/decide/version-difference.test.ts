import type { QuoteVersion } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { versionDifference } from './version-difference.ts'

type Line = QuoteVersion['lines'][number]
const line = (text: string, amountMinor: number, operation: Line['operation'] = null): Line => ({ kind: 'labour', operation, cylinders: [], text, quantity: 1, unit: 'hour', rateMinor: amountMinor, taxBasisPoints: 2000, amountMinor })
const version = (lines: Line[]): Pick<QuoteVersion, 'lines' | 'totals'> => ({ lines, totals: { currency: 'EUR', pricesIncludeTax: false, netMinor: 0, taxMinor: 0, taxes: [], totalMinor: lines.reduce((sum, { amountMinor }) => sum + amountMinor, 0) } })

test('a look put before the work is one line added', () => {
  const difference = versionDifference(version([line('Head gasket', 455)]), version([line('Look through plug holes', 21), line('Head gasket', 455)]))
  expect(difference).toMatchObject({ added: [{ text: 'Look through plug holes' }], dropped: [], changed: [], totalBefore: 455, totalAfter: 476 })
})

test('another amount, or other words for the same operation, is a change and not a new line', () => {
  expect(versionDifference(version([line('Rings', 100)]), version([line('Rings', 120)])).changed).toHaveLength(1)
  expect(versionDifference(version([line('Rings', 100, 'rings')]), version([line('New rings, all four', 100, 'rings')]))).toMatchObject({ added: [], dropped: [], changed: [{ after: { text: 'New rings, all four' } }] })
})

test('the same line twice is counted twice', () => {
  expect(versionDifference(version([line('Gasket', 10), line('Gasket', 10)]), version([line('Gasket', 10)])).dropped).toHaveLength(1)
})
