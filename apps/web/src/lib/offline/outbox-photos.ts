import type { OutboxEntry } from './outbox-entry.ts'

/** A photo waits while its reading does, also when that needs a person's word: the server must know the reading first. Pure. */
export function isHeldBack(entry: OutboxEntry, all: readonly OutboxEntry[]): boolean {
  if (entry.kind !== 'photo') return false
  const reading = all.find(({ id }) => id === entry.reading)
  // a reading that the server keeps unplaced is there, under its id
  return reading !== undefined && (reading.state === 'waiting' || (reading.state === 'conflict' && reading.conflict?.why !== 'unplaced'))
}

/** The photo, made to belong to another reading; sent anew, since nothing is on the server under the old address. */
export function pointedAt(photo: OutboxEntry, reading: string): OutboxEntry {
  return { ...photo, reading, path: photoPath(reading, photo.id), state: 'waiting', tried: false, conflict: undefined }
}

/** Where a photo is put. */
export function photoPath(reading: string, photo: string): string {
  return `/v1/readings/${reading}/photos/${photo}`
}
