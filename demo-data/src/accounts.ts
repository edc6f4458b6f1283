import { randomBytes, randomInt } from 'node:crypto'
import { createClient, type Client } from '@evenbore/client'
import type { RoleHeld, Scope } from '@evenbore/contract'
import { need } from './answer.ts'
import { APPS, FAMILIES, GARAGES, OWNER, PEOPLE, type DemoPerson, type GarageKey } from './chain/index.ts'

/** One demo person's way in; null where he has none. */
export interface Access {
  readonly id: string
  readonly name: string
  readonly roles: readonly RoleHeld[]
  readonly email: string | null
  readonly password: string | null
  readonly pin: string | null
}
export interface LoadedGarage {
  readonly id: string
  readonly bays: ReadonlyMap<string, string>
  readonly gauges: ReadonlyMap<string, string>
  readonly labourRateMinor: number
  readonly taxBasisPoints: number
}
export interface DemoAccounts {
  readonly owner: Client
  readonly people: readonly Access[]
  readonly garages: ReadonlyMap<GarageKey, LoadedGarage>
  readonly families: ReadonlyMap<string, string>
  readonly tablets: readonly { readonly bay: string; readonly enrolmentCode: string }[]
  readonly apps: readonly { readonly clientId: string; readonly clientSecret: string; readonly scopes: readonly Scope[] }[]
}

/** 72 bits: the demo chain listens on loopback only, but its passwords are as good as anybody's. */
const password = () => randomBytes(9).toString('base64url')
const pin = () => String(randomInt(0, 10_000)).padStart(4, '0')

/**
 * Makes the owner (through the one-time link of an empty install), garages, instruments, prices, families, people, tablets and
 * outside apps. Passwords and PINs are random each time. Throws when the API refuses anything.
 */
export async function loadAccounts(options: { readonly baseUrl: string; readonly ownerLink: string }): Promise<DemoAccounts> {
  const owner = createClient({ baseUrl: options.baseUrl })
  const ownerPassword = password()
  await need(owner.POST('/v1/owner-setup', { body: { link: options.ownerLink, name: OWNER.name, email: OWNER.email!, password: ownerPassword } }))
  const signedIn = await owner.session.signIn({ kind: 'person', email: OWNER.email!, password: ownerPassword })
  if (!signedIn.ok) throw new Error(`the demo owner could not sign in: ${signedIn.error.title}`)
  const me = await need(owner.GET('/v1/me'))
  const ownerPin = pin()
  await need(owner.PATCH('/v1/people/{person}', { params: { path: { person: me.person!.id }, header: { 'if-match': '"1"' } }, body: { pin: ownerPin } }))
  const ownerAccess: Access = { id: me.person!.id, name: OWNER.name, roles: [{ garage: null, role: 'owner' }], email: OWNER.email, password: ownerPassword, pin: ownerPin }

  const garages = new Map<GarageKey, LoadedGarage>()
  const tablets: { bay: string; enrolmentCode: string }[] = []
  for (const demo of GARAGES) {
    const garage = await need(owner.POST('/v1/garages', { body: demo.garage }))
    const path = { garage: garage.id }
    const bays = new Map<string, string>()
    for (const [position, name] of demo.bays.entries()) {
      const bay = await need(owner.POST('/v1/garages/{garage}/bays', { params: { path }, body: { name, position } }))
      bays.set(name, bay.id)
      const tablet = await need(owner.POST('/v1/garages/{garage}/tablets', { params: { path }, body: { bay: bay.id, name: `Tablet ${name}` } }))
      tablets.push({ bay: bay.id, enrolmentCode: tablet.enrolmentCode })
    }
    const gauges = new Map<string, string>()
    for (const { name, kind, specification } of demo.gauges) gauges.set(name, (await need(owner.POST('/v1/garages/{garage}/gauges', { params: { path }, body: { kind, name, specification } }))).id)
    for (const { name, specification } of demo.testers) gauges.set(name, (await need(owner.POST('/v1/garages/{garage}/gauges', { params: { path }, body: { kind: 'leakage', name, specification } }))).id)
    for (const item of demo.catalogue) await need(owner.POST('/v1/garages/{garage}/catalogue', { params: { path }, body: item }))
    garages.set(demo.key, { id: garage.id, bays, gauges, labourRateMinor: demo.garage.labourRateMinor, taxBasisPoints: demo.garage.taxBasisPoints })
  }

  const families = new Map<string, string>()
  for (const { name, specification, basis, leads } of FAMILIES) families.set(name, (await need(owner.POST('/v1/engine-families', { body: { name, specification, basis: { ...basis }, leads: leads ?? null } }))).id)

  const people = [ownerAccess]
  for (const demo of PEOPLE) people.push(await loadPerson(owner, demo, garages))

  const apps = []
  for (const { name, scopes } of APPS) {
    const app = await need(owner.POST('/v1/apps', { body: { name, scopes: [...scopes], garages: [] } }))
    apps.push({ clientId: app.clientId, clientSecret: app.clientSecret, scopes: [...scopes] })
  }
  return { owner, people, garages, families, tablets, apps }
}

async function loadPerson(owner: Client, demo: DemoPerson, garages: ReadonlyMap<GarageKey, LoadedGarage>): Promise<Access> {
  const roles = demo.roles.map((held): RoleHeld => ({ garage: held.garage && garages.get(held.garage)!.id, role: held.role, ...(held.approvalLimitMinor === undefined ? {} : { approvalLimitMinor: held.approvalLimitMinor }) }))
  const secret = demo.email === null ? null : password()
  const code = demo.hasPin ? pin() : null
  const person = await need(owner.POST('/v1/people', { body: { name: demo.name, roles, ...(demo.email && secret ? { email: demo.email, password: secret } : {}), ...(code ? { pin: code } : {}) } }))
  return { id: person.id, name: demo.name, roles, email: demo.email, password: secret, pin: code }
}
