import { describe, expect, test } from 'vitest'
import { laidOver, specificationErrors } from './specification.ts'

const FAMILY = { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], limits: { spreadPercent: 10 } }

describe('an engine from its family and its own values', () => {
  test('its own values beat the family’s, field by field', () => {
    expect(laidOver(FAMILY, { boreMm: 83.5, limits: { spreadPercent: 8 } })).toEqual({ ...FAMILY, boreMm: 83.5, limits: { spreadPercent: 8 } })
  })
  test('a whole one has no errors', () => {
    expect(specificationErrors(FAMILY, '/specification')).toEqual([])
  })
  test('without a family fuel, layout and cylinders are missing, each named', () => {
    expect(specificationErrors(laidOver(null, {}), '/ownValues').map(({ path }) => path)).toEqual(['/ownValues/fuel', '/ownValues/layout', '/ownValues/cylinders'])
  })
  test('a firing order that is no permutation is named by its place', () => {
    expect(specificationErrors({ ...FAMILY, firingOrder: [1, 3, 3, 2] }, '/ownValues')).toContainEqual({ path: '/ownValues/firingOrder/2', expected: 'each cylinder once', got: '3' })
  })
  test('six cylinders laid over a family of four need a firing order of six', () => {
    expect(specificationErrors(laidOver(FAMILY, { cylinders: 6 }), '/ownValues')).toEqual([{ path: '/ownValues/firingOrder', expected: 'every cylinder from 1 to 6, once each', got: '[1,3,4,2]' }])
  })
  test('a v engine says its banks', () => {
    expect(specificationErrors({ ...FAMILY, layout: 'v' }, '/specification')).toMatchObject([{ path: '/specification/banks' }])
  })
})
