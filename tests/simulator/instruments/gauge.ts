import type { Gauge, Pressure } from '@evenbore/contract'
import { PA_PER_PSI } from '../physics/air.ts'
import type { GaugeLine } from '../physics/cranking.ts'
import type { Random } from '../random.ts'
import { drawRange } from '../worlds/draw.ts'
import type { World } from '../worlds/world.ts'

/** A compression gauge with its hidden errors. */
export type SimulatedGauge = {
  readonly unit: 'psi' | 'bar' | 'kPa'
  readonly spanPa: number
  readonly resolutionPa: number
  readonly accuracyClass: number
  /** Common to all its readings: factor and offset. */
  readonly gain: number
  readonly zeroPa: number
  /** Relative standard deviation of one reading. */
  readonly repeatability: number
  readonly line: GaugeLine
  /** What the technician tells about it; undefined when nothing. */
  readonly stated: Gauge | undefined
}

const PA_PER_UNIT = { psi: PA_PER_PSI, bar: 1e5, kPa: 1e3 } as const
/** Marks of the scale in bar and kPa that go with 1, 2 and 5 psi. */
const MARKS = { psi: { 1: 1, 2: 2, 5: 5 }, bar: { 1: 0.1, 2: 0.2, 5: 0.5 }, kPa: { 1: 10, 2: 20, 5: 50 } } as const
const SPANS = { petrol: { psi: 300, bar: 20, kPa: 2000 }, diesel: { psi: 1000, bar: 70, kPa: 7000 } } as const

/** Draws a gauge; `factor` is its gross error where the engine-wide cause is the gauge. */
export function drawGauge(random: Random, world: World, fuel: 'petrol' | 'diesel', factor: number): SimulatedGauge {
  const unit = random.weighted({ psi: 70, bar: 20, kPa: 10 })
  const marks = random.weighted<'1' | '2' | '5'>(world.gauge.resolutionPsiWeights)
  const resolution = MARKS[unit][marks]
  const span = SPANS[fuel][unit]
  const accuracyClass = Number(random.weighted(world.gauge.classWeights))
  const before = drawRange(random, world.gauge.volumeBeforeValveMl)
  const stated: Gauge = {
    span: { value: span, unit },
    accuracyClass,
    ...(random.chance(0.75) ? { resolution: { value: resolution, unit } } : {}),
    ...(random.chance(0.15) ? { volumeBeforeValveMl: Math.round(before * 2) / 2 } : {}),
    ...(random.chance(0.4) ? { connection: 'screwed' as const } : {}),
  }
  return {
    unit,
    spanPa: span * PA_PER_UNIT[unit],
    resolutionPa: resolution * PA_PER_UNIT[unit],
    accuracyClass,
    gain: factor * (1 + (random.between(-1, 1) * 0.6 * accuracyClass) / 100),
    zeroPa: random.between(-0.5, 0.5) * (accuracyClass / 100) * span * PA_PER_UNIT[unit],
    repeatability: drawRange(random, world.gauge.repeatability),
    line: {
      volumeBeforeValveM3: before * 1e-6,
      volumeAfterValveM3: drawRange(random, world.gauge.volumeAfterValveMl) * 1e-6,
      valveAreaM2: random.between(1.8, 3.2) * 1e-6,
      liftPressurePa: random.between(3e3, 2.5e4),
    },
    stated: random.chance(0.8) ? stated : undefined,
  }
}

/** What the hand shows for a true gauge pressure: gain, zero, scatter (`scatter` standard deviations), then the nearest mark. */
export function shown(gauge: SimulatedGauge, truePa: number, scatter: number): Pressure {
  const raw = truePa <= 0 ? 0 : truePa * gauge.gain * (1 + gauge.repeatability * scatter) + gauge.zeroPa
  const marked = Math.round(Math.min(Math.max(raw, 0), gauge.spanPa) / gauge.resolutionPa) * gauge.resolutionPa
  return { value: Number((marked / PA_PER_UNIT[gauge.unit]).toFixed(3)), unit: gauge.unit }
}
