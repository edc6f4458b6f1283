import { describe, expect, it } from 'vitest'
import { STANDARD_AIR_PA, standardDensity, standardPressurePa, standardTemperatureK } from '../../packages/diagnosis/src/physics/atmosphere.ts'
import { polytropicPressurePa, pressureLeft } from '../../packages/diagnosis/src/physics/cranking.ts'
import { unbuiltPart } from '../../packages/diagnosis/src/physics/build-up.ts'
import { builtBy, expectedLevel } from '../../packages/diagnosis/src/physics/expected.ts'
import { displacementCm3, dynamicRatio, volumeRatio } from '../../packages/diagnosis/src/physics/geometry.ts'
import {
  flowShare, heldPressurePa, holeAreaMm2, leakAreaRatio, percentAtReference, prescribedRestrictorMm, REFERENCE_SUPPLY_PA,
} from '../../packages/diagnosis/src/physics/leakage.ts'
import { areaRatioAtMach, criticalRatio, flowFunction, massFlow, pressureRatioAtMach } from '../../packages/diagnosis/src/physics/nozzle.ts'
import { PSI } from '../../packages/diagnosis/src/units/pressure.ts'

/** Agreement to half a unit of the last digit given. */
const digits = (value: number, expected: number, unit: number): void => expect(Math.abs(value - expected)).toBeLessThanOrEqual(unit / 2 + 1e-12)

describe('cylinder geometry (Heywood, chapter 2, from memory; values computed)', () => {
  it.each([[30, 1.764428], [60, 3.739758], [90, 6.156541], [120, 8.239758], [130, 8.774418], [180, 10]])('at %d degrees the volume is %f clearance volumes', (degrees, ratio) => {
    digits(volumeRatio(degrees, 10, 3.5), ratio, 1e-6)
  })
  it('is one at top dead centre, symmetric about it, and sinusoidal for an endless rod', () => {
    expect(volumeRatio(0, 9, 3.2)).toBe(1)
    expect(volumeRatio(-70, 9, 3.2)).toBeCloseTo(volumeRatio(70, 9, 3.2), 12)
    expect(volumeRatio(90, 9, Infinity)).toBeCloseTo(5, 12)
    expect(volumeRatio(90, 9, 1e7)).toBeCloseTo(5, 5)
  })
  it('counts compression from where the intake valve closes', () => {
    digits(dynamicRatio(10, 3.5, 50), 8.774418, 1e-6)
    expect(dynamicRatio(10, 3.5, 0)).toBeCloseTo(10, 12)
  })
  it('knows the swept volume', () => digits(displacementCm3(80, 80), 402.124, 0.001))
})

describe('compression (worked calculation, row W3: computed)', () => {
  it('7.5 to the power 1.3 at 14.7 psi is 201.8 psi absolute, 187.1 gauge', () => {
    digits(7.5 ** 1.3, 13.7, 0.1)
    digits(polytropicPressurePa(14.7, 7.5, 1.3), 201.789, 0.001)
    digits(polytropicPressurePa(14.7, 7.5, 1.3) - 14.7, 187.089, 0.001)
    digits(polytropicPressurePa(1, 10, 1.3), 19.952623, 1e-6)
    digits(polytropicPressurePa(1, 8.774418, 1.3), 16.833863, 5e-6)
  })
})

describe('standard atmosphere (ISO 2533, geopotential height)', () => {
  it.each([[0, 101325, 288.15], [500, 95460.84, 284.9], [1000, 89874.57, 281.65], [1500, 84556.01, 278.4], [2000, 79495.22, 275.15], [3000, 70108.54, 268.65]])(
    'at %d m: %f Pa and %f K', (height, pa, kelvin) => {
      // the table's own rounding of its constants shows in the second decimal
      expect(Math.abs(standardPressurePa(height) - pa)).toBeLessThan(0.03)
      digits(standardTemperatureK(height), kelvin, 0.01)
    })
  it('has the density of the ideal gas', () => digits(standardDensity(0), 1.225, 0.0005))
})

