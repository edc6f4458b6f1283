import type { Actor, Bay, BayEdit, NewBay } from '@evenbore/contract'
import { demand } from '../../../access/door.ts'
import type { Database, Transaction } from '../../../platform/database/database.ts'
import { demandChanged, demandVersion } from '../../../platform/http/etag.ts'
import { problem } from '../../../platform/problems/problem.ts'
import { changed, demandGarage } from '../service.ts'
import { bayById, baysOf, insertBay, jobInBay, updateBay, type BayRow } from './store.ts'

/** The bays of a garage, closed ones included, as they stand. */
export async function listBays(database: Database, actor: Actor, garage: string): Promise<Bay[]> {
  await demandGarage(database.prisma, actor, 'garages.read', garage)
  return (await baysOf(database.prisma, garage)).map(shown)
}

export async function makeBay(database: Database, actor: Actor, garage: string, bay: NewBay): Promise<Bay> {
  return database.transaction(async (tx) => {
    await demandGarage(tx, actor, 'settings.write', garage)
    const row = await insertBay(tx, garage, bay)
    await changed(tx, actor, garage, 'bay.made', { bay: row.id })
    return shown(row)
  })
}

/** Edits a bay. One that holds a job is not closed: the job would be nowhere. */
export async function editBay(database: Database, actor: Actor, id: string, version: number, { closed, ...edit }: BayEdit): Promise<Bay> {
  return database.transaction(async (tx) => {
    const present = await bayById(tx, id)
    demand(actor, 'settings.write', { garage: present?.garageId })
    if (present === null) throw problem('not-found')
    demandVersion(present.version, version)
    if (closed === true) await demandEmpty(tx, id)
    const closedAt = closed === undefined ? {} : { closedAt: closed ? (present.closedAt ?? new Date()) : null }
    const row = demandChanged(await updateBay(tx, id, version, { ...edit, ...closedAt }))
    await changed(tx, actor, row.garageId, 'bay.edited', { bay: id })
    return shown(row)
  })
}

/** A bay of this garage in which a job can be placed, or undefined. */
export async function openBay(tx: Transaction, garage: string, id: string): Promise<BayRow | undefined> {
  const bay = await bayById(tx, id)
  return bay !== null && bay.garageId === garage && bay.closedAt === null ? bay : undefined
}

/** @throws problem `conflict` that names the job in the bay */
export async function demandEmpty(tx: Transaction, bay: string): Promise<void> {
  const code = await jobInBay(tx, bay)
  if (code !== undefined) throw problem('conflict', `This bay holds job ${code}.`)
}

function shown(row: BayRow): Bay {
  return { id: row.id, garage: row.garageId, name: row.name, position: row.position, closedAt: row.closedAt?.toISOString() ?? null, version: row.version }
}
