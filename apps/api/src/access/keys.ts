import { exportJWK, generateKeyPair, importJWK, SignJWT, type CryptoKey, type JWK } from 'jose'
import type { Database } from '../platform/database/database.ts'
import { newId } from '../platform/ids.ts'

/** The keys that access tokens are signed with. They live in the database, so that every process knows all of them. */
export type SigningKeys = {
  readonly sign: (claims: Record<string, unknown>, subject: string, seconds: number) => Promise<string>
  /** The key of that name, asked of the database when it is new to this process. */
  readonly find: (name: string) => Promise<CryptoKey | undefined>
  /** The published set (RFC 7517): public halves of the present key and of those whose tokens may still be alive. */
  readonly published: () => Promise<{ keys: JWK[] }>
}

type StoredKey = { readonly id: string; readonly publicJwk: unknown; readonly privateJwk: unknown; readonly createdAt: Date }
type LoadedKey = { readonly id: string; readonly publicJwk: JWK; readonly publicKey: CryptoKey; readonly privateJwk: JWK; readonly createdAt: Date }

export const ISSUER = 'evenbore'
const ROTATE_AFTER_MS = 30 * 86_400_000
/** A retired key stays published until no token signed with it can be alive, with room for slow clocks. */
const PUBLISHED_AFTER_MS = 3_600_000
const LOOK_AGAIN_MS = 5_000
// Not through Prisma, whose first query takes half a second: every start waits for the keys.
const KEYS = {
  name: 'signing-keys',
  text: `SELECT id, public_jwk AS "publicJwk", private_jwk AS "privateJwk", created_at AS "createdAt" FROM signing_key WHERE retired_at IS NULL OR retired_at > $1 ORDER BY created_at DESC`,
}

/** Loads the keys, makes the first one, and a new one when the present one is a month old. */
export async function signingKeys(database: Database): Promise<SigningKeys> {
  let keys: readonly LoadedKey[] = []
  let loadedAt = 0
  let signer: { readonly id: string; readonly key: CryptoKey } | undefined

  async function load(): Promise<void> {
    const oldest = new Date(Date.now() - PUBLISHED_AFTER_MS)
    const rows = await database.run<StoredKey>(KEYS, [oldest])
    keys = await Promise.all(rows.map(loaded))
    loadedAt = Date.now()
  }

  async function present(): Promise<{ readonly id: string; readonly key: CryptoKey }> {
    let newest = keys[0]
    if (newest === undefined || Date.now() - newest.createdAt.getTime() > ROTATE_AFTER_MS) {
      await rotate(database)
      await load()
      newest = keys[0]
    }
    if (newest === undefined) throw new Error('no signing key could be made')
    if (signer?.id !== newest.id) signer = { id: newest.id, key: (await importJWK(newest.privateJwk, 'EdDSA')) as CryptoKey }
    return signer
  }

  await load()
  await present()
  return {
    sign: async (claims, subject, seconds) => {
      const { id, key } = await present()
      return new SignJWT(claims).setProtectedHeader({ alg: 'EdDSA', kid: id }).setIssuer(ISSUER).setSubject(subject).setIssuedAt().setExpirationTime(`${seconds} s`).sign(key)
    },
    find: async (name) => {
      const known = keys.find(({ id }) => id === name)
      if (known === undefined && Date.now() - loadedAt > LOOK_AGAIN_MS) await load()
      return (known ?? keys.find(({ id }) => id === name))?.publicKey
    },
    published: async () => {
      if (Date.now() - loadedAt > LOOK_AGAIN_MS) await load()
      return { keys: keys.map(({ publicJwk }) => publicJwk) }
    },
  }
}

/** One process makes the new key; another that wanted to at the same moment finds it made. */
async function rotate(database: Database): Promise<void> {
  await database.transaction(async (tx) => {
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(72707370)`
    const young = new Date(Date.now() - ROTATE_AFTER_MS)
    if ((await tx.signingKey.count({ where: { retiredAt: null, createdAt: { gt: young } } })) > 0) return
    const { publicKey, privateKey } = await generateKeyPair('EdDSA', { extractable: true })
    const id = newId()
    const publicJwk = { ...(await exportJWK(publicKey)), kid: id, alg: 'EdDSA', use: 'sig' }
    await tx.signingKey.updateMany({ where: { retiredAt: null }, data: { retiredAt: new Date() } })
    await tx.signingKey.create({ data: { id, publicJwk: publicJwk as object, privateJwk: (await exportJWK(privateKey)) as object } })
  })
}

async function loaded(row: StoredKey): Promise<LoadedKey> {
  const publicJwk = row.publicJwk as JWK
  return { id: row.id, publicJwk, privateJwk: row.privateJwk as JWK, createdAt: row.createdAt, publicKey: (await importJWK(publicJwk, 'EdDSA')) as CryptoKey }
}
