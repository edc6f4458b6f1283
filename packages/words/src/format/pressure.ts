import type { Pressure, PressureUnit, VacuumPressure, VacuumUnit } from '@evenbore/contract'
import { decimalsOf, formatNumber, parseNumber, roundTo, significantDigits } from './number.ts'
import { MAX_PRESSURE_PA, pascalPer, unitNames } from './units.ts'

/** Pascal of a pressure as entered. */
export function toPa(pressure: { readonly value: number; readonly unit: VacuumUnit }): number {
  return pressure.value * pascalPer[pressure.unit]
}

/** The same pressure as a plain number in another unit, for drawing; not rounded. */
export function inUnit(pressure: { readonly value: number; readonly unit: VacuumUnit }, unit: VacuumUnit): number {
  return pressure.unit === unit ? pressure.value : toPa(pressure) / pascalPer[unit]
}

/**
 * A pressure in the person's unit, never with more digits than were entered: 148 psi reads 1020 kPa or 10.2 bar, not 1020.4.
 *
 * @example formatPressure({ value: 148, unit: 'psi' }, 'bar', 'de-DE') // "10,2 bar"
 */
export function formatPressure(pressure: Pressure | VacuumPressure, unit: VacuumUnit, locale: string): string {
  return `${formatFigure(pressure, unit, locale)} ${unitNames[unit]}`
}

/** The figure alone, for pictures and tables that name the unit once. */
export function formatFigure(pressure: Pressure | VacuumPressure, unit: VacuumUnit, locale: string): string {
  if (pressure.unit === unit) {
    const decimals = decimalsOf(pressure.value)
    return formatNumber(pressure.value, locale, decimals, decimals)
  }
  const digits = significantDigits(pressure.value)
  const value = roundTo(inUnit(pressure, unit), digits)
  const whole = value === 0 ? 1 : Math.floor(Math.log10(Math.abs(value))) + 1
  const decimals = Math.max(0, digits - Math.max(whole, value < 1 ? whole : 1))
  return formatNumber(value, locale, Math.min(decimals, 6), Math.min(decimals, 6))
}

const spellings: Readonly<Record<string, PressureUnit>> = {
  psi: 'psi', psig: 'psi', lb: 'psi', 'lb/in2': 'psi', 'lbf/in2': 'psi',
  kpa: 'kPa', bar: 'bar', bars: 'bar', 'kgf/cm2': 'kgf/cm2', 'kg/cm2': 'kgf/cm2', 'kp/cm2': 'kgf/cm2', at: 'kgf/cm2',
}

export type ParsedPressure =
  | { readonly pressure: Pressure; readonly error?: undefined }
  | { readonly error: 'bad-number' | 'two-marks' | 'negative' | 'too-high' | 'bad-unit'; readonly unit?: string; readonly pressure?: undefined }

/**
 * Reads a pressure as typed or pasted: a number, a unit after it if one stands there, else the unit in use.
 *
 * @example parsePressure('150 psi', 'bar') // { pressure: { value: 150, unit: 'psi' } }
 */
export function parsePressure(typed: string, unit: PressureUnit): ParsedPressure {
  const text = typed.normalize('NFKC').trim()
  const match = /^([-−]?[\d.,\s]*)(.*)$/u.exec(text)
  const figure = match?.[1]?.trim() ?? ''
  const written = match?.[2]?.trim() ?? ''
  if (figure === '') return { error: 'bad-number' }
  const found = written === '' ? unit : spellings[written.toLowerCase().replaceAll(/\s|\^/gu, '')]
  if (!found) return /^[\p{L}/\d^ ²]+$/u.test(written) ? { error: 'bad-unit', unit: written.slice(0, 20) } : { error: 'bad-number' }
  const number = parseNumber(figure)
  if (number.error !== undefined) return { error: number.error }
  if (number.value * pascalPer[found] > MAX_PRESSURE_PA * (1 + 1e-9)) return { error: 'too-high' }
  return { pressure: { value: number.value, unit: found } }
}
