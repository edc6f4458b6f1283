import type { QuoteLineInput } from '@evenbore/contract'
import type { Prisma } from '../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { sqlFile } from '../../platform/database/sql-file.ts'
import { newId } from '../../platform/ids.ts'

/** What a garage's prices depend on. */
export type GaragePricing = { readonly currency: string; readonly pricesIncludeTax: boolean; readonly labourRateMinor: number; readonly taxBasisPoints: number }

export async function readPricing(tx: Transaction, garage: string): Promise<GaragePricing> {
  return tx.garage.findUniqueOrThrow({ where: { id: garage }, select: { currency: true, pricesIncludeTax: true, labourRateMinor: true, taxBasisPoints: true } })
}

export type CatalogueRow = { readonly kind: string; readonly operation: string | null; readonly text: string; readonly minutes: number | null; readonly unitPriceMinor: number | null; readonly taxBasisPoints: number }

/** What the garage charges for some operations, labour before parts. */
export function readCatalogue(tx: Transaction, garage: string, operations: readonly string[]): Promise<CatalogueRow[]> {
  return tx.catalogueItem.findMany({ where: { garageId: garage, operation: { in: [...operations] }, retiredAt: null }, orderBy: [{ kind: 'asc' }, { text: 'asc' }] })
}

export type DraftRow = Prisma.QuoteDraftGetPayload<object>

export function readDraft(tx: Transaction, job: string): Promise<DraftRow | null> {
  return tx.quoteDraft.findUnique({ where: { jobId: job } })
}

type DraftData = { readonly lines: QuoteLineInput[]; readonly note: string | null; readonly authorId: string }

/** Starts a draft; false where there is one. */
export async function insertDraft(tx: Transaction, job: string, { lines, note, authorId }: DraftData): Promise<boolean> {
  const made = await tx.$executeRaw`
    INSERT INTO quote_draft (id, job_id, lines, note, author_id) VALUES (${newId()}::uuid, ${job}::uuid, ${JSON.stringify(lines)}::jsonb, ${note}, ${authorId}::uuid)
    ON CONFLICT (job_id) DO NOTHING`
  return made === 1
}

/** Edits a draft that is still at `version`; false when it is not. */
export async function updateDraft(tx: Transaction, job: string, version: number, data: DraftData): Promise<boolean> {
  return (await tx.quoteDraft.updateMany({ where: { jobId: job, version }, data: { ...data, version: { increment: 1 }, updatedAt: new Date() } })).count === 1
}

export async function deleteDraft(tx: Transaction, job: string, version?: number): Promise<boolean> {
  return (await tx.quoteDraft.deleteMany({ where: { jobId: job, version } })).count === 1
}

const WHOLE = {
  quoteLines: { orderBy: { position: 'asc' } }, approvals: { orderBy: [{ at: 'asc' }, { id: 'asc' }] }, authorisations: { orderBy: [{ at: 'asc' }, { id: 'asc' }] },
} as const satisfies Prisma.QuoteVersionInclude
export type VersionRow = Prisma.QuoteVersionGetPayload<{ include: typeof WHOLE }>
export type ApprovalRow = VersionRow['approvals'][number]
export type AuthorisationRow = VersionRow['authorisations'][number]

/** Versions of a job in the order of their numbers, each with its lines and answers. */
export function readVersions(tx: Transaction, job: string): Promise<VersionRow[]> {
  return tx.quoteVersion.findMany({ where: { jobId: job }, include: WHOLE, orderBy: { number: 'asc' } })
}

export function readVersion(tx: Transaction, id: string): Promise<VersionRow | null> {
  return tx.quoteVersion.findUnique({ where: { id }, include: WHOLE })
}

export async function insertVersion(
  tx: Transaction, version: Omit<Prisma.QuoteVersionUncheckedCreateInput, 'quoteLines'>, lines: readonly Omit<Prisma.QuoteLineUncheckedCreateInput, 'id' | 'quoteVersionId' | 'position'>[],
): Promise<VersionRow> {
  return tx.quoteVersion.create({ data: { ...version, quoteLines: { create: lines.map((line, position) => ({ id: newId(), position, ...line })) } }, include: WHOLE })
}

export function insertApproval(tx: Transaction, data: Omit<Prisma.ApprovalUncheckedCreateInput, 'id'>): Promise<ApprovalRow> {
  return tx.approval.create({ data: { id: newId(), ...data } })
}

export function insertAuthorisation(tx: Transaction, data: Omit<Prisma.AuthorisationUncheckedCreateInput, 'id'>): Promise<AuthorisationRow> {
  return tx.authorisation.create({ data: { id: newId(), ...data } })
}

/** Was a repair of the job started after this moment, or is one under way? */
export async function repairSince(tx: Transaction, job: string, since: Date): Promise<boolean> {
  return (await tx.repair.count({ where: { jobId: job, OR: [{ startedAt: { gt: since } }, { finishedAt: null }] } })) > 0
}

/**
 * Is the author the chain's only owner, with no manager of the garage whose limit covers the total? Then nobody else could answer.
 */
export async function isLoneOwner(tx: Transaction, author: string, garage: string, totalMinor: number): Promise<boolean> {
  const owners = await tx.personRole.findMany({ where: { role: 'owner', person: { leftAt: null } }, select: { personId: true } })
  if (!owners.some(({ personId }) => personId === author) || owners.some(({ personId }) => personId !== author)) return false
  const managers = await tx.personRole.count({ where: { role: 'manager', garageId: garage, personId: { not: author }, approvalLimitMinor: { gte: totalMinor }, person: { leftAt: null } } })
  return managers === 0
}

export type WaitingRow = {
  readonly job: string; readonly code: string; readonly plate: string; readonly vehicle: string; readonly id: string; readonly number: number; readonly sentAt: Date
  readonly authorId: string; readonly author: string
}
const WAITING = { name: 'quotes-waiting', text: sqlFile(import.meta.url, './sql/waiting.sql') }

/** Versions of a garage that wait for a manager's answer, the longest waiting first. */
export function readWaiting(database: Database, garage: string): Promise<WaitingRow[]> {
  return database.run<WaitingRow>(WAITING, [garage])
}

/** Names of people by id. */
export async function readNames(tx: Transaction, ids: readonly (string | null)[]): Promise<ReadonlyMap<string, string>> {
  const people = await tx.person.findMany({ where: { id: { in: ids.filter((id) => id !== null) } }, select: { id: true, name: true } })
  return new Map(people.map(({ id, name }) => [id, name]))
}
