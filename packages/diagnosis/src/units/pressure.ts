import type { Pressure, PressureUnit, VacuumPressure, VacuumUnit } from '@evenbore/contract'

/**
 * Pascals in one unit.
 * psi, inHg: NIST SP 811; kgf/cm2: exact by definition of the kilogram-force; bar, mbar: exact.
 */
const PASCALS: Readonly<Record<VacuumUnit, number>> = {
  psi: 6894.757293168361,
  kPa: 1000,
  bar: 100000,
  'kgf/cm2': 98066.5,
  inHg: 3386.388640341,
  mbar: 100,
}

/** One pound-force per square inch in pascal (NIST SP 811). */
export const PSI = PASCALS.psi

/** The order in which a unit wins when two are used equally often. */
const UNIT_ORDER: readonly PressureUnit[] = ['psi', 'kPa', 'bar', 'kgf/cm2']

/** A pressure in pascal; gauge stays gauge and absolute stays absolute. `toPascal({ value: 1, unit: 'bar' })` is 100000. */
export function toPascal(pressure: Pressure | VacuumPressure): number {
  return pressure.value * PASCALS[pressure.unit]
}

/** A pressure of so many pascal in a unit of the trade. */
export function fromPascal(pa: number, unit: PressureUnit): Pressure {
  return { value: pa / PASCALS[unit], unit }
}

/** The unit most of these pressures were read in (psi when there are none); their order does not matter. */
export function commonUnit(pressures: readonly Pressure[]): PressureUnit {
  let best: PressureUnit = 'psi'
  let most = 0
  for (const unit of UNIT_ORDER) {
    const count = pressures.reduce((sum, pressure) => sum + (pressure.unit === unit ? 1 : 0), 0)
    if (count > most) {
      best = unit
      most = count
    }
  }
  return best
}

/** Digits after the decimal point that a number was entered with: 148 has none, 10.25 has two. */
export function decimals(value: number): number {
  const [mantissa = '', exponent = '0'] = String(value).split('e')
  return Math.max(0, (mantissa.split('.')[1] ?? '').length - Number(exponent))
}

/** The finest decimal place among pressures as entered, in pascal: 150 psi alone gives 1 psi, 10.2 bar gives 0.1 bar. */
export function finestPlacePa(pressures: readonly Pressure[]): number {
  return pressures.reduce((finest, { value, unit }) => Math.min(finest, PASCALS[unit] * 10 ** -decimals(value)), Infinity)
}
