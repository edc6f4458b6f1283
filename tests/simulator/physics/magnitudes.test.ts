import { describe, expect, it } from 'vitest'
import { PA_PER_PSI, stationPressurePa } from './air.ts'
import { crank, type CrankingRun } from './cranking.ts'
import { heldPressurePa } from './leak-down.ts'
import { massFlowKgS } from './orifice.ts'
import { crankingAmps } from './starter.ts'
import { type CylinderGeometry, pistonAreaM2, pistonDepthM } from './slider-crank.ts'

/** A square cylinder of so many cc and this ratio, rod 1.75 strokes. */
function geometry(sweptCc: number, ratio: number): CylinderGeometry {
  const boreM = Math.cbrt((4 * sweptCc * 1e-6) / Math.PI)
  return { boreM, strokeM: boreM, rodM: 1.75 * boreM, clearanceM3: (sweptCc * 1e-6) / (ratio - 1) }
}

/** A sound, hot petrol cylinder of 402 cc, ratio 9, at 200 rpm and sea level, with the changes given. */
function reading(change: Partial<CrankingRun> = {}): number {
  const run: CrankingRun = {
    geometry: geometry(402, 9),
    intakeClosesDegAbdc: 50,
    speedRpm: 200,
    airPressurePa: 101_325,
    chargePressurePa: 0.985 * (change.airPressurePa ?? 101_325),
    chargeTempK: 335,
    wallTempK: 358,
    fixedLeakM2: 0,
    ringLeakM2: 0.28e-6,
    ringLowPressureExcess: 0.6,
    gauge: { volumeBeforeValveM3: 1e-6, volumeAfterValveM3: 12e-6, valveAreaM2: 2.5e-6, liftPressurePa: 1e4 },
    strokes: 10,
    ...change,
  }
  return (crank(run).at(-1) as number) / PA_PER_PSI
}

describe('the starter', () => {
  // a load that rises and falls twice a turn, 20 Nm on the mean
  const airTorqueNm = Float64Array.from({ length: 720 }, (_, deg) => 20 + 20 * Math.sin((4 * Math.PI * deg) / 360))
  const starter = { airTorqueNm, speedRadS: 20, meanAmps: 150, batteryVolts: 11.5, resistanceOhm: 0.02, inertiaKgM2: 0.3 }
  const { amps, degrees } = crankingAmps(starter, 0, 400, 2000)

  it('draws the stalled current at first and the mean one later, and turns at the mean speed', () => {
    expect(amps[0]).toBeGreaterThan(0.9 * 11.5 / 0.02)
    const late = amps.subarray(1000)
    expect(late.reduce((sum, value) => sum + value, 0) / late.length).toBeCloseTo(150, -1)
    expect(((degrees[1999]! - degrees[1000]!) / 999) * 400 * (Math.PI / 180)).toBeCloseTo(20, 0)
  })

  it('swings less the more inertia there is, as a first-order lag of J R over the square of the constant has it', () => {
    const swing = (inertiaKgM2: number): number => {
      const late = crankingAmps({ ...starter, inertiaKgM2 }, 0, 400, 2000).amps.subarray(1000)
      return (Math.max(...late) - Math.min(...late)) / 2
    }
    const constant = (11.5 - 0.02 * 150) / 20
    for (const inertia of [0.2, 0.4, 0.8]) {
      const lag = (inertia * 0.02) / constant ** 2
      const expected = (20 / constant) / Math.hypot(1, lag * 2 * 20)
      expect(swing(inertia) / expected).toBeGreaterThan(0.8)
      expect(swing(inertia) / expected).toBeLessThan(1.2)
    }
  })
})

describe('the air', () => {
  it('has the pressures of the standard atmosphere (ISO 2533, geopotential height)', () => {
    expect(stationPressurePa(1000)).toBeCloseTo(89_874.57, -1)
    expect(stationPressurePa(2000)).toBeCloseTo(79_495.22, -1)
  })

  it('passes a 1 mm hole as isentropic flow says (computed, ratio of specific heats 1.4)', () => {
    const hole = (Math.PI / 4) * 1e-6
    expect(massFlowKgS(hole, 701_325, 293.15, 101_325) * 1e3).toBeCloseTo(1.30018, 3)
    expect(massFlowKgS(hole, 150_000, 293.15, 101_325) * 1e3).toBeCloseTo(0.26438, 4)
  })

  it('is held at 60 of 80 psi by a leak 1.0586 times the restrictor (computed)', () => {
    const restrictorM2 = (Math.PI / 4) * 1.016e-3 ** 2
    const heldPa = heldPressurePa({
      supplyPa: 101_325 + 80 * PA_PER_PSI,
      airPressurePa: 101_325,
      restrictorM2,
      fixedLeakM2: 1.058556 * restrictorM2,
      ringLeakM2: 0,
      ringLowPressureExcess: 0,
    })
    expect((heldPa - 101_325) / PA_PER_PSI).toBeCloseTo(60, 2)
  })

  it('fills the volumes of crank and rod (Heywood chapter 2, from memory; values computed)', () => {
    const square = { boreM: 0.08, strokeM: 0.08, rodM: 0.14, clearanceM3: 1 }
    const clearance = (pistonAreaM2(square) * square.strokeM) / 9
    const ratioAt = (deg: number): number => 1 + (pistonAreaM2(square) * pistonDepthM(square, deg)) / clearance
    expect(ratioAt(60)).toBeCloseTo(3.739758, 5)
    expect(ratioAt(130)).toBeCloseTo(8.774418, 5)
  })
})

