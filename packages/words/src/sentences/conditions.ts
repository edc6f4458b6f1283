import type { Conditions } from '@evenbore/contract'
import { formatNumber } from '../format/number.ts'
import type { Words } from '../en.ts'

/** Conditions as one line: "hot, throttle open, all plugs out, 10 strokes, Gauge 4"; `gauge` null says that none was named, undefined leaves it out. */
export function conditionWords(conditions: Conditions, gauge: { readonly name: string; readonly accuracyClass?: number } | null | undefined, words: Words, locale: string): string {
  const { tests } = words
  return [
    tests.engineHeat[conditions.engine],
    tests.throttle[conditions.throttle],
    tests.plugsOut[conditions.plugsOut],
    conditions.strokes === undefined ? '' : tests.strokes(conditions.strokes),
    conditions.crankingRpm === undefined ? '' : tests.rpm(formatNumber(conditions.crankingRpm, locale)),
    conditions.batteryVolts === undefined ? '' : tests.volts(formatNumber(conditions.batteryVolts, locale, 1)),
    conditions.clearancesSet ? tests.clearancesSet : '',
    conditions.headTorqued ? tests.headTorqued : '',
    gauge === undefined ? '' : gauge ? (gauge.accuracyClass === undefined ? gauge.name : tests.gauge(gauge.name, formatNumber(gauge.accuracyClass, locale, 2))) : tests.noGauge,
  ]
    .filter(Boolean)
    .join(', ')
}
