import type { LiveEvent, Session, StoredReading } from '@evenbore/contract'

/** The stored reading that a live event carries; undefined where it names one only by its id (it is large: fetch it). */
export function readingOf(event: LiveEvent): StoredReading | undefined {
  const { reading } = event.body
  return typeof reading === 'object' && reading !== null && 'id' in reading && 'session' in reading ? (reading as StoredReading) : undefined
}

/** Lays a reading that was just kept over the sessions on the screen, the one it replaces marked; undefined where its session is not among them. */
export function withReading(sessions: readonly Session[], kept: StoredReading, takenById: unknown): Session[] | undefined {
  if (!sessions.some(({ id }) => id === kept.session)) return undefined
  // the event names nobody: whoever is known from another reading is named, the fetch that follows names the rest
  const known = sessions.flatMap(({ readings }) => readings).find(({ takenBy }) => takenBy?.id === takenById)?.takenBy ?? null
  return sessions.map((session) => {
    const readings = session.readings.map((reading) => (reading.id === kept.replaces ? { ...reading, current: false, replacedBy: kept.id } : reading))
    if (session.id !== kept.session || readings.some(({ id }) => id === kept.id)) return { ...session, readings }
    return { ...session, readings: [...readings, { ...kept, takenBy: kept.takenBy ?? known }] }
  })
}
