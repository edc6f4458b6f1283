import type { PressureUnit, VacuumUnit } from '@evenbore/contract'

/** Pascal in one unit. psi, inHg: NIST SP 811 (2008) appendix B.8; kgf/cm2: exact, standard gravity. */
export const pascalPer: Readonly<Record<VacuumUnit, number>> = {
  psi: 6894.757293168361,
  kPa: 1000,
  bar: 100_000,
  'kgf/cm2': 98_066.5,
  inHg: 3386.388640341,
  mbar: 100,
}

export const pressureUnits: readonly PressureUnit[] = ['psi', 'kPa', 'bar', 'kgf/cm2']
/** As people write them: the exponent small. */
export const unitNames: Readonly<Record<VacuumUnit, string>> = { psi: 'psi', kPa: 'kPa', bar: 'bar', 'kgf/cm2': 'kgf/cm²', inHg: 'inHg', mbar: 'mbar' }

/** No compression gauge of the trade reads past 10 MPa, the contract's upper bound. */
export const MAX_PRESSURE_PA = 10e6
