import type { SignIn } from '@evenbore/contract'
import { Secret, TOTP } from 'otpauth'
import type { Database } from '../platform/database/database.ts'
import { problem } from '../platform/problems/problem.ts'
import type { SigningKeys } from './keys.ts'
import { countRight, countWrong } from './lock-out.ts'
import { lockedOut, wrongCredentials } from './problems.ts'
import { fitsSecret } from './secrets.ts'
import { beginSession, type Session } from './sessions.ts'

/**
 * Signs a person in by e-mail and password, and by a one-time code where a second factor is set up and asked for.
 * @throws problems `wrong-credentials`, `locked-out`, `second-factor-needed`
 */
export async function signIn(database: Database, keys: SigningKeys, { email, password, oneTimeCode }: SignIn, secondFactor: boolean): Promise<Session> {
  const person = await database.prisma.person.findUnique({ where: { email: email.toLowerCase() } })
  if (person?.lockedUntil != null && person.lockedUntil > new Date()) throw lockedOut(person.lockedUntil)
  const fits = await fitsSecret(person?.passwordHash, password)
  if (person === null || !fits || person.leftAt !== null) {
    if (person !== null) await countWrong(database, { person: person.id })
    throw wrongCredentials()
  }
  if (secondFactor && person.totpSecret !== null && !fitsOneTimeCode(person.totpSecret, oneTimeCode)) {
    // A wrong code counts like a wrong password; a missing one is only asked for.
    if (oneTimeCode !== undefined) await countWrong(database, { person: person.id })
    throw problem('second-factor-needed', oneTimeCode === undefined ? 'Send oneTimeCode too.' : 'This one-time code is not right, or has run out.')
  }
  await countRight(database, { person: person.id })
  return beginSession(database, keys, person.id, null)
}

/** True for the code of now, of the half minute before and of the one after (RFC 6238 section 5.2). */
export function fitsOneTimeCode(secret: string, code: string | undefined): boolean {
  if (code === undefined) return false
  return new TOTP({ secret: Secret.fromBase32(secret) }).validate({ token: code, window: 1 }) !== null
}
