import { createHash, randomBytes, randomInt } from 'node:crypto'
import { hash, verify } from '@node-rs/argon2'

// The library's own defaults are OWASP's first choice for argon2id: 19 MiB, two passes, one lane (about 25 ms).

/** Hash of a password or a PIN, to be stored (argon2id). */
export function hashSecret(secret: string): Promise<string> {
  return hash(secret)
}

let decoy: Promise<string> | undefined

/** True when `secret` is the one hashed. Without a hash it takes as long and is false, so that time does not tell who exists. */
export async function fitsSecret(stored: string | null | undefined, secret: string): Promise<boolean> {
  if (stored != null) return verify(stored, secret)
  decoy ??= hashSecret(randomBytes(12).toString('hex'))
  await verify(await decoy, secret)
  return false
}

/** A random key of 256 bits, recognisable by its prefix; shown once. */
export function newKey(prefix: 'ebtab' | 'ebref' | 'ebapp' | 'eblink'): string {
  return `${prefix}_${randomBytes(32).toString('base64url')}`
}

/** What is stored of a random key. It has 256 bits, so a plain hash is enough, and can be looked up. */
export function keyHash(key: string): string {
  return createHash('sha256').update(key).digest('hex')
}

/** No 0, O, 1, I or L: the code is read from one screen and typed on another. */
const CODE_SIGNS = 'ABCDEFGHJKMNPQRSTUVWXYZ23456789'

/** A one-time code to type: three groups of four signs, 59 bits. */
export function newEnrolmentCode(): string {
  const sign = () => CODE_SIGNS[randomInt(CODE_SIGNS.length)]
  const group = () => Array.from({ length: 4 }, sign).join('')
  return `${group()}-${group()}-${group()}`
}

/** The form of a typed code that is hashed: capitals, no gaps or dashes. */
export function normalCode(code: string): string {
  return code.toUpperCase().replace(/[^A-Z0-9]/g, '')
}
