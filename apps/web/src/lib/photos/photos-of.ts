import type { Photo, StoredReading } from '@evenbore/contract'
import type { OutboxEntry } from '#lib/offline/outbox-entry.ts'

/** A photo as a screen shows it. */
export interface ShownPhoto {
  readonly id: string
  /** True while the server has not answered for it. */
  readonly waiting: boolean
  /** Why it no longer counts. */
  readonly withdrawn: string | undefined
}

/**
 * Photos by the reading at which they are shown: that of which they were taken, or what took its place. Withdrawals that wait count. Pure.
 */
export function photosOf(readings: readonly StoredReading[], photos: readonly Photo[], entries: readonly OutboxEntry[] = []): Map<string, ShownPhoto[]> {
  const next = new Map(readings.map(({ id, replacedBy }) => [id, replacedBy]))
  const last = (id: string) => {
    let at = id
    for (let later = next.get(at); later && next.has(later); later = next.get(at)) at = later
    return at
  }
  const reasons = new Map(entries.flatMap((entry) => (entry.kind === 'photo-withdrawn' && entry.reading ? [[entry.reading, (entry.body as { reason: string }).reason]] : [])))
  const shown = new Map<string, ShownPhoto[]>()
  const add = (reading: string, photo: ShownPhoto) => shown.set(last(reading), [...(shown.get(last(reading)) ?? []), photo])
  for (const { id, reading, withdrawn } of photos) add(reading, { id, waiting: false, withdrawn: withdrawn?.reason ?? reasons.get(id) })
  const known = new Set(photos.map(({ id }) => id))
  for (const entry of entries) {
    if (entry.kind === 'photo' && entry.reading && !known.has(entry.id)) add(entry.reading, { id: entry.id, waiting: entry.state !== 'sent', withdrawn: reasons.get(entry.id) })
  }
  return shown
}
