import { expect, test } from 'vitest'
import { keyOf, markOf, press, type PadKey } from './typed.ts'

const type = (keys: string, mark: '.' | ',' = '.') => [...keys].reduce((typed, key) => press(typed, keyOf(key)!, mark), '')

test('digits and one decimal mark make a number, written as the person writes it', () => {
  expect(type('148')).toBe('148')
  expect(type('15.5')).toBe('15.5')
  expect(type('15.5', ',')).toBe('15,5')
  expect(type('1.5.5')).toBe('1.55')
  expect(type('.5')).toBe('0.5')
  expect(type('07')).toBe('7')
})

test('a pad never makes a longer number than a gauge can show', () => {
  expect(type('123456789')).toHaveLength(7)
})

test('one back and all away', () => {
  expect(press('148', 'back', '.')).toBe('14')
  expect(press('148', 'clear' satisfies PadKey, '.')).toBe('')
  expect(press('', 'back', '.')).toBe('')
})

test('the mark follows the locale', () => {
  expect(markOf('de-DE')).toBe(',')
  expect(markOf('en-GB')).toBe('.')
})
