import { openDB, type DBSchema, type IDBPDatabase } from 'idb'
import type { OutboxEntry } from './outbox-entry.ts'

/** An answer of the server kept for a day without network. */
export interface KeptAnswer {
  readonly path: string
  readonly keptAt: number
  readonly value: unknown
}

/** Somebody who took over this tablet by PIN while there was a network, and may again without one for a day. */
export interface KnownPerson {
  readonly person: string
  readonly name: string
  readonly lastOnline: number
  readonly salt: Uint8Array<ArrayBuffer>
  readonly verifier: Uint8Array<ArrayBuffer>
  readonly wrongTries: number
}

interface Schema extends DBSchema {
  outbox: { key: number; value: OutboxEntry; indexes: { id: string } }
  kept: { key: string; value: KeptAnswer; indexes: { keptAt: number } }
  people: { key: string; value: KnownPerson }
  drafts: { key: string; value: { readonly key: string; readonly value: unknown } }
}

let opening: Promise<IDBPDatabase<Schema>> | undefined

/** The tablet's own database. A newer version in another tab makes this one let go, so that neither is stuck. */
export function database(): Promise<IDBPDatabase<Schema>> {
  opening ??= openDB<Schema>('evenbore', 1, {
    upgrade(db) {
      db.createObjectStore('outbox', { keyPath: 'seq', autoIncrement: true }).createIndex('id', 'id', { unique: true })
      db.createObjectStore('kept', { keyPath: 'path' }).createIndex('keptAt', 'keptAt')
      db.createObjectStore('people', { keyPath: 'person' })
      db.createObjectStore('drafts', { keyPath: 'key' })
    },
    blocking: (_current, _blocked, event) => {
      ;(event.target as IDBDatabase).close()
      opening = undefined
    },
    terminated: () => {
      opening = undefined
    },
  }).catch((error: unknown) => {
    opening = undefined
    throw error
  })
  return opening
}