describe('gas flow (ratios of NACA report 1135, from memory; flows computed)', () => {
  it('has the critical ratio of air', () => digits(criticalRatio(1.4), 0.528281787717, 1e-12))
  it.each([[0.2, 0.972497, 2.96352], [0.5, 0.843019, 1.339844], [1, 0.528282, 1]])('at Mach %f: pressure ratio %f, area ratio %f', (mach, pressure, area) => {
    digits(pressureRatioAtMach(mach), pressure, 1e-6)
    digits(areaRatioAtMach(mach), area, 1e-6)
  })
  it('chokes at the critical ratio, and not before', () => {
    digits(flowFunction(0), 0.684731456378, 1e-12)
    expect(flowFunction(criticalRatio() - 1e-9)).toBe(flowFunction(0))
    expect(flowFunction(criticalRatio() + 1e-6)).toBeLessThanOrEqual(flowFunction(0))
    expect(flowFunction(criticalRatio() + 1e-6)).toBeCloseTo(flowFunction(0), 9)
    expect(flowFunction(1)).toBe(0)
    expect(flowFunction(1.2)).toBe(0)
  })
  it.each([[701325, 1.30018], [201325, 0.373235], [150000, 0.26438]])('a hole of 1 mm from %d Pa passes %f g/s', (pa, grams) => {
    digits(1000 * massFlow(Math.PI / 4, pa, 101325, 293.15), grams, 1e-6)
  })
  it('stays near the ellipse of ISO 6358 (.31 percent, computed)', () => {
    const b = criticalRatio()
    for (let ratio = b; ratio < 1; ratio += 0.005) {
      const ellipse = flowFunction(0) * Math.sqrt(1 - ((ratio - b) / (1 - b)) ** 2)
      expect(Math.abs(flowFunction(ratio) - ellipse) / flowFunction(0)).toBeLessThanOrEqual(0.0031)
    }
  })
})

describe('differential leakage tester (computed; tester of FAA AC 43.13-1B par. 8-14, second hand)', () => {
  it.each([[76, 0.433058, 0.440795], [70, 0.70669, 0.720163], [60, 1.058556, 1.081278], [40, 1.722016, 1.771537]])(
    '80 psi supplied, %d held: leak over restrictor %f at sea level, %f at 2000 m', (held, seaLevel, high) => {
      digits(leakAreaRatio(REFERENCE_SUPPLY_PA, held * PSI, 101325), seaLevel, 1e-6)
      digits(leakAreaRatio(REFERENCE_SUPPLY_PA, held * PSI, 79495.2), high, 1e-6)
    })
  it('60 of 80 psi behind .040 in is a leak of .858 mm2', () => digits(1.058556 * holeAreaMm2(1.016), 0.858, 0.001))
  it('no leak lets more through than the restrictor: leak over restrictor times the part that flows is 1 while both are choked', () => {
    for (const lost of [60, 75, 80]) digits(leakAreaRatio(REFERENCE_SUPPLY_PA, REFERENCE_SUPPLY_PA * (1 - lost / 100), STANDARD_AIR_PA) * flowShare(lost), 1, 1e-9)
    expect(flowShare(0)).toBe(1)
  })
  it('finds the held pressure again from the leak', () => {
    for (const held of [0.5, 5, 30, 60, 76, 79.9]) {
      expect(heldPressurePa(leakAreaRatio(REFERENCE_SUPPLY_PA, held * PSI, 95000), REFERENCE_SUPPLY_PA, 95000) / PSI).toBeCloseTo(held, 8)
    }
  })
  it('has no leak where all is held, and an endless one where nothing is', () => {
    expect(leakAreaRatio(REFERENCE_SUPPLY_PA, REFERENCE_SUPPLY_PA, 101325)).toBe(0)
    expect(leakAreaRatio(REFERENCE_SUPPLY_PA, 0, 101325)).toBe(Infinity)
    expect(heldPressurePa(Infinity, REFERENCE_SUPPLY_PA, 101325)).toBe(0)
  })
  it('the prescribed restrictor changes at a bore of 5.00 in', () => {
    expect(prescribedRestrictorMm(126.9)).toBe(1.016)
    expect(prescribedRestrictorMm(127)).toBe(1.524)
    expect(prescribedRestrictorMm(undefined)).toBe(1.016)
  })
  it('25 percent at another supply is not 25 percent at the reference tester', () => {
    const area = leakAreaRatio(100 * PSI, 75 * PSI, 101325) * holeAreaMm2(1.016)
    const reference = percentAtReference(area, 1.016)
    expect(Math.abs(reference - 25)).toBeGreaterThan(0.05)
    digits(percentAtReference(1.0585562583634824 * holeAreaMm2(1.016), 1.016), 25, 1e-6)
  })
})

