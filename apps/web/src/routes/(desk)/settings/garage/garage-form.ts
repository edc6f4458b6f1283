import type { Garage, NewGarage } from '@evenbore/contract'
import { parseMoney, typedMoney } from '@evenbore/words/format/money.ts'
import { parseNumber } from '@evenbore/words/format/number.ts'
import { basisPointsFrom, typedPercent } from '../percent.ts'

/** A garage as typed. */
export interface GarageForm {
  name: string
  codeLetter: string
  timeZone: string
  currency: string
  pressureUnit: Garage['pressureUnit']
  elevation: string
  locale: Garage['locale']
  labourRate: string
  tax: string
  pricesIncludeTax: boolean
  tolerance: string
}
export const emptyGarage: GarageForm = { name: '', codeLetter: '', timeZone: 'Europe/Lisbon', currency: 'EUR', pressureUnit: 'psi', elevation: '', locale: 'en', labourRate: '', tax: '20', pricesIncludeTax: false, tolerance: '0' }

export function garageForm(garage: Garage): GarageForm {
  const { name, codeLetter, timeZone, currency, pressureUnit, locale, pricesIncludeTax } = garage
  return {
    name, codeLetter, timeZone, currency, pressureUnit, locale, pricesIncludeTax,
    elevation: garage.elevationM === null ? '' : String(garage.elevationM),
    labourRate: typedMoney(garage.labourRateMinor, currency),
    tax: typedPercent(garage.taxBasisPoints),
    tolerance: typedPercent(garage.toleranceBasisPoints),
  }
}

/** The garage as the API takes it; undefined while a figure cannot be read. */
export function garageBody(form: GarageForm): NewGarage | undefined {
  const { name, codeLetter, timeZone, currency, pressureUnit, locale, pricesIncludeTax } = form
  const labourRateMinor = /^[A-Z]{3}$/.test(currency) ? parseMoney(form.labourRate, currency) : undefined
  const taxBasisPoints = basisPointsFrom(form.tax)
  const toleranceBasisPoints = basisPointsFrom(form.tolerance)
  // a place below the sea is typed with a minus, which parseNumber refuses for readings
  const below = form.elevation.trim().startsWith('-')
  const height = form.elevation.trim() === '' ? undefined : parseNumber(form.elevation.trim().replace(/^-/, ''))
  if (labourRateMinor === undefined || taxBasisPoints === undefined || toleranceBasisPoints === undefined || height?.error !== undefined) return undefined
  return { name: name.trim(), codeLetter: codeLetter.trim().toUpperCase(), timeZone, currency, pressureUnit, locale, pricesIncludeTax, labourRateMinor, taxBasisPoints, toleranceBasisPoints, elevationM: height === undefined ? null : height.value * (below ? -1 : 1) }
}
