import type { Actor, Evaluation, SuggestedLine } from '@evenbore/contract'
import type { Database } from '../../platform/database/database.ts'
import { opinionForDecision } from '../evaluations/service.ts'
import { demandJob } from '../jobs/service.ts'
import { readCatalogue, readPricing, type CatalogueRow, type GaragePricing } from './store.ts'

/** Courses less likely to cure than this are not worth a line; the first is always shown. */
const WORTH_A_LINE = 0.05
const MOST_OPERATIONS = 5

type Option = Evaluation['repairs'][number]

/**
 * Lines that the evidence carries, in the order in which the evaluation would try them, priced from the garage's catalogue and labour
 * rate. An operation that the catalogue does not know gets a labour line of the model's own expected minutes.
 */
export async function suggestedLines(database: Database, actor: Actor, job: string): Promise<SuggestedLine[]> {
  const facts = await demandJob(database.prisma, actor, 'quotes.read', job)
  const { evaluation } = await opinionForDecision(database, job)
  const options = evaluation.repairs.filter(({ cures }, at) => at === 0 || cures >= WORTH_A_LINE).slice(0, MOST_OPERATIONS)
  const pricing = await readPricing(database.prisma, facts.garage)
  const catalogue = await readCatalogue(database.prisma, facts.garage, options.map(({ operation }) => operation))
  return options.flatMap((option) => linesOf(option, catalogue.filter(({ operation }) => operation === option.operation), pricing))
}

function linesOf(option: Option, items: readonly CatalogueRow[], pricing: GaragePricing): SuggestedLine[] {
  const lines = items.map((item) => lineOf(option, item, pricing))
  if (lines.some(({ kind }) => kind === 'labour')) return lines
  const labour = { kind: 'labour', text: option.operation.replaceAll('-', ' '), minutes: option.expectedMinutes, unitPriceMinor: null, operation: option.operation, taxBasisPoints: pricing.taxBasisPoints }
  return [lineOf(option, labour, pricing), ...lines]
}

function lineOf(option: Option, item: CatalogueRow, pricing: GaragePricing): SuggestedLine {
  const labour = item.kind === 'labour'
  return {
    kind: labour ? 'labour' : 'part', operation: option.operation, cylinders: option.cylinders ?? [], text: item.text,
    quantity: labour ? hours(item.minutes ?? option.expectedMinutes) : 1, rateMinor: labour ? pricing.labourRateMinor : (item.unitPriceMinor ?? 0), taxBasisPoints: item.taxBasisPoints,
    says: option.says ?? `Cures with a probability of ${Math.round(option.cures * 100)} in 100.`, cures: option.cures,
  }
}

/** Hours to the hundredth, at least one: a line of nothing is no line. */
function hours(minutes: number): number {
  return Math.max(1, Math.round((minutes / 60) * 100)) / 100
}
