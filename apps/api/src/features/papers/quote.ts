import { authorisationWords } from '@evenbore/words/sentences/answer.ts'
import { problem } from '../../platform/problems/problem.ts'
import type { Material } from './material.ts'
import type { Here } from './reader.ts'
import type { Sheet } from './sheet.ts'

/**
 * The newest version of the quote, for the customer.
 * @throws problem `wrong-state` where none was sent
 */
export function quoteSheet(sheet: Sheet, { job, quote }: Material, here: Here): void {
  const { words } = here
  const version = quote.versions.toSorted((a, b) => b.number - a.number)[0]
  if (version === undefined) throw problem('wrong-state', 'No version of the quote has been sent yet: there is nothing to put on paper.')
  const { currency, taxes, totalMinor, pricesIncludeTax } = version.totals
  sheet.text(`${words.job.complaint}: “${job.complaint}”`)
  sheet.heading(words.job.version(version.number))
  sheet.table(
    [{ head: words.quote.work, share: 6 }, { head: words.quote.quantity, share: 1.4, figures: true }, { head: words.quote.amount, share: 2, figures: true }],
    [
      ...version.lines.map((line) => ({ cells: [line.cylinders.length > 0 ? `${line.text}, ${words.job.atCylinders(line.cylinders)}` : line.text, `${here.number(line.quantity, 3)}${line.unit === 'hour' ? ' h' : ''}`, here.money(line.amountMinor, currency)] })),
      ...taxes.map((tax) => ({ cells: [`${words.quote.taxAt(here.number(tax.basisPoints / 100, 2))}${pricesIncludeTax ? ` (${words.quote.includesTax})` : ''}`, '', here.money(tax.taxMinor, currency)] })),
      { cells: [words.quote.total, '', here.money(totalMinor, currency)], strong: true },
    ],
  )
  for (const given of version.authorisations) sheet.text(authorisationWords(given, words, here))
  sheet.signature(words.quote.authorise, words.job.date)
}
