import type { Case, CompressionReading } from '@evenbore/contract'
import type { Admission } from '../admission/types.ts'
import type { Cause } from '../knowledge/causes.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { shiftOf, type CommonLevel } from './common-level.ts'
import type { RunningShare } from './evidence.ts'
import { gaugeBehind } from './other-gauge.ts'

/**
 * Cylinders that were read while cranking and while the engine ran: what a shut throttle or a slow starter took from the cranking reading is not
 * missing while it runs, what late valves or a wrong gauge take is missing in both. Petrol only: a diesel has no throttle. Where one gauge
 * read both, what another one read in the same way does not count.
 */
export function runningShares(given: Case, { engine, compression, judged }: Admission): RunningShare[] {
  if (engine.fuel !== 'petrol' || judged?.kind !== 'dry') return []
  const gaugeOf = (reading: number): string => gaugeBehind(given, given.readings[reading] as CompressionReading)
  const all = compression.flatMap(({ reading, cylinder, kind, pa, sdPa, usable }): RunningShare[] => {
    const cranked = judged.cylinders.find((c) => c.cylinder === cylinder)
    if ((kind !== 'running' && kind !== 'snap') || !usable || pa <= 0 || cranked === undefined || cranked.pa <= 0) return []
    return [{ kind: 'running-share', reading, of: kind, otherGauge: gaugeOf(reading) !== gaugeOf(cranked.readings[0]!), running: Math.log(pa), cranking: Math.log(cranked.pa), sd: sdPa / pa }]
  })
  return all.filter(({ of, otherGauge }) => !otherGauge || !all.some((one) => one.of === of && !one.otherGauge))
}

/** How much more of the common level than usual is there while the engine runs (natural logarithm), and the variance of that. */
interface Excess {
  readonly mean: number
  readonly variance: number
}

/** Of all running readings together, in an engine whose common level while cranking is `level`. Idle and snap each miss their mark in a way of their own. */
export function excessAt(level: number, shares: readonly RunningShare[], { running, otherGauge }: Knowledge): Excess {
  const part = running.leakPart.value
  let weight = 0, sum = 0
  for (const list of Map.groupBy(shares, ({ of }) => of).values()) {
    const { share, spread } = (list[0]!.of === 'snap' ? running.snap : running.idle).value
    // what this cylinder itself loses, it loses less of at speed
    const gaps = list.map(({ running: at, cranking, sd }) => ({ gap: at - cranking - (1 - part) * (level - cranking) - Math.log(share), variance: sd ** 2 + (running.leakPartSpread.value * (level - cranking)) ** 2 }))
    const variance = spread ** 2 + (list[0]!.otherGauge ? otherGauge.agrees.value ** 2 : 0) + gaps.reduce((total, g) => total + g.variance, 0) / gaps.length ** 2
    weight += 1 / variance
    sum += gaps.reduce((total, g) => total + g.gap, 0) / gaps.length / variance
  }
  return { mean: sum / weight, variance: 1 / weight }
}

/** Excess that a cause leaves at a common level. */
export function excessOf(cause: Cause, at: CommonLevel, otherGauge: boolean, knowledge: Knowledge): Excess {
  const { leakPart, leakPartSpread } = knowledge.running
  if (at.commonLoss > 0) return { mean: (1 - leakPart.value) * at.commonLoss, variance: (leakPartSpread.value * at.commonLoss) ** 2 }
  const onlyCranking = cause === 'throttle-closed' || cause === 'slow-cranking' || (cause === 'gauge-error' && otherGauge)
  if (!onlyCranking) return { mean: 0, variance: 0 }
  const { mean, variance } = shiftOf(cause, at, knowledge)
  return { mean: -mean, variance }
}

/** How likely the running readings are under a cause, at a common level. */
export function weighRunning(cause: Cause, at: CommonLevel, shares: readonly RunningShare[], knowledge: Knowledge): number {
  const seen = excessAt(at.level, shares, knowledge), due = excessOf(cause, at, shares.every(({ otherGauge }) => otherGauge), knowledge)
  const variance = seen.variance + due.variance
  return Math.exp(-0.5 * (seen.mean - due.mean) ** 2 / variance) / Math.sqrt(variance) + knowledge.running.saysNothing.value
}
