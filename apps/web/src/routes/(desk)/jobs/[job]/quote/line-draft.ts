import type { CatalogueItem, QuoteDraft, QuoteLineInput } from '@evenbore/contract'
import { parseMoney, typedMoney } from '@evenbore/words/format/money.ts'
import { parseNumber } from '@evenbore/words/format/number.ts'

/** A line as it is being typed: figures as text. */
export interface LineDraft {
  id: string
  kind: QuoteLineInput['kind']
  operation: QuoteLineInput['operation']
  cylinders: number[]
  text: string
  quantity: string
  rate: string
  tax: string
}

function draftOf(line: Omit<QuoteLineInput, 'cylinders'> & { readonly cylinders: readonly number[] }, id: string, currency: string): LineDraft {
  return { id, kind: line.kind, operation: line.operation, cylinders: [...line.cylinders], text: line.text, quantity: String(line.quantity), rate: typedMoney(line.rateMinor, currency), tax: String(line.taxBasisPoints / 100) }
}

/** The lines of a draft kept on the server, to go on typing. */
export function draftsOf(lines: QuoteDraft['lines'], newId: () => string, currency: string): LineDraft[] {
  return lines.map((line) => draftOf(line, newId(), currency))
}

/** A line from what the evidence carries. */
export function fromSuggestion(line: QuoteLineInput, id: string, currency: string): LineDraft {
  return draftOf(line, id, currency)
}

/** A line from the garage's catalogue: labour by its minutes at the garage's hourly rate, parts by piece. */
export function fromCatalogue(item: CatalogueItem, id: string, garage: { readonly labourRateMinor: number; readonly currency: string }): LineDraft {
  const labour = item.kind === 'labour'
  const quantity = labour ? Math.round(((item.minutes ?? 60) / 60) * 1000) / 1000 : 1
  const rateMinor = item.unitPriceMinor ?? (labour ? garage.labourRateMinor : 0)
  return draftOf({ kind: item.kind, operation: item.operation, cylinders: [], text: item.text, quantity, rateMinor, taxBasisPoints: item.taxBasisPoints }, id, garage.currency)
}

export type LineFault = 'text' | 'quantity' | 'rate' | 'tax'

/** A typed line as the API takes it, or which of its fields cannot be read. */
export function lineInput(line: LineDraft, currency: string): { readonly input: QuoteLineInput; readonly faults?: undefined } | { readonly faults: readonly LineFault[]; readonly input?: undefined } {
  const quantity = parseNumber(line.quantity, 'h')
  const rateMinor = parseMoney(line.rate, currency)
  const tax = parseNumber(line.tax, '%')
  const faults: LineFault[] = []
  if (!line.text.trim()) faults.push('text')
  if (quantity.error !== undefined || quantity.value <= 0 || quantity.value > 10_000 || quantity.decimals > 3) faults.push('quantity')
  if (rateMinor === undefined) faults.push('rate')
  if (tax.error !== undefined || tax.value > 100 || tax.decimals > 2) faults.push('tax')
  if (faults.length || quantity.error !== undefined || rateMinor === undefined || tax.error !== undefined) return { faults }
  return { input: { kind: line.kind, operation: line.operation, cylinders: line.cylinders, text: line.text.trim(), quantity: quantity.value, rateMinor, taxBasisPoints: Math.round(tax.value * 100) } }
}
