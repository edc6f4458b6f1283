import type { Actor, Me, MyPreferences } from '@evenbore/contract'
import type { Database } from '../platform/database/database.ts'
import { problem } from '../platform/problems/problem.ts'
import { personOf } from './actors.ts'

/** Who the caller is and what it may do; `scopes` and roles as the permission table counts them just now. */
export async function readMe(database: Database, actor: Actor): Promise<Me> {
  const id = personOf(actor)
  const person = id === null ? null : await database.prisma.person.findUniqueOrThrow({ where: { id } })
  const tablet = actor.kind === 'tablet' ? await database.prisma.tablet.findUniqueOrThrow({ where: { id: actor.tablet } }) : null
  const roles = actor.kind === 'app' ? [] : actor.roles
  const garages = await database.prisma.garage.findMany({ where: garagesOf(actor), orderBy: { name: 'asc' } })
  return {
    kind: actor.kind,
    person: person === null ? null : { id: person.id, name: person.name },
    roles: roles.map(({ garage, role, limitMinor }) => ({ garage, role, approvalLimitMinor: limitMinor ?? null })),
    garages: garages.map(({ id, name, timeZone, currency, pressureUnit, locale }) => ({ id, name, timeZone, currency, pressureUnit, locale }) as Me['garages'][number]),
    tablet: tablet === null ? null : { id: tablet.id, name: tablet.name, garage: tablet.garageId, bay: tablet.bayId },
    scopes: actor.kind === 'app' ? [...actor.scopes] : [],
    locale: (person?.locale ?? garages[0]?.locale ?? 'en') as Me['locale'],
    pressureUnit: (person?.pressureUnit ?? null) as Me['pressureUnit'],
    deputyFor: await deputyFor(database, actor),
  }
}

function garagesOf(actor: Actor): { id?: { in: string[] } } {
  if (actor.kind === 'tablet') return { id: { in: [actor.garage] } }
  if (actor.kind === 'app') return actor.garages.length === 0 ? {} : { id: { in: [...actor.garages] } }
  if (actor.roles.some(({ garage }) => garage === null)) return {}
  return { id: { in: actor.roles.flatMap(({ garage }) => (garage === null ? [] : [garage])) } }
}

async function deputyFor(database: Database, actor: Actor): Promise<Me['deputyFor']> {
  if (actor.kind !== 'person' || actor.deputyFor.length === 0) return []
  const now = new Date()
  const rows = await database.prisma.deputy.findMany({ where: { deputyId: actor.person, revokedAt: null, from: { lte: now }, until: { gte: now } } })
  const managers = await database.prisma.person.findMany({ where: { id: { in: rows.map(({ managerId }) => managerId) } } })
  return rows.map((row) => ({
    manager: { id: row.managerId, name: managers.find(({ id }) => id === row.managerId)?.name ?? '' },
    garage: row.garageId,
    until: row.until.toISOString(),
    approvalLimitMinor: actor.deputyFor.find(({ manager, garage }) => manager === row.managerId && garage === row.garageId)?.limitMinor ?? null,
  }))
}

/** Language and pressure unit, which everybody sets for himself. */
export async function setPreferences(database: Database, actor: Actor, preferences: MyPreferences): Promise<Me> {
  const id = personOf(actor)
  if (id === null) throw problem('not-allowed', 'Only a person has preferences.')
  await database.prisma.person.update({ where: { id }, data: preferences })
  return readMe(database, actor)
}
