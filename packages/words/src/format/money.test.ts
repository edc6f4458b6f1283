import { expect, test } from 'vitest'
import { formatMoney, parseMoney } from './money.ts'

test('decimals follow the currency, marks the locale', () => {
  expect(formatMoney(81408, 'EUR', 'en-GB')).toBe('€814.08')
  expect(formatMoney(81408, 'EUR', 'de-DE').replaceAll('\u00a0', ' ')).toBe('814,08 €')
  expect(formatMoney(814, 'JPY', 'en-GB')).toBe('JP¥814')
})

test('a typed amount becomes minor units without floating point', () => {
  expect(parseMoney('814,08', 'EUR')).toBe(81408)
  expect(parseMoney('95.5', 'EUR')).toBe(9550)
  expect(parseMoney('1 200', 'EUR')).toBe(120000)
  expect(parseMoney('95', 'JPY')).toBe(95)
})

test('an amount finer than the currency, or no amount, is refused', () => {
  expect(parseMoney('1.005', 'EUR')).toBeUndefined()
  expect(parseMoney('-5', 'EUR')).toBeUndefined()
  expect(parseMoney('five', 'EUR')).toBeUndefined()
  expect(parseMoney('95.5', 'JPY')).toBeUndefined()
})
