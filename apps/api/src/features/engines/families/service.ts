import type { Actor, EngineFamily, EngineFamilyEdit, NewEngineFamily } from '@evenbore/contract'
import { z } from 'zod'
import { audit } from '../../../access/audit.ts'
import { demand } from '../../../access/door.ts'
import { Prisma } from '../../../generated/prisma/client.ts'
import type { Database, Transaction } from '../../../platform/database/database.ts'
import { decodeCursor, toPage, type Page } from '../../../platform/http/cursor.ts'
import { demandChanged, demandVersion } from '../../../platform/http/etag.ts'
import { emit } from '../../../platform/live/outbox.ts'
import { badField, problem } from '../../../platform/problems/problem.ts'
import { demandSpecification, laidOver, specificationErrors } from '../specification.ts'
import { enginesOfFamily, families, familyById, insertFamily, updateFamily, type FamilyRow } from './store.ts'

export type FamilyQuery = { readonly q?: string | undefined; readonly after?: string | undefined; readonly limit: number }

/** Engine designs as the chain knows them, by name. */
export async function listFamilies(database: Database, actor: Actor, query: FamilyQuery): Promise<Page<EngineFamily>> {
  demand(actor, 'engines.read', {})
  const after = decodeCursor(query.after, z.tuple([z.string()]))
  const rows = await families(database.prisma, query.q || undefined, after?.[0], query.limit)
  return toPage(rows, query.limit, ({ name }) => [name], shown)
}

export async function readFamily(database: Database, actor: Actor, id: string): Promise<EngineFamily> {
  demand(actor, 'engines.read', {})
  const row = await familyById(database.prisma, id)
  if (row === null) throw problem('not-found')
  return shown(row)
}

export async function makeFamily(database: Database, actor: Actor, { leads, ...family }: NewEngineFamily): Promise<EngineFamily> {
  demand(actor, 'settings.write', {})
  demandSpecification(family.specification, '/specification')
  demandBasis(family.basis, family.specification)
  return database.transaction(async (tx) => {
    const row = await insertFamily(tx, { ...family, leads: leads ?? Prisma.DbNull })
    await changed(tx, actor, 'family.made', row.id)
    return shown(row)
  })
}

/** Edits a family. Its engines must still make a whole with it; one that would not is named. */
export async function editFamily(database: Database, actor: Actor, id: string, version: number, { leads, ...edit }: EngineFamilyEdit): Promise<EngineFamily> {
  demand(actor, 'settings.write', {})
  return database.transaction(async (tx) => {
    const present = await familyById(tx, id)
    if (present === null) throw problem('not-found')
    demandVersion(present.version, version)
    if (edit.specification !== undefined) await demandFits(tx, id, edit.specification)
    demandBasis(edit.basis ?? (present.basis as Record<string, string>), edit.specification ?? (present.specification as object))
    const row = demandChanged(await updateFamily(tx, id, version, { ...edit, ...(leads === undefined ? {} : { leads: leads ?? Prisma.DbNull }) }))
    await changed(tx, actor, 'family.edited', id)
    return shown(row)
  })
}

/** A family that an engine names. */
export async function knownFamily(tx: Transaction, id: string | null, at: string): Promise<FamilyRow | null> {
  if (id === null) return null
  const row = await familyById(tx, id)
  if (row === null) throw badField(at, 'an engine family of the chain', id)
  return row
}

async function demandFits(tx: Transaction, id: string, specification: object): Promise<void> {
  demandSpecification(specification, '/specification')
  for (const engine of await enginesOfFamily(tx, id)) {
    const fault = specificationErrors(laidOver(specification, engine.specification as object), '')[0]
    if (fault !== undefined) throw problem('conflict', `The engine "${engine.description}" (${engine.id}) would not fit: ${fault.path} needs ${fault.expected}.`)
  }
}

/** A basis belongs to a value that is there: `boreMm`, or `limits.minimum` for a part of one. */
function demandBasis(basis: Readonly<Record<string, string>>, specification: object): void {
  for (const field of Object.keys(basis)) {
    if (!Object.hasOwn(specification, field.split('.', 1)[0] ?? '')) throw badField(`/basis/${field}`, 'the name of a field of the specification', field)
  }
}

async function changed(tx: Transaction, actor: Actor, action: string, family: string): Promise<void> {
  await audit(tx, actor, null, action, { family })
  await emit(tx, { kind: 'engine.changed', garageId: null, body: { family } })
}

function shown({ createdAt: _, ...row }: FamilyRow): EngineFamily {
  return row as EngineFamily
}
