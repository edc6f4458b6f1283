import { describe, expect, it } from 'vitest'
import { fitBuildUp } from '../../packages/diagnosis/src/physics/build-up.ts'

/** Relative agreement with a certified value. */
const certified = (value: number, expected: number): void => expect(Math.abs(value / expected - 1)).toBeLessThan(2e-10)

describe('fit of y = level (1 - exp(-rate x)) (NIST Statistical Reference Datasets, published certified values)', () => {
  it('Misra1a', () => {
    const fit = fitBuildUp(
      [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0],
      [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78],
    )!
    certified(fit.level, 238.94212918)
    certified(fit.rate, 5.5015643181e-4)
    certified(fit.residualSumOfSquares, 0.12455138894)
    certified(fit.residualSd, 0.1018787633)
    // certified standard deviations, from memory
    certified(fit.levelSd, 2.7070075241)
    certified(fit.rateSd, 7.2668688436e-6)
  })
  it('BoxBOD, where fits that start far away get lost', () => {
    const fit = fitBuildUp([1, 2, 3, 5, 7, 10], [109, 149, 149, 191, 213, 224])!
    certified(fit.level, 213.80940889)
    certified(fit.rate, 0.54723748542)
  })
  it('gives standard deviations that match a change of the data', () => {
    // exact data: nothing is left over, and the parameters come back
    const x = [1, 2, 3, 4, 5, 6, 7, 8]
    const fit = fitBuildUp(x, x.map((at) => 150 * (1 - Math.exp(-0.8 * at))))!
    expect(fit.level).toBeCloseTo(150, 8)
    expect(fit.rate).toBeCloseTo(0.8, 10)
    expect(fit.residualSd).toBeLessThan(1e-6)
  })
  it('has no answer for a straight line, for nothing, or for two points', () => {
    expect(fitBuildUp([1, 2, 3, 4], [10, 20, 30, 40])).toBeNull()
    expect(fitBuildUp([1, 2, 3, 4], [0, 0, 0, 0])).toBeNull()
    expect(fitBuildUp([1, 2], [100, 140])).toBeNull()
  })
})