describe('cranking with a leak (trends of a rough one-zone model, from memory: within a fifth of the loss)', () => {
  const stroke = { displacementCm3: 402, compressionRatio: 9, rodRatio: 3.5, intakeClosesDegAbdc: 50, rpm: 200, exponent: 1.25, startK: 300, airPa: 101325 }
  it.each([[150, 0.4], [400, 0.18], [785, 0.09]])('.86 mm2 on %d cm3 cost about %f of the compression', (cm3, loss) => {
    expect(1 - pressureLeft(0.86, { ...stroke, displacementCm3: cm3 })).toBeGreaterThan(0.8 * loss)
    expect(1 - pressureLeft(0.86, { ...stroke, displacementCm3: cm3 })).toBeLessThan(1.2 * loss)
  })
  it.each([[10, 0.09], [25, 0.18], [54, 0.31], [86, 0.53]])('%d percent leakage goes with about %f less compression', (percent, loss) => {
    const area = leakAreaRatio(REFERENCE_SUPPLY_PA, REFERENCE_SUPPLY_PA * (1 - percent / 100), 101325) * holeAreaMm2(1.016)
    expect(1 - pressureLeft(area, stroke)).toBeGreaterThan(0.8 * loss)
    expect(1 - pressureLeft(area, stroke)).toBeLessThan(1.2 * loss)
  })
  it('costs nothing without a leak, more when slow, and all when open', () => {
    expect(pressureLeft(0, stroke)).toBe(1)
    expect(pressureLeft(0.86, { ...stroke, rpm: 120 })).toBeLessThan(pressureLeft(0.86, stroke))
    expect(pressureLeft(200, stroke)).toBeLessThan(0.02)
  })
})

