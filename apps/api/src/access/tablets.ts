import type { Actor, Enrolled, NewTablet, PersonRef, Tablet, TabletMade, TakeOver } from '@evenbore/contract'
import type { Database } from '../platform/database/database.ts'
import { newId } from '../platform/ids.ts'
import { badField, problem } from '../platform/problems/problem.ts'
import { audit } from './audit.ts'
import { demand } from './door.ts'
import type { SigningKeys } from './keys.ts'
import { countRight, countWrong } from './lock-out.ts'
import { lockedOut, wrongCredentials } from './problems.ts'
import { fitsSecret, keyHash, newEnrolmentCode, newKey, normalCode } from './secrets.ts'
import { beginSession, type Session } from './sessions.ts'

/** A code waits so long to be typed; the demo chain's, which wait for visitors, a year. */
const CODE_DAYS = { usual: 7, demo: 365 } as const

type TabletRow = { readonly id: string; readonly garageId: string; readonly bayId: string; readonly name: string; readonly enrolledAt: Date | null; readonly revokedAt: Date | null }

function shown(row: TabletRow): Tablet {
  return { id: row.id, garage: row.garageId, bay: row.bayId, name: row.name, enrolledAt: row.enrolledAt?.toISOString() ?? null, revokedAt: row.revokedAt?.toISOString() ?? null }
}

/** Owners may in every garage, so what they name is looked up. @throws problem `not-found` */
async function demandGarage(database: Database, garage: string): Promise<void> {
  if ((await database.prisma.garage.count({ where: { id: garage } })) === 0) throw problem('not-found')
}

/** The tablets of a garage. */
export async function listTablets(database: Database, actor: Actor, garage: string): Promise<Tablet[]> {
  demand(actor, 'settings.read', { garage })
  await demandGarage(database, garage)
  const rows = await database.prisma.tablet.findMany({ where: { garageId: garage }, orderBy: { createdAt: 'asc' }, take: 500 })
  return rows.map(shown)
}

/** Prepares a tablet for a bay: the code in the answer is typed on the tablet once. */
export async function makeTablet(database: Database, actor: Actor, garage: string, { bay, name }: NewTablet, demo: boolean): Promise<TabletMade> {
  demand(actor, 'settings.write', { garage })
  await demandGarage(database, garage)
  const place = await database.prisma.bay.findFirst({ where: { id: bay, garageId: garage, closedAt: null } })
  if (place === null) throw badField('/bay', 'an open bay of this garage', bay)
  const { code, expiresAt } = newCode(demo)
  const row = await database.transaction(async (tx) => {
    const made = await tx.tablet.create({ data: { id: newId(), garageId: garage, bayId: bay, name, enrolmentCodeHash: keyHash(normalCode(code)), enrolmentExpiresAt: expiresAt } })
    await audit(tx, actor, garage, 'tablet.made', { tablet: made.id })
    return made
  })
  return { ...shown(row), enrolmentCode: code, expiresAt: expiresAt.toISOString() }
}

/** A new code for a tablet: the old device, if there was one, is no tablet any more. */
export async function renewCode(database: Database, actor: Actor, tablet: string, demo: boolean): Promise<TabletMade> {
  const { garageId } = await findTablet(database, actor, tablet)
  const { code, expiresAt } = newCode(demo)
  const row = await database.transaction(async (tx) => {
    await audit(tx, actor, garageId, 'tablet.code-renewed', { tablet })
    return tx.tablet.update({ where: { id: tablet }, data: { enrolmentCodeHash: keyHash(normalCode(code)), enrolmentExpiresAt: expiresAt, secretHash: null, enrolledAt: null, revokedAt: null } })
  })
  return { ...shown(row), enrolmentCode: code, expiresAt: expiresAt.toISOString() }
}

