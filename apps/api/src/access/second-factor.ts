import { Secret, TOTP } from 'otpauth'
import type { Database } from '../platform/database/database.ts'
import { badField, problem } from '../platform/problems/problem.ts'
import { fitsOneTimeCode } from './people.ts'

/** A new second factor for a person, to be kept once he has shown a code of it. `uri` goes into a QR code. */
export async function offerSecondFactor(database: Database, person: string): Promise<{ readonly secret: string; readonly uri: string }> {
  const { name, totpSecret } = await database.prisma.person.findUniqueOrThrow({ where: { id: person } })
  if (totpSecret !== null) throw problem('conflict', 'A second factor is set up already; an owner can remove it.')
  const totp = new TOTP({ issuer: 'Evenbore', label: name, secret: new Secret({ size: 20 }) })
  return { secret: totp.secret.base32, uri: totp.toString() }
}

/** Keeps it: from now on each sign-in of the person asks for a code. */
export async function keepSecondFactor(database: Database, person: string, secret: string, oneTimeCode: string): Promise<void> {
  if (!fitsOneTimeCode(secret, oneTimeCode)) throw badField('/oneTimeCode', 'the present code of this secret')
  const { count } = await database.prisma.person.updateMany({ where: { id: person, totpSecret: null }, data: { totpSecret: secret } })
  if (count === 0) throw problem('conflict', 'A second factor is set up already; an owner can remove it.')
}
