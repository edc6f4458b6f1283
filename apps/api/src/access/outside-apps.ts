import type { Actor, NewOutsideApp, OutsideApp, OutsideAppMade, Scope, TokenAnswer } from '@evenbore/contract'
import type { Database } from '../platform/database/database.ts'
import { newId } from '../platform/ids.ts'
import { badField, problem } from '../platform/problems/problem.ts'
import { personOf } from './actors.ts'
import { audit } from './audit.ts'
import { ACCESS_SECONDS } from './claims.ts'
import { demand } from './door.ts'
import type { SigningKeys } from './keys.ts'
import { keyHash, newKey } from './secrets.ts'

type AppRow = { readonly id: string; readonly name: string; readonly clientId: string; readonly scopes: string[]; readonly garageIds: string[]; readonly createdAt: Date; readonly revokedAt: Date | null }

function shown(row: AppRow): OutsideApp {
  return { id: row.id, name: row.name, clientId: row.clientId, scopes: row.scopes as Scope[], garages: row.garageIds, createdAt: row.createdAt.toISOString(), revokedAt: row.revokedAt?.toISOString() ?? null }
}

/** Every outside app of the chain. */
export async function listApps(database: Database, actor: Actor): Promise<OutsideApp[]> {
  demand(actor, 'settings.write', { garage: null })
  const rows = await database.prisma.outsideApp.findMany({ orderBy: { createdAt: 'asc' }, take: 500 })
  return rows.map(shown)
}

/** Lets an app in; its secret stands in this answer and nowhere else. */
export async function makeApp(database: Database, actor: Actor, { name, scopes, garages }: NewOutsideApp): Promise<OutsideAppMade> {
  demand(actor, 'settings.write', { garage: null })
  const known = await database.prisma.garage.count({ where: { id: { in: garages } } })
  if (known !== new Set(garages).size) throw badField('/garages', 'ids of garages of the chain', garages)
  const clientSecret = newKey('ebapp')
  const row = await database.transaction(async (tx) => {
    const id = newId()
    const made = await tx.outsideApp.create({
      data: { id, name, clientId: `app-${id}`, secretHash: keyHash(clientSecret), scopes: [...new Set(scopes)], garageIds: garages, createdById: personOf(actor) },
    })
    await audit(tx, actor, null, 'app.made', { app: id })
    return made
  })
  return { ...shown(row), clientSecret }
}

/** A new secret for an app; the old one opens nothing from now on. */
export async function renewSecret(database: Database, actor: Actor, app: string): Promise<OutsideAppMade> {
  demand(actor, 'settings.write', { garage: null })
  await demandApp(database, app)
  const clientSecret = newKey('ebapp')
  const row = await database.transaction(async (tx) => {
    await audit(tx, actor, null, 'app.secret-renewed', { app })
    return tx.outsideApp.update({ where: { id: app }, data: { secretHash: keyHash(clientSecret) } })
  })
  return { ...shown(row), clientSecret }
}

/** Shuts an app out for good; its tokens end with it. */
export async function revokeApp(database: Database, actor: Actor, app: string): Promise<OutsideApp> {
  demand(actor, 'settings.write', { garage: null })
  await demandApp(database, app)
  const row = await database.transaction(async (tx) => {
    await audit(tx, actor, null, 'app.revoked', { app })
    return tx.outsideApp.update({ where: { id: app }, data: { revokedAt: new Date() } })
  })
  return shown(row)
}

async function demandApp(database: Database, app: string): Promise<void> {
  if ((await database.prisma.outsideApp.count({ where: { id: app } })) === 0) throw problem('not-found')
}

/** What RFC 6749 section 5.2 calls the refusals of its token endpoint. */
export type TokenRefusal = 'invalid_client' | 'invalid_scope'

/**
 * Client credentials (RFC 6749 section 4.4): an access token for the app, for the scopes asked for or for all it has.
 * @returns the token, or why not in the words of the RFC
 */
export async function tokenForApp(database: Database, keys: SigningKeys, clientId: string, clientSecret: string, scope: string | undefined): Promise<TokenAnswer | TokenRefusal> {
  const app = (await database.run<{ id: string; scopes: Scope[] }>(FIND, [clientId, keyHash(clientSecret)]))[0]
  if (app === undefined) return 'invalid_client'
  const wanted = scope === undefined || scope.trim() === '' ? app.scopes : (scope.trim().split(/ +/) as Scope[])
  if (wanted.some((one) => !app.scopes.includes(one))) return 'invalid_scope'
  const access_token = await keys.sign({ kind: 'app', scopes: wanted }, app.id, ACCESS_SECONDS)
  return { access_token, token_type: 'Bearer', expires_in: ACCESS_SECONDS, scope: wanted.join(' ') }
}

const FIND = { name: 'access-find-app', text: 'SELECT id, scopes FROM outside_app WHERE client_id = $1 AND secret_hash = $2 AND revoked_at IS NULL' }
