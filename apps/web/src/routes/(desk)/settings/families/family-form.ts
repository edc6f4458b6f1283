import type { EngineFamily, EngineSpecification, NewEngineFamily, PressureUnit } from '@evenbore/contract'
import { parseNumber } from '@evenbore/words/format/number.ts'

/** An engine family as typed: the values the desk sets; what it does not show is kept as it was. */
export interface FamilyForm {
  name: string
  layout: EngineSpecification['layout']
  fuel: EngineSpecification['fuel']
  cylinders: string
  firingOrder: string
  bore: string
  stroke: string
  ratio: string
  unit: PressureUnit
  minimum: string
  maximum: string
  spread: string
  basis: string
}
export const emptyFamily: FamilyForm = { name: '', layout: 'inline', fuel: 'petrol', cylinders: '4', firingOrder: '', bore: '', stroke: '', ratio: '', unit: 'psi', minimum: '', maximum: '', spread: '', basis: '' }

const typed = (value: number | undefined) => (value === undefined ? '' : String(value))

export function familyForm({ name, specification: of, basis }: EngineFamily): FamilyForm {
  return {
    name, layout: of.layout, fuel: of.fuel, cylinders: String(of.cylinders), firingOrder: of.firingOrder?.join('-') ?? '', bore: typed(of.boreMm), stroke: typed(of.strokeMm), ratio: typed(of.compressionRatio),
    unit: of.limits?.minimum?.unit ?? of.limits?.maximum?.unit ?? 'psi', minimum: typed(of.limits?.minimum?.value), maximum: typed(of.limits?.maximum?.value), spread: typed(of.limits?.spreadPercent), basis: Object.values(basis)[0] ?? '',
  }
}

/** Numbers with anything between: "1-3-4-2", "1, 3, 4, 2". */
function orderFrom(text: string): number[] | undefined {
  if (text.trim() === '') return []
  const numbers = text.trim().split(/[^\d]+/).map(Number)
  return numbers.every((n) => Number.isInteger(n) && n > 0) ? numbers : undefined
}

/** The family as the API takes it, laid over what it was; undefined while a figure cannot be read. */
export function familyBody(form: FamilyForm, before?: EngineFamily): NewEngineFamily | undefined {
  const read = (text: string): number | null | undefined => (text.trim() === '' ? null : parseNumber(text).value)
  const [cylinders, boreMm, strokeMm, compressionRatio, minimum, maximum, spreadPercent] = [form.cylinders, form.bore, form.stroke, form.ratio, form.minimum, form.maximum, form.spread].map(read)
  const order = orderFrom(form.firingOrder)
  if (!form.name.trim() || !cylinders || order === undefined || [boreMm, strokeMm, compressionRatio, minimum, maximum, spreadPercent].includes(undefined)) return undefined
  const { unit } = form
  const limits = {
    ...before?.specification.limits,
    minimum: minimum == null ? undefined : { value: minimum, unit },
    maximum: maximum == null ? undefined : { value: maximum, unit },
    spreadPercent: spreadPercent ?? undefined,
  }
  const specification: EngineSpecification = {
    ...before?.specification, layout: form.layout, fuel: form.fuel, cylinders,
    firingOrder: order.length ? order : undefined, boreMm: boreMm ?? undefined, strokeMm: strokeMm ?? undefined, compressionRatio: compressionRatio ?? undefined, limits,
  }
  const basis = form.basis.trim()
  return { name: form.name.trim(), specification: JSON.parse(JSON.stringify(specification)) as EngineSpecification, basis: basis ? { ...before?.basis, ...Object.fromEntries(Object.keys(before?.basis ?? { limits: '' }).map((key) => [key, before?.basis[key] ?? basis])) } : (before?.basis ?? {}), leads: before?.leads ?? null }
}
