import type { Prisma } from '../../generated/prisma/client.ts'
import type { Transaction } from '../../platform/database/database.ts'
import { newId } from '../../platform/ids.ts'

/**
 * Follow-up retests that are promised at hand-over and taken up at book-in. They are written here and not through the retests'
 * service, because that one asks jobs where they stand, and features do not depend on each other in a circle.
 */

/** Marks open promises of this engine as what a job is for; answers how many there were. */
export async function takeUp(tx: Transaction, job: string, engineId: string, retests: readonly string[]): Promise<number> {
  const { count } = await tx.retest.updateMany({ where: { id: { in: [...retests] }, engineId, kind: 'follow-up', outcome: null, fulfilledByJobId: null }, data: { fulfilledByJobId: job } })
  return count
}

/** A job that was to fulfil promises is over without having decided them: they are owed again. */
export async function letGo(tx: Transaction, job: string): Promise<void> {
  await tx.retest.updateMany({ where: { fulfilledByJobId: job, outcome: null }, data: { fulfilledByJobId: null } })
}

/** What a later reading will be compared with: the job's last session that holds readings. */
export async function baselineOf(tx: Transaction, jobId: string): Promise<string | null> {
  const session = await tx.session.findFirst({ where: { jobId, readings: { some: {} } }, orderBy: { openedAt: 'desc' }, select: { id: true } })
  return session?.id ?? null
}

/** A promise with the date, odometer value or event that it falls due by. */
export type Promised = Pick<Prisma.RetestUncheckedCreateInput, 'jobId' | 'engineId' | 'reason' | 'baselineSessionId' | 'createdById'> & {
  readonly latest: string | null
  readonly odometerKm: number | null
  readonly event: string | null
}

export async function insertPromise(tx: Transaction, { latest, odometerKm, event, ...retest }: Promised): Promise<string> {
  const due = { id: newId(), latest: latest === null ? null : new Date(`${latest}T00:00:00Z`), odometerKm, event, byId: retest.createdById ?? null }
  const { id } = await tx.retest.create({ data: { id: newId(), kind: 'follow-up', ...retest, retestDates: { create: [due] } }, select: { id: true } })
  return id
}
