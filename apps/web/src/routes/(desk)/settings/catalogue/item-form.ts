import { OPERATIONS, type CatalogueItem, type NewCatalogueItem } from '@evenbore/contract'
import { parseMoney, typedMoney } from '@evenbore/words/format/money.ts'
import { parseNumber } from '@evenbore/words/format/number.ts'
import { basisPointsFrom, typedPercent } from '../percent.ts'

/** A line of the catalogue as typed. */
export interface ItemForm {
  kind: 'labour' | 'part'
  operation: string
  text: string
  minutes: string
  price: string
  tax: string
}
export const emptyItem: ItemForm = { kind: 'labour', operation: '', text: '', minutes: '60', price: '', tax: '20' }

export function itemForm(item: CatalogueItem, currency: string): ItemForm {
  return {
    kind: item.kind, operation: item.operation ?? '', text: item.text, minutes: item.minutes === null ? '' : String(item.minutes),
    price: item.unitPriceMinor === null ? '' : typedMoney(item.unitPriceMinor, currency), tax: typedPercent(item.taxBasisPoints),
  }
}

/** The line as the API takes it; undefined while a figure cannot be read. */
export function itemBody(form: ItemForm, currency: string): NewCatalogueItem | undefined {
  const minutes = form.kind === 'part' || form.minutes.trim() === '' ? null : parseNumber(form.minutes).value
  const unitPriceMinor = form.price.trim() === '' ? null : parseMoney(form.price, currency)
  const taxBasisPoints = basisPointsFrom(form.tax)
  if (!form.text.trim() || minutes === undefined || unitPriceMinor === undefined || taxBasisPoints === undefined) return undefined
  return { kind: form.kind, operation: OPERATIONS.find((operation) => operation === form.operation) ?? null, text: form.text.trim(), minutes, unitPriceMinor, taxBasisPoints }
}
