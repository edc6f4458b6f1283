import { expect, test } from 'vitest'
import { formatPressure, parsePressure } from './pressure.ts'

const shown = (value: number, unit: 'psi' | 'kPa' | 'bar' | 'kgf/cm2', as: 'psi' | 'kPa' | 'bar' | 'kgf/cm2', locale = 'en-GB') => formatPressure({ value, unit }, as, locale)

test('a pressure is never shown with more digits than were entered', () => {
  expect(shown(148, 'psi', 'bar')).toBe('10.2 bar')
  expect(shown(148, 'psi', 'kPa')).toBe('1020 kPa')
  expect(shown(95, 'psi', 'bar')).toBe('6.6 bar')
  expect(shown(10.2, 'bar', 'psi')).toBe('148 psi')
  expect(shown(9, 'psi', 'bar')).toBe('0.6 bar')
})

test('in its own unit it is shown as entered', () => {
  expect(shown(147.5, 'psi', 'psi')).toBe('147.5 psi')
  expect(shown(0, 'psi', 'psi')).toBe('0 psi')
})

test('the decimal mark follows the person', () => {
  expect(shown(10.2, 'bar', 'bar', 'de-DE')).toBe('10,2 bar')
  expect(shown(10.2, 'bar', 'kgf/cm2', 'es-ES')).toBe('10,4 kgf/cm²')
})

test('comma and point both mark decimals, and a unit may stand after the number', () => {
  expect(parsePressure('15,5', 'bar').pressure).toEqual({ value: 15.5, unit: 'bar' })
  expect(parsePressure('15.5', 'bar').pressure).toEqual({ value: 15.5, unit: 'bar' })
  expect(parsePressure(' 150 psi ', 'bar').pressure).toEqual({ value: 150, unit: 'psi' })
  expect(parsePressure('10,4 kgf/cm²', 'psi').pressure).toEqual({ value: 10.4, unit: 'kgf/cm2' })
  expect(parsePressure('１４８', 'psi').pressure).toEqual({ value: 148, unit: 'psi' })
})

test('what is no pressure says why', () => {
  expect(parsePressure('abc', 'psi').error).toBe('bad-number')
  expect(parsePressure('', 'psi').error).toBe('bad-number')
  expect(parsePressure('148 🔧', 'psi').error).toBe('bad-number')
  expect(parsePressure('1.020,5', 'kPa').error).toBe('two-marks')
  expect(parsePressure('-3', 'psi').error).toBe('negative')
  expect(parsePressure('10000', 'psi').error).toBe('too-high')
  expect(parsePressure('150 furlongs', 'psi')).toEqual({ error: 'bad-unit', unit: 'furlongs' })
})
