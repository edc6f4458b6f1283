import { describe, expect, it } from 'vitest'
import { PASCALS_PER_UNIT } from '@evenbore/contract'
import { commonUnit, decimals, finestPlacePa, fromPascal, toPascal } from '../../packages/diagnosis/src/units/pressure.ts'

describe('pressure units (NIST SP 811; exact or conventional)', () => {
  it.each([['psi', 6894.757293168361], ['inHg', 3386.388640341], ['kgf/cm2', 98066.5], ['bar', 100000], ['kPa', 1000], ['mbar', 100]] as const)('one %s is %f Pa', (unit, pa) => {
    expect(toPascal({ value: 1, unit })).toBe(pa)
    expect(PASCALS_PER_UNIT[unit]).toBe(pa)
  })
  it('a round trip keeps the number as entered', () => {
    for (const unit of ['psi', 'kPa', 'bar', 'kgf/cm2'] as const) {
      for (const value of [0, 1, 148, 10.2, 0.35, 1450]) expect(fromPascal(toPascal({ value, unit }), unit).value).toBeCloseTo(value, 12)
    }
  })
})

describe('digits as entered', () => {
  it.each([[148, 0], [10.2, 1], [10.25, 2], [1e-7, 7], [1.5e-7, 8], [1e21, 0]])('%d has %d decimals', (value, count) => expect(decimals(value)).toBe(count))
  it('the finest place among readings is what the gauge was read to', () => {
    expect(finestPlacePa([{ value: 150, unit: 'psi' }, { value: 152, unit: 'psi' }])).toBeCloseTo(6894.757, 3)
    expect(finestPlacePa([{ value: 10, unit: 'bar' }, { value: 10.2, unit: 'bar' }])).toBeCloseTo(10000, 9)
    expect(finestPlacePa([])).toBe(Infinity)
  })
  it('answers come in the commonest unit, whatever the order', () => {
    const readings = [{ value: 10, unit: 'bar' }, { value: 150, unit: 'psi' }, { value: 11, unit: 'bar' }] as const
    expect(commonUnit(readings)).toBe('bar')
    expect(commonUnit(readings.toReversed())).toBe('bar')
    expect(commonUnit([{ value: 1, unit: 'kPa' }, { value: 1, unit: 'psi' }])).toBe('psi')
    expect(commonUnit([])).toBe('psi')
  })
})
