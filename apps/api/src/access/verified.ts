import type { Actor } from '@evenbore/contract'
import { decodeProtectedHeader, jwtVerify } from 'jose'
import type { Database } from '../platform/database/database.ts'
import { actorOf, tabletAlone } from './actors.ts'
import { claimsSchema, type Claims } from './claims.ts'
import { ISSUER, type SigningKeys } from './keys.ts'
import { keyHash } from './secrets.ts'

/** A token that was found right, and whom it speaks for. */
export type Verified = { readonly actor: Actor; readonly claims: Claims | undefined; readonly expiresAt: number; readonly freshUntil: number }

/** Tokens found right lately: verifying a signature takes a quarter of a millisecond, looking one up takes none. */
export type VerifiedTokens = {
  /** The token as it was found before, where that is fresh still. */
  readonly recall: (token: string) => Verified | undefined
  readonly verify: (token: string) => Promise<Verified | undefined>
  /** Ends what is remembered of these people, tablets or apps at once in this process; others look again within FRESH_MS. */
  readonly forget: (...ids: readonly string[]) => void
}

const MOST_TOKENS = 5_000
/** A change of roles or a revocation made in another process is seen after this long at the latest. */
const FRESH_MS = 10_000

/** Verifies and remembers tokens. */
export function verifiedTokens(database: Database, keys: SigningKeys, production: boolean): VerifiedTokens {
  const remembered = new Map<string, Verified>()

  function remember(token: string, verified: Verified): Verified {
    remembered.delete(token)
    if (remembered.size >= MOST_TOKENS) remembered.delete(remembered.keys().next().value ?? '')
    remembered.set(token, verified)
    return verified
  }

  async function verify(token: string): Promise<Verified | undefined> {
    const freshUntil = Date.now() + FRESH_MS
    if (token.startsWith('ebtab_')) {
      const actor = await tabletAlone(database, keyHash(token))
      return actor === undefined ? undefined : remember(token, { actor, claims: undefined, expiresAt: Infinity, freshUntil })
    }
    const claims = remembered.get(token)?.claims ?? (await claimsOf(token, keys))
    const actor = claims === undefined || claims.exp * 1000 <= Date.now() ? undefined : await actorOf(database, claims, production)
    if (claims === undefined || actor === undefined) {
      remembered.delete(token)
      return undefined
    }
    return remember(token, { actor, claims, expiresAt: claims.exp * 1000, freshUntil })
  }

  return {
    recall: (token) => {
      const known = remembered.get(token)
      const now = Date.now()
      return known !== undefined && known.freshUntil > now && known.expiresAt > now ? known : undefined
    },
    verify,
    forget: (...ids) => {
      for (const [token, { actor }] of remembered) {
        const its = actor.kind === 'app' ? [actor.app] : actor.kind === 'tablet' ? [actor.tablet, actor.person] : [actor.person]
        if (its.some((id) => id !== null && ids.includes(id))) remembered.delete(token)
      }
    },
  }
}

async function claimsOf(token: string, keys: SigningKeys): Promise<Claims | undefined> {
  try {
    const key = await keys.find(decodeProtectedHeader(token).kid ?? '')
    if (key === undefined) return undefined
    const { payload } = await jwtVerify(token, key, { issuer: ISSUER, algorithms: ['EdDSA'] })
    return claimsSchema.parse(payload)
  } catch {
    return undefined
  }
}
