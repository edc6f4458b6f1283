import type { Database, Transaction } from '../../platform/database/database.ts'
import type { Prisma } from '../../generated/prisma/client.ts'

/** Where a reading was taken. */
export type ReadingPlace = { readonly reading: string; readonly session: string; readonly job: string }

/** A photo with who took it and whether it still counts. */
export type PhotoRow = Prisma.PhotoGetPayload<{ include: { withdrawal: true } }>

export async function readReadingPlace(tx: Transaction, reading: string): Promise<ReadingPlace | undefined> {
  const row = await tx.reading.findUnique({ where: { id: reading }, select: { session: { select: { id: true, jobId: true } } } })
  return row === null ? undefined : { reading, session: row.session.id, job: row.session.jobId }
}

export async function readPhoto(tx: Transaction, photo: string): Promise<PhotoRow | undefined> {
  return (await tx.photo.findUnique({ where: { id: photo }, include: { withdrawal: true } })) ?? undefined
}

/** Every photo of a job, withdrawn ones too, in the order they were taken. */
export async function readPhotos(database: Database, job: string): Promise<PhotoRow[]> {
  return database.prisma.photo.findMany({ where: { jobId: job }, include: { withdrawal: true }, orderBy: [{ takenAt: 'asc' }, { id: 'asc' }] })
}

/** How many photos of a reading count. Holds the reading's row, so that two requests are counted one after the other. */
export async function countPhotos(tx: Transaction, reading: string): Promise<number> {
  await tx.$executeRaw`SELECT 1 FROM reading WHERE id = ${reading}::uuid FOR NO KEY UPDATE`
  return tx.photo.count({ where: { readingId: reading, withdrawal: null } })
}

/** Keeps a photo; answers false where another request with the same id came first. */
export async function insertPhoto(tx: Transaction, data: Prisma.PhotoCreateManyInput): Promise<boolean> {
  return (await tx.photo.createMany({ data: [data], skipDuplicates: true })).count === 1
}

/** Withdraws a photo; answers false where it was withdrawn before. */
export async function insertWithdrawal(tx: Transaction, data: Prisma.PhotoWithdrawalCreateManyInput): Promise<boolean> {
  return (await tx.photoWithdrawal.createMany({ data: [data], skipDuplicates: true })).count === 1
}

/** Names of people, by id. */
export async function readNames(tx: Transaction, ids: readonly (string | null | undefined)[]): Promise<ReadonlyMap<string, string>> {
  const known = [...new Set(ids.filter((id) => id != null))]
  const people = known.length === 0 ? [] : await tx.person.findMany({ where: { id: { in: known } }, select: { id: true, name: true } })
  return new Map(people.map(({ id, name }) => [id, name]))
}