/** Takes a tablet out of use: what it holds opens nothing any more. */
export async function revokeTablet(database: Database, actor: Actor, tablet: string): Promise<Tablet> {
  const { garageId } = await findTablet(database, actor, tablet)
  const row = await database.transaction(async (tx) => {
    await tx.refreshToken.updateMany({ where: { tabletId: tablet, revokedAt: null }, data: { revokedAt: new Date() } })
    await audit(tx, actor, garageId, 'tablet.revoked', { tablet })
    return tx.tablet.update({ where: { id: tablet }, data: { revokedAt: new Date(), enrolmentCodeHash: null, secretHash: null } })
  })
  return shown(row)
}

/** Makes the device that sends the code the tablet; the code is used up. */
export async function enrol(database: Database, enrolmentCode: string): Promise<Enrolled> {
  const tabletToken = newKey('ebtab')
  const rows = await database.run<{ id: string; name: string; garage: string; bay: string }>(ENROL, [keyHash(normalCode(enrolmentCode)), keyHash(tabletToken)])
  const tablet = rows[0]
  if (tablet === undefined) throw wrongCredentials()
  return { tablet: tablet.id, name: tablet.name, garage: tablet.garage, bay: tablet.bay, tabletToken }
}

const ENROL = {
  name: 'access-enrol',
  text: `UPDATE tablet SET enrolled_at = now(), secret_hash = $2, enrolment_code_hash = NULL, enrolment_expires_at = NULL
    WHERE enrolment_code_hash = $1 AND enrolment_expires_at > now() AND revoked_at IS NULL RETURNING id, name, garage_id AS garage, bay_id AS bay`,
}

/** Who can sign in on this tablet: people of its garage who have a PIN. */
export async function peopleOfTablet(database: Database, actor: Actor): Promise<PersonRef[]> {
  const { garage } = tabletOf(actor)
  return database.run<PersonRef>(PEOPLE, [garage])
}

const PEOPLE = {
  name: 'access-people-of-tablet',
  text: `SELECT p.id, p.name FROM person p WHERE p.left_at IS NULL AND p.pin_hash IS NOT NULL
    AND EXISTS (SELECT 1 FROM person_role r WHERE r.person_id = p.id AND (r.garage_id = $1 OR r.garage_id IS NULL)) ORDER BY p.name`,
}

/**
 * Signs a person in on a tablet by PIN, in place of whoever was signed in.
 * @throws problems `wrong-credentials`, `locked-out` (the person, or the tablet)
 */
export async function takeOver(database: Database, keys: SigningKeys, actor: Actor, { person, pin }: TakeOver): Promise<Session> {
  const { tablet, garage } = tabletOf(actor)
  const device = await database.prisma.tablet.findUniqueOrThrow({ where: { id: tablet } })
  if (device.lockedUntil !== null && device.lockedUntil > new Date()) throw lockedOut(device.lockedUntil)
  const found = await database.prisma.person.findFirst({
    where: { id: person, leftAt: null, personRoles: { some: { OR: [{ garageId: garage }, { garageId: null }] } } },
  })
  if (found?.lockedUntil != null && found.lockedUntil > new Date()) throw lockedOut(found.lockedUntil)
  if (!(await fitsSecret(found?.pinHash, pin)) || found === null) {
    await countWrong(database, found === null ? { tablet } : { tablet, person: found.id })
    throw wrongCredentials()
  }
  await countRight(database, { tablet, person: found.id })
  return beginSession(database, keys, found.id, tablet)
}

function tabletOf(actor: Actor): Extract<Actor, { kind: 'tablet' }> {
  if (actor.kind !== 'tablet') throw problem('not-allowed', 'This is asked by an enrolled tablet, with its tabletToken.')
  return actor
}

async function findTablet(database: Database, actor: Actor, tablet: string): Promise<TabletRow> {
  const row = await database.prisma.tablet.findUnique({ where: { id: tablet } })
  demand(actor, 'settings.write', { garage: row?.garageId ?? null })
  if (row === null) throw problem('not-found')
  return row
}

function newCode(demo: boolean): { readonly code: string; readonly expiresAt: Date } {
  return { code: newEnrolmentCode(), expiresAt: new Date(Date.now() + (demo ? CODE_DAYS.demo : CODE_DAYS.usual) * 86_400_000) }
}
