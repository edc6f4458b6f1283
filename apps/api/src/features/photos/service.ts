import { PHOTO_LIMITS, type Actor, type Photo, type PhotoPut, type PictureSize } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import type { KeptFiles } from '../../platform/files/kept-files.ts'
import { hashOf } from '../../platform/http/idempotency.ts'
import { emit } from '../../platform/live/outbox.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { demandOpen, jobPlace, type JobPlace } from '../sessions/service.ts'
import { appendTrail } from '../trail/service.ts'
import { cleanPicture } from './picture.ts'
import { countPhotos, insertPhoto, insertWithdrawal, readNames, readPhoto, readPhotos, readReadingPlace, type PhotoRow } from './store.ts'

/** The photos of a job's readings, withdrawn ones too. */
export async function listPhotos(database: Database, actor: Actor, job: string): Promise<Photo[]> {
  const place = await jobPlace(database.prisma, job)
  demand(actor, 'photos.read', { garage: place.garage, bay: place.bay })
  return shown(database.prisma, await readPhotos(database, job))
}

/**
 * The picture itself, JPEG.
 * @throws problem `not-found`, also where the file is missing or damaged
 */
export async function readPicture(database: Database, files: KeptFiles, actor: Actor, photo: string, size: PictureSize): Promise<Buffer> {
  const { row } = await photoFor(database.prisma, actor, 'photos.read', photo)
  const picture = await files.read(size === 'small' ? row.smallSha256 : row.sha256)
  if (picture === undefined) throw problem('not-found', 'The file of this photo is missing or damaged; its record stands.')
  return picture
}

/**
 * Attaches a photo to a reading; the same request again is answered as the first time. The files are on the disk before the record is:
 * a file without a record does no harm, a record without its file would.
 * @throws problems `not-found`, `not-allowed`, `invalid-request` (`/picture`, `/takenBy`), `id-reused`, `wrong-state`, `conflict`
 */
export async function keepPhoto(database: Database, files: KeptFiles, actor: Actor, reading: string, photo: string, put: PhotoPut): Promise<{ readonly isNew: boolean; readonly photo: Photo }> {
  const requestHash = hashOf([reading, put])
  const place = await readingPlace(database.prisma, actor, reading)
  const before = await readPhoto(database.prisma, photo)
  if (before !== undefined) return { isNew: false, photo: await again(database.prisma, before, requestHash) }
  if (put.offline === undefined) demandOpen(place)
  const { full, small, width, height } = await cleanPicture(put.picture)
  const [sha256, smallSha256] = [await files.keep(full), await files.keep(small)]
  return database.transaction(async (tx) => {
    const takenBy = put.takenBy ?? personOf(actor)
    if (put.takenBy !== undefined && !(await readNames(tx, [put.takenBy])).has(put.takenBy)) throw badField('/takenBy', 'the id of a person of the chain', put.takenBy)
    if ((await countPhotos(tx, reading)) >= PHOTO_LIMITS.ofOneReading) throw problem('conflict', `This reading has ${PHOTO_LIMITS.ofOneReading} photos, the most there may be. Withdraw one first.`)
    const offline = put.offline ?? false
    const isNew = await insertPhoto(tx, {
      id: photo, jobId: place.id, readingId: reading, sha256, smallSha256, bytes: full.length, width, height,
      takenAt: put.takenAt, takenById: takenBy, tabletId: actor.kind === 'tablet' ? actor.tablet : null, offline, requestHash,
    })
    const row = (await readPhoto(tx, photo))!
    if (!isNew) return { isNew, photo: await again(tx, row, requestHash) }
    await tell(tx, actor, place, 'photo', { photo, reading, sha256, bytes: full.length, width, height, takenAt: put.takenAt, takenBy, offline })
    return { isNew, photo: await showOne(tx, row) }
  })
}

/** Withdraws a photo with a reason; withdrawn once, the first reason stands. The picture stays. */
export async function withdrawPhoto(database: Database, actor: Actor, photo: string, reason: string): Promise<Photo> {
  return database.transaction(async (tx) => {
    const { row, place } = await photoFor(tx, actor, 'photos.write', photo)
    if (await insertWithdrawal(tx, { photoId: photo, reason, byId: personOf(actor) })) await tell(tx, actor, place, 'photo-withdrawn', { photo, reading: row.readingId, reason })
    return showOne(tx, (await readPhoto(tx, photo))!)
  })
}

async function tell(tx: Transaction, actor: Actor, place: JobPlace, kind: 'photo' | 'photo-withdrawn', body: Readonly<Record<string, unknown>>): Promise<void> {
  await emit(tx, { kind: 'photo.changed', garageId: place.garage, jobId: place.id, engineId: place.engine, body: { photo: body['photo'], reading: body['reading'] } })
  await appendTrail(tx, { engine: place.engine, job: place.id, garage: place.garage, kind, actor, body })
}

async function readingPlace(tx: Transaction, actor: Actor, reading: string): Promise<JobPlace> {
  const where = await readReadingPlace(tx, reading)
  if (where === undefined) throw problem('not-found')
  const place = await jobPlace(tx, where.job)
  demand(actor, 'photos.write', { garage: place.garage, bay: place.bay })
  return place
}

async function photoFor(tx: Transaction, actor: Actor, action: 'photos.read' | 'photos.write', photo: string): Promise<{ readonly row: PhotoRow; readonly place: JobPlace }> {
  const row = await readPhoto(tx, photo)
  if (row === undefined) throw problem('not-found')
  const place = await jobPlace(tx, row.jobId)
  demand(actor, action, { garage: place.garage, bay: place.bay })
  return { row, place }
}

/** As it was answered the first time: what happened since, such as a withdrawal, is shown too, being no part of the request. */
async function again(tx: Transaction, row: PhotoRow, requestHash: string): Promise<Photo> {
  if (row.requestHash !== requestHash) throw problem('id-reused', 'A photo with this id was sent before with another body.')
  return showOne(tx, row)
}

async function showOne(tx: Transaction, row: PhotoRow): Promise<Photo> {
  return (await shown(tx, [row]))[0]!
}

async function shown(tx: Transaction, rows: readonly PhotoRow[]): Promise<Photo[]> {
  const names = await readNames(tx, rows.flatMap((row) => [row.takenById, row.withdrawal?.byId]))
  const person = (id: string | null) => (id === null ? null : { id, name: names.get(id) ?? '' })
  return rows.map(({ id, jobId, readingId, sha256, bytes, width, height, takenAt, receivedAt, takenById, offline, withdrawal }) => ({
    id, job: jobId, reading: readingId, sha256, bytes, width, height, takenAt: takenAt.toISOString(), receivedAt: receivedAt.toISOString(), takenBy: person(takenById), offline,
    withdrawn: withdrawal === null ? null : { at: withdrawal.at.toISOString(), by: person(withdrawal.byId), reason: withdrawal.reason },
  }))
}
