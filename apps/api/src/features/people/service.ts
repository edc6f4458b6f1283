import type { Actor, NewPerson, Person, PersonEdit } from '@evenbore/contract'
import { z } from 'zod'
import { audit } from '../../access/audit.ts'
import { demand } from '../../access/door.ts'
import { hashSecret } from '../../access/secrets.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { decodeCursor, toPage, type Page } from '../../platform/http/cursor.ts'
import { demandChanged, demandVersion } from '../../platform/http/etag.ts'
import { badField, problem } from '../../platform/problems/problem.ts'
import { demandRoles } from './roles.ts'
import { endSignIns, insertPerson, otherOwners, people, personById, replaceRoles, updatePerson, type PersonRow } from './store.ts'

export type PeopleQuery = { readonly after?: string | undefined; readonly limit: number }

/** People by name: an owner sees the chain, a manager his garages. */
export async function listPeople(database: Database, actor: Actor, query: PeopleQuery): Promise<Page<Person>> {
  demand(actor, 'settings.read', {})
  const after = decodeCursor(query.after, z.tuple([z.string(), z.uuid()]))
  const garages = managedBy(actor)
  const rows = await people(database, garages, after, query.limit)
  return toPage(rows, query.limit, ({ name, id }) => [name, id], (row) => shown(row, garages))
}

export async function readPerson(database: Database, actor: Actor, id: string): Promise<Person> {
  demand(actor, 'settings.read', {})
  const garages = managedBy(actor)
  const row = await personById(database.prisma, id)
  const sees = row !== null && (garages === null || row.personRoles.some(({ garageId }) => garageId !== null && garages.includes(garageId)))
  if (row === null || !sees) throw problem('not-found')
  return shown(row, garages)
}

/** Takes somebody on. Password and PIN are kept as argon2id hashes. */
export async function makePerson(database: Database, actor: Actor, person: NewPerson): Promise<Person> {
  demand(actor, 'settings.write', {})
  const { password, pin, email, roles, ...fields } = person
  if (password !== undefined && email === undefined) throw badField('/email', 'an e-mail address, since a password is set', 'nothing')
  // Hashed before the transaction: it takes long on purpose.
  const secrets = await hashed({ password, pin })
  return database.transaction(async (tx) => {
    await demandRoles(tx, roles)
    const row = await insertPerson(tx, { ...fields, ...secrets, email: email?.toLowerCase() ?? null }, roles)
    await audit(tx, actor, null, 'person.made', { person: row.id, roles })
    return shown(row, null)
  })
}

/** Edits a person. A new password, other roles and leaving end every sign-in; the chain keeps one owner who can sign in. */
export async function editPerson(database: Database, actor: Actor, id: string, version: number, edit: PersonEdit): Promise<Person> {
  demand(actor, 'settings.write', {})
  const { password, pin, email, roles, left, ...fields } = edit
  const secrets = await hashed({ password, pin })
  return database.transaction(async (tx) => {
    const present = await personById(tx, id)
    if (present === null) throw problem('not-found')
    demandVersion(present.version, version)
    if (password !== undefined && (email ?? (email === undefined ? present.email : null)) === null) throw badField('/email', 'an e-mail address, since a password is set', 'nothing')
    const owns = present.personRoles.some(({ role }) => role === 'owner')
    const ownsThen = left !== true && (roles === undefined ? owns : roles.some(({ role }) => role === 'owner'))
    if (owns && !ownsThen && (await otherOwners(tx, id)) === 0) throw problem('conflict', 'The chain needs an owner who can sign in; make another one first.')
    if (roles !== undefined) await demandRoles(tx, roles)
    const leaving = left === undefined ? {} : { leftAt: left ? (present.leftAt ?? new Date()) : null }
    const data = { ...fields, ...secrets, ...leaving, ...(email === undefined ? {} : { email: email?.toLowerCase() ?? null }) }
    demandChanged((await updatePerson(tx, id, version, data)) ? [id] : [])
    if (roles !== undefined) await replaceRoles(tx, id, roles)
    if (password !== undefined || left === true) await endSignIns(tx, id)
    await audit(tx, actor, null, 'person.edited', { person: id, fields: Object.keys(edit), ...(roles === undefined ? {} : { roles }) })
    return shown(await knownPerson(tx, id), null)
  })
}

/** @throws problem `not-found` */
export async function knownPerson(tx: Transaction, id: string): Promise<PersonRow> {
  const row = await personById(tx, id)
  if (row === null) throw problem('not-found')
  return row
}

/** Garages whose people and audit an actor may read; null for all. */
export function managedBy(actor: Actor): readonly string[] | null {
  if (actor.kind !== 'person') return []
  if (actor.roles.some(({ role }) => role === 'owner')) return null
  return actor.roles.flatMap(({ role, garage }) => (role === 'manager' && garage !== null ? [garage] : []))
}

async function hashed({ password, pin }: { readonly password?: string | undefined; readonly pin?: string | undefined }): Promise<{ passwordHash?: string; pinHash?: string }> {
  return {
    ...(password === undefined ? {} : { passwordHash: await hashSecret(password) }),
    ...(pin === undefined ? {} : { pinHash: await hashSecret(pin) }),
  }
}

/** A manager sees the roles in his own garages, and that somebody is an owner. */
function shown(row: PersonRow, garages: readonly string[] | null): Person {
  const roles = row.personRoles.filter(({ garageId }) => garages === null || garageId === null || garages.includes(garageId))
  return {
    id: row.id, name: row.name, email: row.email, hasPin: row.pinHash !== null,
    roles: roles.map(({ garageId, role, approvalLimitMinor }) => ({ garage: garageId, role: role as Person['roles'][number]['role'], ...(role === 'manager' ? { approvalLimitMinor } : {}) })),
    locale: row.locale as Person['locale'], pressureUnit: row.pressureUnit as Person['pressureUnit'], leftAt: row.leftAt?.toISOString() ?? null, version: row.version,
  }
}
