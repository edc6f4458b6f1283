import type { Session, StoredReading } from '@evenbore/contract'
import type { ReadingRow, SessionRow } from './store.ts'

/** A session as it goes on the wire, with its readings. */
export function toSession(row: SessionRow, readings: readonly ReadingRow[]): Session {
  const { garage: _garage, bay: _bay, openedAt, closedAt, ...rest } = row
  return { ...rest, openedAt: openedAt.toISOString(), closedAt: closedAt?.toISOString() ?? null, readings: readings.filter(({ session }) => session === row.id).map(toStoredReading) }
}

/** A reading as it goes on the wire. It is current until another replaces or withdraws it; a withdrawal itself is never a value. */
export function toStoredReading(row: ReadingRow): StoredReading {
  const { body, takenAt, receivedAt, ...rest } = row
  return { ...rest, reading: body, current: isCurrent(row), takenAt: takenAt.toISOString(), receivedAt: receivedAt.toISOString() }
}

/** Does this reading still say something? */
export function isCurrent(row: ReadingRow): boolean {
  return row.replacedBy === null && !row.withdrawn
}
