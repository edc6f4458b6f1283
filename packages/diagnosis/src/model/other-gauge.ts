import type { Case, CompressionReading } from '@evenbore/contract'
import type { Admission } from '../admission/types.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { OtherGauge } from './evidence.ts'
import { combineReadings, densityThrough } from './mixture.ts'

/** What is stated of the gauge behind a reading, as text: a case names no gauge, so gauges are told apart by what they are. */
export function gaugeBehind(given: Case, { session }: Pick<CompressionReading, 'session'>): string {
  return JSON.stringify((session === undefined ? undefined : given.sessions?.[session]?.gauge) ?? given.gauge ?? null)
}

/**
 * Checks of the gauge: cylinders that were read dry in the judged session, and with another gauge under the same conditions. Such readings
 * are not compared with the rest; what they say is whether the first gauge reads wrong by a common factor.
 */
export function otherGauges(given: Case, { compression, judged, sessions }: Admission): OtherGauge[] {
  if (judged?.kind !== 'dry') return []
  const first = judged.cylinders[0]?.evidence[0]
  if (first === undefined) return []
  const firstGauge = gaugeBehind(given, given.readings[first.reading] as CompressionReading)
  const here = sessions[judged.session]!.conditions
  return compression.flatMap(({ reading, session, kind, cylinder, pa, strokes }): OtherGauge[] => {
    const there = sessions[session]!.conditions
    if (session === judged.session || here.engine !== there.engine || here.throttle !== there.throttle || here.plugsOut !== there.plugsOut) return []
    const before = judged.cylinders.find((c) => c.cylinder === cylinder)
    if (kind !== 'dry' || pa <= 0 || before === undefined || before.pa <= 0 || strokes !== first.strokes) return []
    const gauge = gaugeBehind(given, given.readings[reading] as CompressionReading)
    if (gauge === firstGauge) return []
    // the class bounds the error of each: as likely anywhere within it
    const ofClass = Math.hypot(sessions[judged.session]!.gauge.boundPa / before.pa, sessions[session]!.gauge.boundPa / pa) / Math.sqrt(3)
    return [{ kind: 'other-gauge', reading, gauge, logRatio: Math.log(pa / before.pa), ofClass }]
  })
}

/** How likely the readings of the other gauges are, against the likeliest gain of the first (1). */
export interface GainEvidence {
  /** Of a first gauge that reads rightly. */
  readonly right: number
  /** Of one that reads wrong by a common factor, by the common level that it showed (logarithm of Pa). */
  readonly wrongAt: (level: number) => number
}

/** Gains of a wrong gauge that are summed over: from a twentieth of the pressure to twenty times (another unit noted is 14.5), in steps that the narrowest density passes smoothly. */
const MOST_GAIN = 3
const GAIN_STEP = 0.02
/** However many gauges speak against a gain: not less than this many nats below the best, so that something is always left to believe. */
const MOST_AGAINST = 60

/**
 * Weighs the checks of all other gauges together. Each of those may be wrong itself, then on every cylinder it was tried on; gauges are wrong
 * independently. How wrong the first one is shows in the level as well: what it reads and what such an engine should read stand that far apart.
 */
export function weighOtherGauges(checks: readonly OtherGauge[], expected: { readonly logPa: number; readonly spread: number }, knowledge: Knowledge): GainEvidence | null {
  if (checks.length === 0) return null
  const { shift, spread } = knowledge.causes['gauge-error'].value
  const { agrees, differsAnyway } = knowledge.otherGauge
  const once = 2 * knowledge.noise.repeatability.value ** 2
  // reading over the first reading = gain of the other gauge over that of the first
  const gauges = [...Map.groupBy(checks, ({ gauge }) => gauge).values()].map((list) => ({
    ratio: combineReadings(list.map(({ logRatio }) => ({ logPa: logRatio, variance: once, dropped: false, unreleased: 0 })), 1, knowledge)!,
    alike: agrees.value ** 2 + list[0]!.ofClass ** 2,
  }))
  const ofGain = (gain: number): number => gauges.reduce((sum, { ratio, alike }) => sum + Math.log(1e-300 +
    (1 - differsAnyway.value) * densityThrough(ratio, -gain, alike) + differsAnyway.value * densityThrough(ratio, shift - gain, spread ** 2 + alike)), 0)
  const half = Math.round(MOST_GAIN / GAIN_STEP)
  const logs = Float64Array.from({ length: 2 * half + 1 }, (_, k) => ofGain((k - half) * GAIN_STEP))
  const best = logs.reduce((most, log) => Math.max(most, log), -Infinity)
  const table = logs.map((log) => Math.exp(Math.max(log - best, -MOST_AGAINST)))
  const engine = expected.spread ** 2, gauge = spread ** 2, variance = engine * gauge / (engine + gauge)
  return {
    right: table[half]!,
    wrongAt: (level) => {
      const mean = shift + (level - expected.logPa - shift) * gauge / (engine + gauge)
      let sum = 0, weight = 0
      table.forEach((likelihood, k) => {
        const gap = (k - half) * GAIN_STEP - mean
        const density = Math.exp(-0.5 * gap * gap / variance)
        sum += density * likelihood
        weight += density
      })
      // a level that no wrong gauge explains
      return weight > 0 ? sum / weight : 0
    },
  }
}
