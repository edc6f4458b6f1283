import { quoteLineInputSchema, type QuoteLineInput } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { fromCatalogue, lineInput, type LineDraft } from './line-draft.ts'
import { amountMinor, divideHalfEven, previewTotals } from './totals.ts'

const line = (quantity: number, rateMinor: number, taxBasisPoints = 2000): QuoteLineInput => ({ kind: 'labour', operation: null, cylinders: [], text: 'work', quantity, rateMinor, taxBasisPoints })

test('halves go to the even unit', () => {
  expect([1n, 3n, 5n, 7n].map((n) => divideHalfEven(n, 2n))).toEqual([0n, 2n, 2n, 4n])
  expect(amountMinor(line(0.5, 25))).toBe(12)
  expect(amountMinor(line(1.5, 25))).toBe(38)
})

test('the quote of the drawing comes to 814.08', () => {
  // look.html, "A manager's decision": 0.3 h and 6.5 h and 1.2 h at 70.00, a gasket set at 118.40, tax 20 percent
  const lines = [line(0.3, 7000), line(6.5, 7000), line(1, 11840), line(1.2, 7000)]
  expect(previewTotals(lines, false)).toEqual({ netMinor: 67840, taxes: [{ basisPoints: 2000, taxMinor: 13568 }], totalMinor: 81408 })
})

test('tax is reckoned for each rate on the sum of its lines, and out of prices that hold it', () => {
  expect(previewTotals([line(1, 1000, 2000), line(1, 1000, 500)], false).taxes).toEqual([{ basisPoints: 2000, taxMinor: 200 }, { basisPoints: 500, taxMinor: 50 }])
  expect(previewTotals([line(1, 12000)], true)).toEqual({ netMinor: 10000, taxes: [{ basisPoints: 2000, taxMinor: 2000 }], totalMinor: 12000 })
})

test('labour of the catalogue is its minutes as hours at the garage’s rate', () => {
  const item = { id: 'a', garage: 'g', kind: 'labour', operation: 'gasket-replace', text: 'Head gasket', minutes: 390, unitPriceMinor: null, taxBasisPoints: 2000, retiredAt: null, version: 1 } as const
  expect(fromCatalogue(item, 'x', { labourRateMinor: 7000, currency: 'EUR' })).toMatchObject({ quantity: '6.5', rate: '70.00', tax: '20' })
})

test('what is typed is read as the contract takes it, or named', () => {
  const typed: LineDraft = { id: 'x', kind: 'part', operation: null, cylinders: [], text: ' Gasket set ', quantity: '1,5', rate: '118,40', tax: '20' }
  const { input } = lineInput(typed, 'EUR')
  expect(quoteLineInputSchema.parse(input)).toMatchObject({ text: 'Gasket set', quantity: 1.5, rateMinor: 11840, taxBasisPoints: 2000 })
  expect(lineInput({ ...typed, text: '', quantity: '0', rate: 'dear', tax: '101' }, 'EUR').faults).toEqual(['text', 'quantity', 'rate', 'tax'])
})
