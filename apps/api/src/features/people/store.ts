import type { RoleHeld } from '@evenbore/contract'
import type { Prisma } from '../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { newId } from '../../platform/ids.ts'

const WITH = { personRoles: { orderBy: [{ createdAt: 'asc' }, { id: 'asc' }] } } as const satisfies Prisma.PersonInclude
/** A person with the roles held. */
export type PersonRow = Prisma.PersonGetPayload<{ include: typeof WITH }>

/** People of these garages (null: of the chain) by name. One more than `limit`, where there is one. */
export function people(database: Database, garages: readonly string[] | null, after: readonly [string, string] | undefined, limit: number): Promise<PersonRow[]> {
  const behind = after === undefined ? {} : { OR: [{ name: { gt: after[0] } }, { name: after[0], id: { gt: after[1] } }] }
  return database.prisma.person.findMany({
    where: { AND: [garages === null ? {} : { personRoles: { some: { garageId: { in: [...garages] } } } }, behind] },
    include: WITH, orderBy: [{ name: 'asc' }, { id: 'asc' }], take: limit + 1,
  })
}

export function personById(tx: Transaction, id: string): Promise<PersonRow | null> {
  return tx.person.findUnique({ where: { id }, include: WITH })
}

export function insertPerson(tx: Transaction, person: Omit<Prisma.PersonUncheckedCreateInput, 'id' | 'personRoles'>, roles: readonly RoleHeld[]): Promise<PersonRow> {
  return tx.person.create({ data: { id: newId(), ...person, personRoles: { create: roles.map(roleRow) } }, include: WITH })
}

/** Changes a person who is still at `version`; false when not. */
export async function updatePerson(tx: Transaction, id: string, version: number, data: Prisma.PersonUncheckedUpdateManyInput): Promise<boolean> {
  return (await tx.person.updateMany({ where: { id, version }, data: { ...data, version: { increment: 1 } } })).count === 1
}

export async function replaceRoles(tx: Transaction, personId: string, roles: readonly RoleHeld[]): Promise<void> {
  await tx.personRole.deleteMany({ where: { personId } })
  await tx.personRole.createMany({ data: roles.map((role) => ({ personId, ...roleRow(role) })) })
}

function roleRow({ garage, role, approvalLimitMinor }: RoleHeld): { id: string; garageId: string | null; role: string; approvalLimitMinor: number | null } {
  return { id: newId(), garageId: garage, role, approvalLimitMinor: approvalLimitMinor ?? null }
}

/** Ends every sign-in of a person. */
export async function endSignIns(tx: Transaction, personId: string): Promise<void> {
  await tx.refreshToken.updateMany({ where: { personId, revokedAt: null }, data: { revokedAt: new Date() } })
}

/** Owners who could still sign in, other than this person. The rows are locked, so that two owners cannot both leave at once. */
export async function otherOwners(tx: Transaction, personId: string): Promise<number> {
  const rows = await tx.$queryRaw<unknown[]>`
    SELECT r.id FROM person_role r JOIN person p ON p.id = r.person_id
    WHERE r.role = 'owner' AND r.person_id <> ${personId}::uuid AND p.left_at IS NULL AND p.password_hash IS NOT NULL FOR UPDATE OF r`
  return rows.length
}

export async function knownGarages(tx: Transaction, ids: readonly string[]): Promise<ReadonlySet<string>> {
  return new Set((await tx.garage.findMany({ where: { id: { in: [...ids] } }, select: { id: true } })).map(({ id }) => id))
}
