import type { Role, Scope } from '@evenbore/contract'
import { hashSecret, keyHash, newKey } from '../../apps/api/src/access/secrets.ts'
import { beginSession } from '../../apps/api/src/access/sessions.ts'
import { newId } from '../../apps/api/src/platform/ids.ts'
import type { TestService } from './service.ts'

export const TEST_PASSWORD = 'a long enough password'
export const TEST_PIN = '48213'
/** Hashed once for the test file: hashing is slow on purpose. */
let passwordHash: Promise<string> | undefined
let pinHash: Promise<string> | undefined

export type TestPerson = { readonly id: string; readonly name: string; readonly email: string; readonly token: string }
export type TestGarage = { readonly id: string; readonly bays: readonly string[]; readonly technician: TestPerson; readonly frontDesk: TestPerson; readonly manager: TestPerson }
export type TestTablet = { readonly id: string; readonly bay: string; readonly tabletToken: string }
export type TestApp = { readonly id: string; readonly clientId: string; readonly clientSecret: string; readonly token: string }

/** Two garages with everybody in them, and the owner of both: the chain that most API tests act in. */
export type TestChain = { readonly mill: TestGarage; readonly harbour: TestGarage; readonly owner: TestPerson }

/** The manager's limit in the test chain, in minor units: total with tax. */
export const MANAGER_LIMIT = 150_000

/** Writes the chain into the service's database. */
export async function testChain(service: TestService): Promise<TestChain> {
  const mill = await testGarage(service, 'Mill Lane', 'M')
  const harbour = await testGarage(service, 'Harbour Street', 'H')
  return { mill, harbour, owner: await testPerson(service, 'Odile Owner', [{ garage: null, role: 'owner' }]) }
}

/** A garage with two bays, a technician, a front desk and a manager. */
export async function testGarage(service: TestService, name: string, codeLetter: string): Promise<TestGarage> {
  const id = newId()
  const bays = [newId(), newId()]
  await service.database.prisma.garage.create({
    data: {
      id, name, codeLetter, timeZone: 'Europe/Lisbon', currency: 'EUR', pressureUnit: 'psi', elevationM: 120, labourRateMinor: 8_000, taxBasisPoints: 2_000,
      bays: { create: bays.map((bay, at) => ({ id: bay, name: `Bay ${at + 1}`, position: at })) },
    },
  })
  return {
    id,
    bays,
    technician: await testPerson(service, `Tess of ${name}`, [{ garage: id, role: 'technician' }]),
    frontDesk: await testPerson(service, `Finn of ${name}`, [{ garage: id, role: 'front-desk' }]),
    manager: await testPerson(service, `Mara of ${name}`, [{ garage: id, role: 'manager', limitMinor: MANAGER_LIMIT }]),
  }
}

/** A person who is signed in: `token` goes into `Authorization: Bearer`. Password TEST_PASSWORD, PIN TEST_PIN. */
export async function testPerson(service: TestService, name: string, roles: readonly { garage: string | null; role: Role; limitMinor?: number }[]): Promise<TestPerson> {
  passwordHash ??= hashSecret(TEST_PASSWORD)
  pinHash ??= hashSecret(TEST_PIN)
  const id = newId()
  const email = `${id}@example.test`
  await service.database.prisma.person.create({
    data: {
      id, name, email, passwordHash: await passwordHash, pinHash: await pinHash,
      personRoles: { create: roles.map(({ garage, role, limitMinor }) => ({ id: newId(), garageId: garage, role, approvalLimitMinor: limitMinor ?? null })) },
    },
  })
  const { tokens } = await beginSession(service.database, service.app.keys, id, null)
  return { id, name, email, token: tokens.accessToken }
}

/** An enrolled tablet of a bay; alone it acts by `tabletToken`. */
export async function testTablet(service: TestService, garage: TestGarage, bay = garage.bays[0] ?? ''): Promise<TestTablet> {
  const id = newId()
  const tabletToken = newKey('ebtab')
  await service.database.prisma.tablet.create({ data: { id, garageId: garage.id, bayId: bay, name: 'Tablet', enrolledAt: new Date(), secretHash: keyHash(tabletToken) } })
  return { id, bay, tabletToken }
}

/** Token of a person signed in on a tablet. */
export async function onTablet(service: TestService, tablet: TestTablet, person: TestPerson): Promise<string> {
  const { tokens } = await beginSession(service.database, service.app.keys, person.id, tablet.id)
  return tokens.accessToken
}

/** An outside app with its token; no garages named: all. */
export async function testApp(service: TestService, scopes: readonly Scope[], garages: readonly string[] = []): Promise<TestApp> {
  const id = newId()
  const clientSecret = newKey('ebapp')
  await service.database.prisma.outsideApp.create({ data: { id, name: `App for ${scopes.join(' ')}`, clientId: `app-${id}`, secretHash: keyHash(clientSecret), scopes: [...scopes], garageIds: [...garages] } })
  return { id, clientId: `app-${id}`, clientSecret, token: await service.app.keys.sign({ kind: 'app', scopes }, id, 600) }
}