describe('expected window', () => {
  const engine = { fuel: 'petrol', layout: 'inline', cylinders: 4, compressionRatio: 9 } as const
  const conditions = { engine: 'hot', throttle: 'open', plugsOut: 'all' } as const
  it('falls with the station pressure, in proportion', () => {
    const low = expectedLevel(engine, conditions, 101325, null)!
    const high = expectedLevel(engine, conditions, 79495, null)!
    expect(high.medianPa / low.medianPa).toBeCloseTo(79495 / 101325, 9)
    expect(high.lowPa / low.lowPa).toBeCloseTo(79495 / 101325, 9)
  })
  it('narrows when the valve timing, the rod and the speed are known', () => {
    const wide = expectedLevel(engine, conditions, 101325, null)!
    const narrow = expectedLevel({ ...engine, intakeClosesDegAbdc: 50, strokeMm: 80, rodLengthMm: 140 }, { ...conditions, crankingRpm: 200 }, 101325, null)!
    expect(narrow.logSd).toBeLessThan(wide.logSd)
    expect(narrow.highPa - narrow.lowPa).toBeLessThan(wide.highPa - wide.lowPa)
  })
  it('a small cylinder and few strokes lower it; a diesel of ratio 17 to 22 reads 360 to 500 psi (from memory)', () => {
    const at = (boreMm: number, strokes?: number) => expectedLevel({ ...engine, boreMm, strokeMm: boreMm }, { ...conditions, ...(strokes === undefined ? {} : { strokes }) }, 101325, null)!.medianPa
    expect(at(57)).toBeLessThan(0.93 * at(80))
    expect(at(80, 2)).toBeLessThan(0.92 * at(80))
    expect(at(80, 10)).toBeCloseTo(at(80), -4)
    for (const [ratio, low, high] of [[17, 330, 420], [22, 440, 540]] as const) {
      const psi = expectedLevel({ fuel: 'diesel', layout: 'inline', cylinders: 4, compressionRatio: ratio, boreMm: 90, strokeMm: 90 }, conditions, 101325, null)!.medianPa / 6894.76
      expect(psi).toBeGreaterThan(low)
      expect(psi).toBeLessThan(high)
    }
  })
  it('each stroke leaves the part unbuilt that hose and gauge are of them and the clearance volume: most in a diesel', () => {
    // 27 ml of hose and gauge, 50 and 23.5 ml of clearance
    expect(Math.exp(builtBy(1, 50).log)).toBeCloseTo(50 / 77, 12)
    expect(Math.exp(builtBy(3, 400 / 17).log)).toBeCloseTo(1 - (27 / (27 + 400 / 17)) ** 3, 12)
    expect(builtBy(undefined, 50)).toEqual({ log: 0, sd: 0 })
    // the way back, from a first and a last stroke: 1 - .4 and 1 - .4^5
    expect(unbuiltPart(0.6, 1 - 0.4 ** 5, 5)).toBeCloseTo(0.4, 8)
    expect(unbuiltPart(1, 3, 3)).toBe(1)
    expect(unbuiltPart(1, 1, 5)).toBeLessThan(1e-6)
  })
  it('what the strokes built up goes by what was noted of them, in proportion to what the gauge shows', () => {
    const full = expectedLevel(engine, conditions, 101325, null)!, half = expectedLevel(engine, { ...conditions, strokes: 5 }, 101325, null, { log: Math.log(0.5), sd: 0.1 })!
    expect(half.medianPa).toBeCloseTo(0.5 * full.medianPa, 6)
    expect(half.logSd).toBeCloseTo(Math.hypot(full.logSd, 0.1), 9)
  })
  it('a late cam, a shut throttle and volume before the valve all lower it; without a ratio there is none', () => {
    const middle = expectedLevel({ ...engine, intakeClosesDegAbdc: 50 }, conditions, 101325, null)!.medianPa
    // 15 degrees later cost about 8 percent (rough calculation, from memory)
    const late = expectedLevel({ ...engine, intakeClosesDegAbdc: 65 }, conditions, 101325, null)!.medianPa / middle
    expect(late).toBeCloseTo(0.92, 1.7)
    // 30 degrees later cost 19, 15 earlier gain 6
    expect(expectedLevel({ ...engine, intakeClosesDegAbdc: 80 }, conditions, 101325, null)!.medianPa / middle).toBeCloseTo(0.81, 1.3)
    expect(expectedLevel({ ...engine, intakeClosesDegAbdc: 35 }, conditions, 101325, null)!.medianPa / middle).toBeCloseTo(1.06, 1.3)
    expect(expectedLevel({ ...engine, intakeClosesDegAbdc: 50 }, { ...conditions, throttle: 'closed' }, 101325, null)!.medianPa).toBeLessThan(0.8 * middle)
    expect(expectedLevel({ ...engine, intakeClosesDegAbdc: 50, boreMm: 80, strokeMm: 80 }, conditions, 101325, 4)!.medianPa / expectedLevel({ ...engine, intakeClosesDegAbdc: 50, boreMm: 80, strokeMm: 80 }, conditions, 101325, 0)!.medianPa).toBeCloseTo(0.92, 1.3)
    expect(expectedLevel({ fuel: 'petrol', layout: 'inline', cylinders: 4 }, conditions, 101325, null)).toBeNull()
  })
})
