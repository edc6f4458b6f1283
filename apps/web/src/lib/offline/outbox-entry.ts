import type { Refusal } from '#lib/ui/refusal.ts'

/** What can be made on a tablet without network and sent later, in order. */
export type OutboxKind = 'session' | 'reading' | 'suggestion' | 'close' | 'photo' | 'photo-withdrawn'

/** One request waiting in the tablet's outbox. `body` never changes once a sending was tried: the server compares it. */
export interface OutboxEntry {
  /** Order of making; the database counts. */
  readonly seq?: number
  /** UUID version 7 made here; also the record's id on the server. */
  readonly id: string
  readonly kind: OutboxKind
  readonly method: 'PUT' | 'POST'
  readonly path: string
  readonly body: unknown
  readonly job: string
  readonly session: string | undefined
  /** The reading that a photo belongs to; its picture is not in the body but in the store of photos. */
  readonly reading?: string
  /** Who made it, by this tablet's knowledge. */
  readonly person: string | undefined
  readonly madeAt: string
  /** One line for the list of what waits: "Cylinder 3, 129 psi". */
  readonly says: string
  readonly state: 'waiting' | 'conflict' | 'sent'
  readonly tried: boolean
  readonly conflict?: { readonly why: 'closed' | 'unplaced' | 'rights' | 'refused'; readonly problem?: Refusal }
  readonly sentAt?: string
}
