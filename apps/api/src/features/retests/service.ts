import type { Actor, Retest } from '@evenbore/contract'
import { z } from 'zod'
import { demand } from '../../access/door.ts'
import type { Database } from '../../platform/database/database.ts'
import { decodeCursor, toPage, type Page } from '../../platform/http/cursor.ts'
import { demandGarage } from '../garages/service.ts'
import { demandJob } from '../jobs/service.ts'
import { retestsOfGarage, retestsOfJob } from './store.ts'
import { toRetest } from './wire.ts'

export { readComparison } from './comparison.ts'
export { oweRelease } from './owed.ts'

export type RetestsQuery = { readonly due?: 'true' | 'false'; readonly after?: string; readonly limit: number }

/** Retests of a garage, the earliest due first; `due` leaves out what was decided or taken up. */
export async function listRetests(database: Database, actor: Actor, garage: string, query: RetestsQuery): Promise<Page<Retest>> {
  demand(actor, 'retests.read', { garage })
  await demandGarage(database.prisma, actor, 'retests.read', garage)
  const after = decodeCursor(query.after, z.tuple([z.string().max(20), z.uuid()]))
  const rows = await retestsOfGarage(database, garage, query.due === 'true', after, query.limit)
  return toPage(rows, query.limit, ({ due, id }) => [due, id], toRetest)
}

/** Retests that a job owes or promised, and those that it was booked in for. */
export async function listJobRetests(database: Database, actor: Actor, job: string): Promise<Retest[]> {
  await demandJob(database.prisma, actor, 'retests.read', job)
  return (await retestsOfJob(database.prisma, job)).map(toRetest)
}
