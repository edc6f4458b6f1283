import type { CompressionReading, Consistency, Evaluation, PressureUnit, Reading } from '@evenbore/contract'
import { decimalsOf } from '@evenbore/words/format/number.ts'
import { formatFigure, inUnit } from '@evenbore/words/format/pressure.ts'
import type { PlanCylinder } from '#lib/plan/plan-cylinder.ts'
import { placeOf, type LimitBand, type SpreadTick } from '#lib/spread/rule.ts'
import { readingHalfWidth } from '#lib/spread/uncertainty.ts'
import type { Reader } from '@evenbore/words/reader.ts'

/** The dry readings the verdict speaks of, the latest of each cylinder: of the session judged, else of all. */
export function dryReadings(readings: readonly Reading[], consistency: Pick<Consistency, 'session'> | undefined): Map<number, CompressionReading> {
  const dry = readings.filter((reading): reading is CompressionReading => reading.test === 'compression' && !reading.wet && !reading.running && !reading.snap)
  const judged = consistency?.session ? dry.filter((reading) => reading.session === consistency.session) : dry
  return new Map((judged.length > 0 ? judged : dry).map((reading) => [reading.cylinder, reading]))
}

/** The band that the rule in force allows, in the unit shown; undefined while nothing can be compared. */
export function bandOf(consistency: Consistency, reader: Reader): LimitBand | undefined {
  if (!consistency.highest) return undefined
  const high = inUnit(consistency.highest.pressure, reader.unit)
  const says = reader.words.diagnosis.rules[consistency.rule] ?? consistency.rule
  if (consistency.limitPressure) return { low: high - inUnit(consistency.limitPressure, reader.unit), high: undefined, says }
  if (consistency.limitPercent !== undefined) return { low: high * (1 - consistency.limitPercent / 100), high: undefined, says }
  return undefined
}

/** One tick for each cylinder, as wide as the gauge's uncertainty (95 in 100), in the unit shown. */
export function ticksOf(dry: ReadonlyMap<number, CompressionReading>, gaugeResolution: { readonly value: number; readonly unit: PressureUnit } | undefined, reader: Reader): SpreadTick[] {
  const finest = Math.max(0, ...[...dry.values()].map(({ pressure }) => decimalsOf(pressure.value)))
  return [...dry.values()].map(({ cylinder, pressure }) => ({
    cylinder,
    value: inUnit(pressure, reader.unit),
    half: inUnit({ value: readingHalfWidth(pressure, finest, gaugeResolution), unit: pressure.unit }, reader.unit),
  }))
}

/** What the engine plan says of every cylinder: the figure, a word, and how it is drawn. */
export function planOf(cylinders: readonly number[], dry: ReadonlyMap<number, CompressionReading>, evaluation: Evaluation | undefined, ticks: readonly SpreadTick[], reader: Reader): PlanCylinder[] {
  const { states } = reader.words.tests
  const band = evaluation && bandOf(evaluation.consistency, reader)
  return cylinders.map((cylinder) => {
    const reading = dry.get(cylinder)
    const leak = evaluation?.leakage.findLast((result) => result.cylinder === cylinder)
    const figure = reading ? formatFigure(reading.pressure, reader.unit, reader.locale) : ''
    const tick = ticks.find((each) => each.cylinder === cylinder)
    const place = tick && band ? placeOf(tick, band) : undefined
    if (place === 'out') return { cylinder, figure, word: states.low, state: 'low' }
    if (leak?.overLimit) return { cylinder, figure, word: states.leaks, state: 'low' }
    if (!reading) return { cylinder, word: leak ? states.tight : states.unread, state: leak ? 'sound' : 'unread' }
    const belief = evaluation?.cylinders.find((each) => each.cylinder === cylinder)
    if (!evaluation || dry.size < 2) return { cylinder, figure, word: states.kept, state: 'sound' }
    if (place === 'crosses' || (belief && belief.sound < 0.5)) return { cylinder, figure, word: states.unsure, state: 'unsure' }
    const highest = evaluation.consistency.highest?.cylinder === cylinder
    return { cylinder, figure, word: highest ? states.highest : states.sound, state: 'sound' }
  })
}

/** Pairs whose gasket is suspected more than not. */
export function bridgesOf(evaluation: Evaluation | undefined, reader: Reader): { cylinders: readonly [number, number]; word: string }[] {
  return (evaluation?.neighbours ?? []).filter(({ probability }) => probability >= 0.5).map(({ cylinders }) => ({ cylinders, word: reader.words.diagnosis.gasketAsked }))
}
