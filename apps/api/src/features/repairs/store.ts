import type { Prisma } from '../../generated/prisma/client.ts'
import type { Transaction } from '../../platform/database/database.ts'
import { newId } from '../../platform/ids.ts'

export type RepairRow = Prisma.RepairGetPayload<object>
export type FindingRow = Prisma.FindingGetPayload<object>

/** The version of a job by its place among them, and the evaluation it was sent with. */
export async function readVersionAt(tx: Transaction, job: string, place: number): Promise<{ id: string; number: number; evaluationId: string | null } | null> {
  return tx.quoteVersion.findFirst({ where: { jobId: job }, orderBy: { number: 'asc' }, skip: place, select: { id: true, number: true, evaluationId: true } })
}

export function insertRepair(tx: Transaction, data: Omit<Prisma.RepairUncheckedCreateInput, 'id'>): Promise<RepairRow> {
  return tx.repair.create({ data: { id: newId(), ...data } })
}

/** The repair that was started and not finished. */
export function repairUnderWay(tx: Transaction, job: string): Promise<(RepairRow & { quoteVersion: { evaluationId: string | null } }) | null> {
  return tx.repair.findFirst({ where: { jobId: job, finishedAt: null }, include: { quoteVersion: { select: { evaluationId: true } } } })
}

export function finishRow(tx: Transaction, id: string, data: { operations: string[]; note: string | null; finishedById: string | null }): Promise<RepairRow> {
  return tx.repair.update({ where: { id }, data: { ...data, finishedAt: new Date() } })
}

/** Repairs of a job, the earliest first. */
export function readRepairs(tx: Transaction, job: string): Promise<RepairRow[]> {
  return tx.repair.findMany({ where: { jobId: job }, orderBy: [{ startedAt: 'asc' }, { id: 'asc' }] })
}

export function insertFinding(tx: Transaction, data: Omit<Prisma.FindingUncheckedCreateInput, 'id'>): Promise<FindingRow> {
  return tx.finding.create({ data: { id: newId(), ...data } })
}

export function readFindings(tx: Transaction, job: string): Promise<FindingRow[]> {
  return tx.finding.findMany({ where: { jobId: job }, orderBy: [{ at: 'asc' }, { id: 'asc' }] })
}

/** A finding of this job, and what replaced it. */
export async function readFinding(tx: Transaction, job: string, id: string): Promise<{ replacedBy: string | null } | undefined> {
  if ((await tx.finding.count({ where: { id, jobId: job } })) === 0) return undefined
  const later = await tx.finding.findFirst({ where: { replaces: id }, select: { id: true } })
  return { replacedBy: later?.id ?? null }
}

/**
 * The evaluation that a finding is held against: the one that the latest version was sent with, since it opened the engine; without a
 * version the latest that somebody decided on.
 */
export async function readBelief(tx: Transaction, job: string): Promise<string | null> {
  const version = await tx.quoteVersion.findFirst({ where: { jobId: job, evaluationId: { not: null } }, orderBy: { number: 'desc' }, select: { evaluationId: true } })
  if (version !== null) return version.evaluationId
  return (await tx.evaluation.findFirst({ where: { jobId: job }, orderBy: { createdAt: 'desc' }, select: { id: true } }))?.id ?? null
}

/** Names of people by id. */
export async function readNames(tx: Transaction, ids: readonly (string | null)[]): Promise<ReadonlyMap<string, string>> {
  const people = await tx.person.findMany({ where: { id: { in: ids.filter((id) => id !== null) } }, select: { id: true, name: true } })
  return new Map(people.map(({ id, name }) => [id, name]))
}
