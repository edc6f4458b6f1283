import type { QuoteVersion } from '@evenbore/contract'

type Line = QuoteVersion['lines'][number]

/** What one version of a quote changed against the one before. */
export interface VersionDifference {
  readonly added: readonly Line[]
  readonly dropped: readonly Line[]
  readonly changed: readonly { readonly before: Line; readonly after: Line }[]
  readonly totalBefore: number
  readonly totalAfter: number
}

const same = (a: Line, b: Line) => a.amountMinor === b.amountMinor && a.quantity === b.quantity && a.rateMinor === b.rateMinor && a.taxBasisPoints === b.taxBasisPoints

/** Pairs lines by what they say (an operation and its text), each once; the rest were added or dropped. */
export function versionDifference(before: Pick<QuoteVersion, 'lines' | 'totals'>, after: Pick<QuoteVersion, 'lines' | 'totals'>): VersionDifference {
  const left = [...before.lines]
  const added: Line[] = []
  const changed: { before: Line; after: Line }[] = []
  for (const line of after.lines) {
    const at = left.findIndex((other) => other.kind === line.kind && other.text === line.text)
    const byOperation = at >= 0 ? at : left.findIndex((other) => line.operation !== null && other.operation === line.operation && other.kind === line.kind)
    if (byOperation < 0) {
      added.push(line)
      continue
    }
    const [paired] = left.splice(byOperation, 1)
    if (paired && (!same(paired, line) || paired.text !== line.text)) changed.push({ before: paired, after: line })
  }
  return { added, dropped: left, changed, totalBefore: before.totals.totalMinor, totalAfter: after.totals.totalMinor }
}
