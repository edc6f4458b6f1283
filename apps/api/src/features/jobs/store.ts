import type { Prisma } from '../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { anywhere } from '../../platform/database/sql-file.ts'
import { newId } from '../../platform/ids.ts'
import type { JobFacts } from './facts.ts'
import type { Needles } from './needles.ts'
import { FLOOR, LIST, OF_JOBS, SEARCH } from './statements.ts'

/** What the floor's one statement reads. */
export type FloorRow = {
  readonly garage: string
  readonly name: string
  readonly bays: readonly { readonly id: string; readonly name: string }[]
  readonly jobs: readonly JobFacts[]
  readonly retests: readonly FloorRetestRow[]
}
export type FloorRetestRow = {
  readonly retest: string; readonly job: string; readonly code: string; readonly plate: string; readonly kind: 'release' | 'follow-up'
  readonly reason: string; readonly due: string | null; readonly overdueDays: number | null; readonly bookedFor: number | null
}

/** The facts of one job as the transaction sees them; undefined where there is no such job. */
export async function factsOfJob(tx: Transaction, id: string): Promise<JobFacts | undefined> {
  return (await tx.$queryRawUnsafe<JobFacts[]>(OF_JOBS, [id]))[0]
}

/** The floor of a garage; undefined where there is no such garage. */
export async function floorOf(database: Database, garage: string): Promise<FloorRow | undefined> {
  return (await database.run<{ floor: FloorRow }>(FLOOR, [garage]))[0]?.floor
}

/** How a list of jobs is asked for. */
export type JobList = { readonly needles: Needles | null; readonly people: boolean; readonly open: boolean | null; readonly after: readonly [string, string] | undefined; readonly limit: number }

/** Jobs of a garage, newest first. One more than `limit`, where there is one. */
export function jobsOf(database: Database, garage: string, { needles, people, open, after, limit }: JobList): Promise<JobFacts[]> {
  return database.run<JobFacts>(LIST, [garage, ...patterns(needles), people, needles === null, open, after?.[0] ?? null, after?.[1] ?? null, limit + 1])
}

/** Up to twenty jobs of a garage that fit what was typed, the likeliest first. */
export function searchJobs(database: Database, garage: string, needles: Needles, people: boolean): Promise<(JobFacts & { matched: string })[]> {
  return database.run<JobFacts & { matched: string }>(SEARCH, [garage, ...patterns(needles), people])
}

function patterns(needles: Needles | null): unknown[] {
  if (needles === null) return [null, null, null, null, null]
  const { code, number, plateKey, words, digits } = needles
  return [code, number === null ? null : `% ${number}`, plateKey === null ? null : anywhere(plateKey), words?.map(anywhere) ?? null, digits === null ? null : anywhere(digits)]
}

const WITH = {
  customer: true,
  vehicle: { include: { fittings: { where: { until: null }, select: { engineId: true } } } },
  garage: { select: { currency: true } },
  contacts: { orderBy: [{ at: 'asc' }, { id: 'asc' }] },
  partsOrders: { orderBy: [{ orderedAt: 'asc' }, { id: 'asc' }] },
} as const satisfies Prisma.JobInclude
/** A job with all that its page shows, but for its engine and the facts of its standing. */
export type JobRow = Prisma.JobGetPayload<{ include: typeof WITH }>

export function jobById(tx: Transaction, id: string): Promise<JobRow | null> {
  return tx.job.findUnique({ where: { id }, include: WITH })
}

/** The next code of a garage, such as K 27. Its row stays locked until the transaction ends: ask last. */
export async function nextCode(tx: Transaction, garage: string): Promise<string> {
  const { codeLetter, lastJobNumber } = await tx.garage.update({ where: { id: garage }, data: { lastJobNumber: { increment: 1 } }, select: { codeLetter: true, lastJobNumber: true } })
  return `${codeLetter} ${lastJobNumber}`
}

export async function insertJob(tx: Transaction, job: Omit<Prisma.JobUncheckedCreateInput, 'id'>): Promise<string> {
  return (await tx.job.create({ data: { id: newId(), ...job }, select: { id: true } })).id
}

/** Changes a job; with `version` only while it is at that version. False when nothing was changed. */
export async function updateJob(tx: Transaction, id: string, data: Prisma.JobUncheckedUpdateManyInput, version?: number): Promise<boolean> {
  return (await tx.job.updateMany({ where: { id, version }, data: { ...data, version: { increment: 1 } } })).count === 1
}

/** Locks a job's row, so that what is decided on its standing still holds at the commit. */
export async function lockJob(tx: Transaction, id: string): Promise<void> {
  await tx.$queryRaw`SELECT 1 FROM job WHERE id = ${id}::uuid FOR UPDATE`
}

/** Names of people by their ids. */
export async function names(tx: Transaction, ids: readonly (string | null)[]): Promise<ReadonlyMap<string, string>> {
  const wanted = [...new Set(ids.filter((id) => id !== null))]
  if (wanted.length === 0) return new Map()
  const people = await tx.person.findMany({ where: { id: { in: wanted } }, select: { id: true, name: true } })
  return new Map(people.map(({ id, name }) => [id, name]))
}

/** A talk or a note. */
export async function insertContact(tx: Transaction, contact: Omit<Prisma.ContactUncheckedCreateInput, 'id'>): Promise<JobRow['contacts'][number]> {
  return tx.contact.create({ data: { id: newId(), ...contact } })
}

export async function insertPart(tx: Transaction, part: Omit<Prisma.PartsOrderUncheckedCreateInput, 'id'>): Promise<JobRow['partsOrders'][number]> {
  return tx.partsOrder.create({ data: { id: newId(), ...part } })
}

export function partById(tx: Transaction, id: string): Promise<JobRow['partsOrders'][number] | null> {
  return tx.partsOrder.findUnique({ where: { id } })
}

export function partsOf(tx: Transaction, jobId: string): Promise<JobRow['partsOrders']> {
  return tx.partsOrder.findMany({ where: { jobId }, orderBy: [{ orderedAt: 'asc' }, { id: 'asc' }], take: 1000 })
}

/** Records that parts have come; once is enough. */
export async function arrived(tx: Transaction, id: string, by: string | null): Promise<void> {
  await tx.partsOrder.updateMany({ where: { id, arrivedAt: null }, data: { arrivedAt: new Date(), arrivedById: by } })
}
