import { database, type KnownPerson } from './database.ts'

/** Who signed in on this tablet while there was a network may take it over without one for a day (checked again on arrival). */
const DAY_MS = 24 * 3_600_000
const TRIES = 5
/** OWASP's figure for PBKDF2 with HMAC-SHA-256 (Password Storage Cheat Sheet; from memory). A PIN is short: this slows guessing, no more. */
const ROUNDS = 600_000

async function derive(pin: string, salt: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const key = await crypto.subtle.importKey('raw', new TextEncoder().encode(pin), 'PBKDF2', false, ['deriveBits'])
  return new Uint8Array(await crypto.subtle.deriveBits({ name: 'PBKDF2', hash: 'SHA-256', salt, iterations: ROUNDS }, key, 256))
}

/**
 * Prepares to remember somebody: the slow part runs while the server is asked. Call what it answers once the server has accepted the PIN;
 * a storage that refuses only means that working without network suffers.
 */
export function preparePin(person: string, name: string, pin: string): () => Promise<void> {
  const salt = crypto.getRandomValues(new Uint8Array(16))
  const derived = derive(pin, salt).catch(() => undefined)
  return async () => {
    const verifier = await derived
    if (!verifier) return
    try {
      await (await database()).put('people', { person, name, lastOnline: Date.now(), salt, verifier, wrongTries: 0 })
    } catch {
      // full or refused storage: whoever has signed in must not be kept out by it
    }
  }
}

/** People who may take over without network just now. */
export async function knownPeople(now = Date.now()): Promise<KnownPerson[]> {
  return (await (await database()).getAll('people')).filter((known) => fresh(known, now))
}

function fresh(known: KnownPerson, now: number): boolean {
  // a clock set back must not stretch the day
  return now - known.lastOnline < DAY_MS && now >= known.lastOnline - 60_000
}

/** Checks a PIN without network. After five wrong ones the person is forgotten here until the network is back. */
export async function checkPin(person: string, pin: string, now = Date.now()): Promise<'right' | 'wrong' | 'unknown'> {
  const db = await database()
  const known = await db.get('people', person)
  if (!known || !fresh(known, now)) return 'unknown'
  const given = await derive(pin, known.salt)
  let difference = 0
  for (const [i, byte] of given.entries()) difference |= byte ^ known.verifier[i]!
  if (difference === 0) {
    if (known.wrongTries > 0) await db.put('people', { ...known, wrongTries: 0 })
    return 'right'
  }
  if (known.wrongTries + 1 >= TRIES) await db.delete('people', person)
  else await db.put('people', { ...known, wrongTries: known.wrongTries + 1 })
  return 'wrong'
}
