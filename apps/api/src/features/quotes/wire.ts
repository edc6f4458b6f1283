import type { Approval, Authorisation, PersonRef, QuoteDraft, QuoteLine, QuoteLineInput, QuoteVersion, Totals } from '@evenbore/contract'
import type { ApprovalRow, AuthorisationRow, DraftRow, VersionRow } from './store.ts'
import { pricedLine, totalsOf, type Pricing } from './totals.ts'

type Names = ReadonlyMap<string, string>

/** Everybody whom a version names. */
export function peopleOf(versions: readonly VersionRow[]): (string | null)[] {
  return versions.flatMap((version) => [version.authorId, ...version.approvals.flatMap(({ byId, deputyForId }) => [byId, deputyForId]), ...version.authorisations.map(({ recordedById }) => recordedById)])
}

/** A draft with its amounts at the garage's present way of pricing. */
export function toDraft(row: DraftRow, pricing: Pricing, names: Names): QuoteDraft {
  const lines = (row.lines as unknown as QuoteLineInput[]).map((line) => pricedLine(line, pricing.currency))
  return { lines, note: row.note, author: ref(row.authorId, names), totals: totalsOf(lines, pricing)!, updatedAt: row.updatedAt.toISOString(), version: row.version }
}

/** A version as sent, with its answers. */
export function toVersion(row: VersionRow, names: Names): QuoteVersion {
  return {
    id: row.id, job: row.jobId, number: row.number, author: ref(row.authorId, names), note: row.note, evaluation: row.evaluationId,
    lines: row.quoteLines.map(toLine), totals: totalsAsSent(row), sentAt: row.sentAt.toISOString(),
    approvals: row.approvals.map((approval) => toApproval(approval, names)), authorisations: row.authorisations.map((authorisation) => toAuthorisation(authorisation, names)),
  }
}

export function toApproval(row: ApprovalRow, names: Names): Approval {
  const { id, kind, ownQuote, reason } = row
  return { id, kind: kind as Approval['kind'], by: ref(row.byId, names), deputyFor: row.deputyForId === null ? null : ref(row.deputyForId, names), ownQuote, reason, at: row.at.toISOString() }
}

export function toAuthorisation(row: AuthorisationRow, names: Names): Authorisation {
  const { id, personName, numberCalled, amountMinor, currency, partsBack, note } = row
  return {
    id, quoteVersion: row.quoteVersionId, kind: row.kind as Authorisation['kind'], personName, method: row.method as Authorisation['method'], numberCalled, amountMinor, currency, partsBack, note,
    givenAt: row.givenAt.toISOString(), recordedBy: row.recordedById === null ? null : ref(row.recordedById, names), at: row.at.toISOString(),
  }
}

/** The totals as they were sent; the parts for each rate follow from the lines, which never change. */
export function totalsAsSent(row: VersionRow): Totals {
  const { currency, pricesIncludeTax, netMinor, taxMinor, totalMinor } = row
  return { currency, pricesIncludeTax, netMinor, taxMinor, totalMinor, taxes: totalsOf(row.quoteLines.map(toLine), row)?.taxes ?? [] }
}

function toLine(row: VersionRow['quoteLines'][number]): QuoteLine {
  const { cylinders, text, rateMinor, taxBasisPoints, amountMinor } = row
  return {
    kind: row.kind as QuoteLine['kind'], operation: row.operation as QuoteLine['operation'], cylinders, text, quantity: row.quantity.toNumber(), unit: row.unit as QuoteLine['unit'], rateMinor, taxBasisPoints, amountMinor,
  }
}

function ref(id: string, names: Names): PersonRef {
  return { id, name: names.get(id) ?? '' }
}