describe('a cranked cylinder', () => {
  it('moves by less than half a percent when the step is halved', () => {
    for (const change of [{}, { fixedLeakM2: 2e-6 }, { geometry: geometry(600, 19), speedRpm: 240 }, { geometry: geometry(150, 9) }]) {
      const [coarse, fine] = [reading({ ...change, stepDeg: 2 }), reading({ ...change, stepDeg: 1 })]
      expect(Math.abs(coarse / fine - 1)).toBeLessThan(0.005)
    }
  })

  it('reads 120 to 200 psi when sound: petrol manuals give 120 to 125 (TM 10-3930-618-20), more for later ratios', () => {
    expect(reading({ geometry: geometry(402, 7.2), intakeClosesDegAbdc: 55 })).toBeGreaterThan(110)
    expect(reading({ geometry: geometry(402, 7.2), intakeClosesDegAbdc: 55 })).toBeLessThan(140)
    expect(reading()).toBeGreaterThan(150)
    expect(reading()).toBeLessThan(200)
  })

  it('reads 90 to 110 psi in an old engine of low ratio (TM 5-1185)', () => {
    const old = reading({ geometry: geometry(500, 6.2), intakeClosesDegAbdc: 50 })
    expect(old).toBeGreaterThan(90)
    expect(old).toBeLessThan(115)
  })

  it('reads around 350 psi in a diesel at 250 rpm (TM 5-2420-230-24-2 gives new 350, used 300)', () => {
    const diesel = reading({
      geometry: geometry(900, 16.5),
      speedRpm: 250,
      intakeClosesDegAbdc: 45,
      ringLeakM2: 0.8e-6,
      gauge: { volumeBeforeValveM3: 6e-6, volumeAfterValveM3: 10e-6, valveAreaM2: 2.5e-6, liftPressurePa: 1.5e4 },
    })
    expect(diesel).toBeGreaterThan(300)
    expect(diesel).toBeLessThan(420)
  })

  it('comes near the worked polytropic figure of 187 psi without leak or gauge (row W3, computed: ratio 7.5, exponent 1.3)', () => {
    const ideal = reading({
      geometry: geometry(400, 7.5),
      intakeClosesDegAbdc: 0,
      chargePressurePa: 101_353,
      ringLeakM2: 0,
      gauge: { volumeBeforeValveM3: 0, volumeAfterValveM3: 1e-6, valveAreaM2: 4e-6, liftPressurePa: 0 },
    })
    expect(ideal).toBeGreaterThan(187 * 0.95)
    expect(ideal).toBeLessThan(187 * 1.08)
  })

  it('follows the station pressure (common practice: about as the air)', () => {
    const height = reading({ airPressurePa: stationPressurePa(1500) })
    expect(height / reading()).toBeGreaterThan(stationPressurePa(1500) / 101_325 - 0.03)
    expect(height / reading()).toBeLessThan(stationPressurePa(1500) / 101_325 + 0.01)
  })

  it('loses compression with leakage as the rough reckoning of the design notes does, within a factor of 1.7', () => {
    const sound = reading({ ringLeakM2: 0 })
    const restrictorM2 = (Math.PI / 4) * 1.016e-3 ** 2
    for (const [percent, loss] of [
      [10, 9],
      [25, 18],
      [54, 31],
      [86, 53],
    ] as const) {
      let [low, high] = [0, 2e-5]
      for (let i = 0; i < 40; i++) {
        const area = (low + high) / 2
        const held = heldPressurePa({
          supplyPa: 101_325 + 80 * PA_PER_PSI,
          airPressurePa: 101_325,
          restrictorM2,
          fixedLeakM2: area,
          ringLeakM2: 0,
          ringLowPressureExcess: 0,
        })
        if (100 * (1 - (held - 101_325) / (80 * PA_PER_PSI)) < percent) low = area
        else high = area
      }
      const lost = 100 * (1 - reading({ ringLeakM2: 0, fixedLeakM2: low }) / sound)
      expect(lost, `${percent} percent leakage`).toBeGreaterThan(loss / 1.7)
      expect(lost, `${percent} percent leakage`).toBeLessThan(loss * 1.7)
    }
  })

  it('reads less when cranked slower, when the intake closes later, and through a longer adaptor', () => {
    expect(reading({ speedRpm: 160 })).toBeLessThan(0.97 * reading())
    expect(reading({ speedRpm: 250 })).toBeGreaterThan(1.02 * reading())
    expect(reading({ intakeClosesDegAbdc: 65 })).toBeLessThan(0.93 * reading())
    expect(
      reading({ gauge: { volumeBeforeValveM3: 5e-6, volumeAfterValveM3: 12e-6, valveAreaM2: 2.5e-6, liftPressurePa: 1e4 } }),
    ).toBeLessThan(0.95 * reading())
  })

  it('builds up over the strokes, a leaky one less so', () => {
    const base = { strokes: 8 }
    const share = (change: Partial<CrankingRun>): number => reading({ ...base, ...change, strokes: 1 }) / reading({ ...base, ...change })
    expect(share({})).toBeLessThan(0.8)
    expect(share({ fixedLeakM2: 5e-6 })).toBeGreaterThan(share({}))
  })
})
