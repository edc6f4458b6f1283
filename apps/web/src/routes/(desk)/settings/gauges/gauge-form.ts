import type { GarageGauge, Gauge, LeakageTester, NewGauge, PressureUnit } from '@evenbore/contract'
import type { Reader } from '@evenbore/words/reader.ts'
import { formatNumber, parseNumber } from '@evenbore/words/format/number.ts'
import { formatPressure } from '@evenbore/words/format/pressure.ts'

/** An instrument as typed. */
export interface GaugeForm {
  kind: GarageGauge['kind']
  name: string
  unit: PressureUnit
  /** Span of a gauge, supply of a leakage tester. */
  span: string
  accuracyClass: string
  resolution: string
  restrictor: string
  checkDue: string
}
export const emptyGauge: GaugeForm = { kind: 'compression', name: '', unit: 'psi', span: '', accuracyClass: '1.6', resolution: '', restrictor: '', checkDue: '' }

const isTester = (specification: GarageGauge['specification']): specification is LeakageTester => 'supply' in specification

export function gaugeForm({ kind, name, specification, checkDue }: GarageGauge): GaugeForm {
  const base = { ...emptyGauge, kind, name, checkDue: checkDue ?? '' }
  if (isTester(specification)) return { ...base, unit: specification.supply.unit, span: String(specification.supply.value), restrictor: String(specification.restrictorMm) }
  return { ...base, unit: specification.span.unit, span: String(specification.span.value), accuracyClass: String(specification.accuracyClass), resolution: specification.resolution ? String(specification.resolution.value) : '' }
}

/** The instrument as the API takes it; undefined while a figure cannot be read. */
export function gaugeBody(form: GaugeForm): NewGauge | undefined {
  const read = (typed: string) => parseNumber(typed).value
  const span = read(form.span)
  if (!form.name.trim() || span === undefined) return undefined
  const head = { name: form.name.trim(), checkDue: form.checkDue || null }
  if (form.kind === 'leakage') {
    const restrictorMm = read(form.restrictor)
    return restrictorMm === undefined ? undefined : { ...head, kind: 'leakage', specification: { supply: { value: span, unit: form.unit }, restrictorMm } }
  }
  const accuracyClass = read(form.accuracyClass)
  const resolution = form.resolution.trim() === '' ? null : read(form.resolution)
  if (accuracyClass === undefined || resolution === undefined) return undefined
  const specification: Gauge = { span: { value: span, unit: form.unit }, accuracyClass, ...(resolution === null ? {} : { resolution: { value: resolution, unit: form.unit } }) }
  return { ...head, kind: form.kind, specification }
}

/** An instrument in a few words: "300 psi, class 1.6". */
export function gaugeWords({ specification }: GarageGauge, { unit, locale, words }: Reader): string {
  if (isTester(specification)) return `${formatPressure(specification.supply, unit, locale)}, ${formatNumber(specification.restrictorMm, locale, 2)} mm`
  return words.tests.gauge(formatPressure(specification.span, unit, locale), formatNumber(specification.accuracyClass, locale, 2))
}
