import { pictureText } from '#lib/photos/picture-text.ts'
import { openDB, type DBSchema, type IDBPDatabase } from 'idb'

/** A picture made on this device; bytes and not a Blob, which some browsers lose when they are restarted. */
interface StoredPhoto {
  readonly id: string
  readonly bytes: ArrayBuffer
  readonly keptAt: number
}
interface Schema extends DBSchema {
  photos: { key: string; value: StoredPhoto }
}

/** Pictures outlive what waits: they are shown until the server's can be. */
const KEEP_MS = 48 * 3_600_000

let opening: Promise<IDBPDatabase<Schema>> | undefined
/** A database of its own: the outbox is read whole each time something is sent, and its version stays. */
function database(): Promise<IDBPDatabase<Schema>> {
  opening ??= openDB<Schema>('evenbore-photos', 1, {
    upgrade: (db) => void db.createObjectStore('photos', { keyPath: 'id' }),
    terminated: () => (opening = undefined),
  }).catch((error: unknown) => {
    opening = undefined
    throw error
  })
  return opening
}

/** Keeps a picture; resolves when it is stored. */
export async function storePicture(id: string, picture: Blob): Promise<void> {
  const bytes = await picture.arrayBuffer()
  await (await database()).put('photos', { id, bytes, keptAt: Date.now() })
}

/** A picture made here, if it still is. */
export async function storedPicture(id: string): Promise<Blob | undefined> {
  const stored = await (await database()).get('photos', id)
  return stored && new Blob([stored.bytes], { type: 'image/jpeg' })
}

/** A stored picture in base64, as the server takes it. */
export async function storedPictureText(id: string): Promise<string | undefined> {
  const picture = await storedPicture(id)
  return picture && pictureText(picture)
}

/** Drops old pictures, but for those that are still needed. */
export async function forgetOldPictures(needed: ReadonlySet<string>, now = Date.now()): Promise<void> {
  const store = (await database()).transaction('photos', 'readwrite').store
  for (let cursor = await store.openCursor(); cursor; cursor = await cursor.continue()) {
    if (cursor.value.keptAt < now - KEEP_MS && !needed.has(cursor.value.id)) await cursor.delete()
  }
}
