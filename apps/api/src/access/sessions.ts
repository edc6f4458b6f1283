import type { Tokens } from '@evenbore/contract'
import type { Database } from '../platform/database/database.ts'
import { newId } from '../platform/ids.ts'
import { ACCESS_SECONDS, REFRESH_SECONDS } from './claims.ts'
import type { SigningKeys } from './keys.ts'
import { wrongCredentials } from './problems.ts'
import { keyHash, newKey } from './secrets.ts'

/** A sign-in: an access token, and the refresh token that renews it once. */
export type Session = { readonly tokens: Tokens; readonly refreshToken: string; readonly refreshSeconds: number }

/** Begins a sign-in of a person, on a tablet where `tablet` is named. Its tokens form a family that ends as one. */
export function beginSession(database: Database, keys: SigningKeys, person: string, tablet: string | null): Promise<Session> {
  return issue(database, keys, { person, tablet, family: newId() })
}

/**
 * Renews a sign-in. A refresh token works once: one that comes a second time was stolen or the new one was, and the family ends.
 * @throws problem `wrong-credentials`
 */
export async function renewSession(database: Database, keys: SigningKeys, refreshToken: string): Promise<Session> {
  const hash = keyHash(refreshToken)
  // One statement claims the token, so of two requests with the same token one is a reuse.
  const claimed = await database.run<Owner>(CLAIM, [hash])
  const owner = claimed[0]
  if (owner !== undefined) return issue(database, keys, owner)
  await database.run(END_FAMILY_OF, [hash])
  throw wrongCredentials()
}

/** Ends a sign-in and every token of it. */
export async function endSession(database: Database, family: string): Promise<void> {
  await database.run(END_FAMILY, [family])
}

/** Ends every sign-in of a person: who left, or whose password was changed. */
export async function endSessionsOf(database: Database, person: string): Promise<void> {
  await database.run(END_ALL, [person])
}

type Owner = { readonly person: string; readonly tablet: string | null; readonly family: string }

const CLAIM = {
  name: 'access-claim-refresh',
  text: `UPDATE refresh_token SET used_at = now() WHERE hash = $1 AND used_at IS NULL AND revoked_at IS NULL AND expires_at > now()
    RETURNING person_id AS person, tablet_id AS tablet, family_id AS family`,
}
const END_FAMILY_OF = {
  name: 'access-end-family-of',
  text: 'UPDATE refresh_token SET revoked_at = now() WHERE revoked_at IS NULL AND family_id = (SELECT family_id FROM refresh_token WHERE hash = $1 AND used_at IS NOT NULL)',
}
const END_FAMILY = { name: 'access-end-family', text: 'UPDATE refresh_token SET revoked_at = now() WHERE revoked_at IS NULL AND family_id = $1' }
const END_ALL = { name: 'access-end-all', text: 'UPDATE refresh_token SET revoked_at = now() WHERE revoked_at IS NULL AND person_id = $1' }
const INSERT = {
  name: 'access-insert-refresh',
  // Nothing is added to a family that ended while its token was being renewed.
  text: `INSERT INTO refresh_token (id, family_id, person_id, tablet_id, hash, expires_at)
    SELECT $1, $2::uuid, $3::uuid, $4::uuid, $5, now() + $6 * interval '1 second'
    WHERE NOT EXISTS (SELECT 1 FROM refresh_token WHERE family_id = $2::uuid AND revoked_at IS NOT NULL)`,
}

async function issue(database: Database, keys: SigningKeys, { person, tablet, family }: Owner): Promise<Session> {
  const refreshToken = newKey('ebref')
  const refreshSeconds = tablet === null ? REFRESH_SECONDS.person : REFRESH_SECONDS.tablet
  await database.run(INSERT, [newId(), family, person, tablet, keyHash(refreshToken), refreshSeconds])
  const claims = tablet === null ? { kind: 'person', family } : { kind: 'tablet', family, tablet }
  const accessToken = await keys.sign(claims, person, ACCESS_SECONDS)
  return { tokens: { accessToken, tokenType: 'Bearer', expiresInSeconds: ACCESS_SECONDS }, refreshToken, refreshSeconds }
}
