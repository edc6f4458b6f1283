import type { Actor, Deputising, HeldRole, Scope } from '@evenbore/contract'
import type { Database } from '../platform/database/database.ts'
import type { Claims } from './claims.ts'

/** The roles that need a second factor in production; without one set up they sleep. */
const NEEDS_SECOND_FACTOR: ReadonlySet<string> = new Set(['manager', 'owner'])

const PERSON = {
  name: 'access-person',
  text: `SELECT p.totp_secret IS NOT NULL AS "secondFactor",
      EXISTS (SELECT 1 FROM refresh_token t WHERE t.family_id = $2 AND t.person_id = p.id AND t.revoked_at IS NULL) AS "signedIn",
      coalesce((SELECT json_agg(json_build_object('garage', r.garage_id, 'role', r.role, 'limitMinor', r.approval_limit_minor) ORDER BY r.created_at)
        FROM person_role r WHERE r.person_id = p.id), '[]') AS roles,
      coalesce((SELECT json_agg(json_build_object('manager', d.manager_id, 'garage', d.garage_id, 'limitMinor',
          (SELECT max(m.approval_limit_minor) FROM person_role m WHERE m.person_id = d.manager_id AND m.garage_id = d.garage_id AND m.role = 'manager')))
        FROM deputy d WHERE d.deputy_id = p.id AND d.revoked_at IS NULL AND now() BETWEEN d."from" AND d."until"), '[]') AS "deputyFor"
    FROM person p WHERE p.id = $1 AND p.left_at IS NULL`,
}
const TABLET = {
  name: 'access-tablet',
  text: 'SELECT id, garage_id AS garage, bay_id AS bay FROM tablet WHERE id = $1 AND revoked_at IS NULL',
}
const TABLET_BY_KEY = {
  name: 'access-tablet-by-key',
  text: 'SELECT id, garage_id AS garage, bay_id AS bay FROM tablet WHERE secret_hash = $1 AND revoked_at IS NULL',
}
const APP = {
  name: 'access-app',
  text: 'SELECT scopes, garage_ids AS garages FROM outside_app WHERE id = $1 AND revoked_at IS NULL',
}

type PersonRow = { readonly secondFactor: boolean; readonly signedIn: boolean; readonly roles: HeldRole[]; readonly deputyFor: Deputising[] }
type TabletRow = { readonly id: string; readonly garage: string; readonly bay: string }

/** With the scope to write jobs comes that to read them, since the answer to a booking is the job. */
function withIncluded(scopes: readonly Scope[]): Scope[] {
  return scopes.includes('jobs:write') ? [...new Set<Scope>([...scopes, 'jobs:read'])] : [...scopes]
}

/** Who a token speaks for just now, or undefined when that has ended: signed out, left, revoked. */
export async function actorOf(database: Database, claims: Claims, production: boolean): Promise<Actor | undefined> {
  if (claims.kind === 'app') {
    const app = (await database.run<{ scopes: Scope[]; garages: string[] }>(APP, [claims.sub]))[0]
    if (app === undefined) return undefined
    const scopes = claims.scopes.filter((scope) => app.scopes.includes(scope))
    return { kind: 'app', app: claims.sub, scopes: withIncluded(scopes), garages: app.garages }
  }
  const person = (await database.run<PersonRow>(PERSON, [claims.sub, claims.family]))[0]
  if (person === undefined || !person.signedIn) return undefined
  const asleep = production && !person.secondFactor
  const roles = asleep ? person.roles.filter(({ role }) => !NEEDS_SECOND_FACTOR.has(role)) : person.roles
  if (claims.kind === 'person') return { kind: 'person', person: claims.sub, roles, deputyFor: person.deputyFor }
  const tablet = (await database.run<TabletRow>(TABLET, [claims.tablet]))[0]
  if (tablet === undefined) return undefined
  return { kind: 'tablet', tablet: tablet.id, garage: tablet.garage, bay: tablet.bay, person: claims.sub, roles: person.roles }
}

/** The tablet that holds this key, with nobody signed in. */
export async function tabletAlone(database: Database, hash: string): Promise<Actor | undefined> {
  const tablet = (await database.run<TabletRow>(TABLET_BY_KEY, [hash]))[0]
  if (tablet === undefined) return undefined
  return { kind: 'tablet', tablet: tablet.id, garage: tablet.garage, bay: tablet.bay, person: null, roles: [] }
}

/** Names an actor where its requests are told apart, such as with idempotency keys. */
export function actorKey(actor: Actor): string {
  if (actor.kind === 'person') return `person:${actor.person}`
  if (actor.kind === 'app') return `app:${actor.app}`
  return `tablet:${actor.tablet}:${actor.person ?? ''}`
}

/** The person who acts, or null: an outside app, or a tablet with nobody signed in. */
export function personOf(actor: Actor): string | null {
  return actor.kind === 'app' ? null : actor.person
}
