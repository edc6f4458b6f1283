import { expect, test } from 'vitest'
import { printable } from './printable.ts'

const latin = (code: number) => code < 0x700

test('what has no sign becomes a square, and what is not seen is left out', () => {
  expect(printable('Ölwechsel für 12 € \u{1f697}\u{1f3fd}', (code) => code < 0x2100)).toBe('Ölwechsel für 12 € □')
  expect(printable('a\u202eb\u200dc\u0000\ufe0f', latin)).toBe('abc')
  expect(printable('one\ntwo', latin)).toBe('one\ntwo')
})

test('words from right to left come in their order, those beside them stay', () => {
  expect(printable('K 27 שלום עולם Ltd', latin)).toBe('K 27 עולם שלום Ltd')
  expect(printable('محمد علي', latin)).toBe('علي محمد')
})
