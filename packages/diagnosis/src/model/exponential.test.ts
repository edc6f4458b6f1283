import { describe, expect, it } from 'vitest'
import { expMinus } from './exponential.ts'

describe('exp(-x) from a table', () => {
  it('is good to 1e-12 of its value, between the points of the table too', () => {
    for (let x = 0; x < 64; x += 0.00371) expect(Math.abs(expMinus(x) / Math.exp(-x) - 1)).toBeLessThan(1e-12)
  })
  it('is one at nothing and nothing far out', () => {
    expect(expMinus(0)).toBe(1)
    expect(expMinus(64)).toBe(0)
    expect(expMinus(Infinity)).toBe(0)
  })
})
