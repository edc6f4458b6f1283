import type { OwnerSetup } from '@evenbore/contract'
import type { Database } from '../platform/database/database.ts'
import { newId } from '../platform/ids.ts'
import { audit } from './audit.ts'
import { wrongCredentials } from './problems.ts'
import { hashSecret, keyHash, newKey } from './secrets.ts'

/** Hours that a one-time link waits to be opened. */
const LINK_HOURS = 24

// Like the keys not through Prisma, since every start asks.
const OWNER = { name: 'any-owner', text: `SELECT 1 FROM person_role r JOIN person p ON p.id = r.person_id WHERE r.role = 'owner' AND p.left_at IS NULL LIMIT 1` }

/** True until the chain has an owner. */
export async function needsOwner(database: Database): Promise<boolean> {
  return (await database.run(OWNER, [])).length === 0
}

/** A one-time link's secret: for making an owner, or (with `person`) for a sole owner's way back in. Earlier ones of the kind end. */
export async function makeOwnerLink(database: Database, person: string | null = null): Promise<string> {
  const link = newKey('eblink')
  const purpose = person === null ? 'owner-setup' : 'way-back-in'
  const expiresAt = new Date(Date.now() + LINK_HOURS * 3_600_000)
  await database.transaction(async (tx) => {
    await tx.oneTimeLink.updateMany({ where: { purpose, personId: person, usedAt: null }, data: { usedAt: new Date() } })
    await tx.oneTimeLink.create({ data: { id: newId(), purpose, personId: person, hash: keyHash(link), expiresAt } })
  })
  return link
}

/** Makes an owner by a one-time link; the link is used up with it. */
export async function setUpOwner(database: Database, { link, name, email, password }: OwnerSetup): Promise<string> {
  const passwordHash = await hashSecret(password)
  return database.transaction(async (tx) => {
    const { count } = await tx.oneTimeLink.updateMany({
      where: { hash: keyHash(link), purpose: 'owner-setup', usedAt: null, expiresAt: { gt: new Date() } },
      data: { usedAt: new Date() },
    })
    if (count === 0) throw wrongCredentials()
    const id = newId()
    await tx.person.create({ data: { id, name, email: email.toLowerCase(), passwordHash, personRoles: { create: { id: newId(), role: 'owner', garageId: null } } } })
    await audit(tx, null, null, 'owner.made', { person: id })
    return id
  })
}

/** A new password by a way-back-in link; second factor and every sign-in of that person end. */
export async function wayBackIn(database: Database, link: string, password: string): Promise<string> {
  const passwordHash = await hashSecret(password)
  return database.transaction(async (tx) => {
    const found = await tx.oneTimeLink.findFirst({ where: { hash: keyHash(link), purpose: 'way-back-in', usedAt: null, expiresAt: { gt: new Date() } } })
    if (found?.personId == null) throw wrongCredentials()
    const { count } = await tx.oneTimeLink.updateMany({ where: { id: found.id, usedAt: null }, data: { usedAt: new Date() } })
    if (count === 0) throw wrongCredentials()
    await tx.person.update({ where: { id: found.personId }, data: { passwordHash, totpSecret: null, failedSignIns: 0, lockedUntil: null } })
    await tx.refreshToken.updateMany({ where: { personId: found.personId, revokedAt: null }, data: { revokedAt: new Date() } })
    await audit(tx, null, null, 'owner.back-in', { person: found.personId })
    return found.personId
  })
}
