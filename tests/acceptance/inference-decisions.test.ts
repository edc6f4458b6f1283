import { describe, expect, it } from 'vitest'
import { decibans } from '../../packages/diagnosis/src/explain/decibans.ts'
import { brierParts, logLoss, type Forecast } from '../../packages/diagnosis/src/learning/reliability.ts'
import { bestExpected, bestExpectedAfter } from '../../packages/diagnosis/src/next-test/value.ts'
import { expectedCost, orderByYield } from '../../packages/diagnosis/src/repairs/troubleshooting.ts'

describe('evidence in decibans (definition; Good, from memory)', () => {
  it('a likelihood ratio of 2 is 3.0103', () => expect(decibans(2 / 3)).toBeCloseTo(3.0103, 4))
  it('even odds are none, certainty is clamped to 99', () => {
    expect(decibans(0.5)).toBe(0)
    expect(decibans(1)).toBe(99)
    expect(decibans(0)).toBe(-99)
  })
})

describe('troubleshooting by probability over cost (Heckerman, Breese and Rommelse 1995; numbers computed)', () => {
  const [a, b, c, d] = [0, 1, 2, 3]
  const actions = [{ cures: 0.5, cost: 4 }, { cures: 0.3, cost: 1 }, { cures: 0.15, cost: 2 }, { cures: 0.05, cost: 0.5 }]
  it('orders b, a, d, c at expected cost 21/5', () => {
    expect(orderByYield(actions)).toEqual([b, a, d, c])
    expect(expectedCost(actions, orderByYield(actions))).toBeCloseTo(21 / 5, 12)
  })
  it('by probability alone it would cost 197/40', () => expect(expectedCost(actions, [a!, b!, c!, d!])).toBeCloseTo(197 / 40, 12))
  it('no other order is cheaper', () => {
    const orders = (left: number[]): number[][] => (left.length === 0 ? [[]] : left.flatMap((x) => orders(left.filter((y) => y !== x)).map((rest) => [x, ...rest])))
    for (const order of orders([0, 1, 2, 3])) expect(expectedCost(actions, order)).toBeGreaterThanOrEqual(21 / 5 - 1e-12)
  })
})

describe('oil wildcatter (Raiffa; tables from memory)', () => {
  const wells = [0.5, 0.3, 0.2] // dry, wet, soaking
  const payoffs = [[-70, 50, 200], [0, 0, 0]] // drill, leave
  const seismic = [[0.6, 0.3, 0.1], [0.3, 0.4, 0.3], [0.1, 0.4, 0.5]] // none, open, closed structure
  it('is worth 20 without a test and 32.5 with one, so a test is worth 12.5', () => {
    expect(bestExpected(wells, payoffs)).toBeCloseTo(20, 12)
    expect(bestExpectedAfter(wells, seismic, payoffs)).toBeCloseTo(32.5, 12)
  })
  it('perfect information is worth 35', () => {
    const perfect = [[1, 0, 0], [0, 1, 0], [0, 0, 1]]
    expect(bestExpectedAfter(wells, perfect, payoffs) - bestExpected(wells, payoffs)).toBeCloseTo(35, 12)
  })
})

describe('Brier score and its parts (decomposition: Murphy 1973; numbers computed)', () => {
  const forecasts: Forecast[] = [[0.1, 1], [0.4, 2], [0.8, 4]].flatMap(([probability, hits]) =>
    Array.from({ length: 5 }, (_, i) => ({ probability: probability!, happened: i < hits! })))
  it('.19 = reliability 1/300 - resolution 14/225 + uncertainty 56/225', () => {
    const { score, reliability, resolution, uncertainty } = brierParts(forecasts)
    expect(score).toBeCloseTo(0.19, 12)
    expect(reliability).toBeCloseTo(1 / 300, 12)
    expect(resolution).toBeCloseTo(14 / 225, 12)
    expect(uncertainty).toBeCloseTo(56 / 225, 12)
    expect(reliability - resolution + uncertainty).toBeCloseTo(score, 12)
  })
  it('log loss is .572739840558', () => expect(logLoss(forecasts)).toBeCloseTo(0.572739840558, 11))
})
