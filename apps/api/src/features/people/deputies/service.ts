import type { Actor, Deputy, NewDeputy } from '@evenbore/contract'
import { personOf } from '../../../access/actors.ts'
import { demand } from '../../../access/door.ts'
import type { Database, Transaction } from '../../../platform/database/database.ts'
import { badField, problem } from '../../../platform/problems/problem.ts'
import { changed, demandGarage } from '../../garages/service.ts'
import { deputiesOf, deputyById, holds, insertDeputy, names, revokeDeputy, type DeputyRow } from './store.ts'

/** Longer than this is no absence but another manager. */
const MOST_DAYS = 366

/** Who stands in for whom in a garage. */
export async function listDeputies(database: Database, actor: Actor, garage: string): Promise<Deputy[]> {
  await demandGarage(database.prisma, actor, 'settings.read', garage)
  return shown(database.prisma, await deputiesOf(database.prisma, garage))
}

/** Names somebody who may approve in a manager's place for a time, within the manager's limit. */
export async function nameDeputy(database: Database, actor: Actor, garage: string, { manager, deputy, from, until }: NewDeputy): Promise<Deputy> {
  return database.transaction(async (tx) => {
    const principal = manager ?? personOf(actor)
    demand(actor, 'deputies.write', { garage, author: principal })
    await demandGarage(tx, actor, 'deputies.write', garage)
    if (principal === null || !(await holds(tx, principal, garage, 'manager'))) throw badField('/manager', 'a manager of this garage', String(principal))
    if (deputy === principal || !(await holds(tx, deputy, garage, null))) throw badField('/deputy', 'somebody else who works in this garage', deputy)
    const begins = from === undefined ? new Date() : new Date(from)
    const ends = new Date(until)
    if (ends <= begins || ends <= new Date()) throw badField('/until', 'a moment later than `from` and than now', until)
    if (ends.getTime() - begins.getTime() > MOST_DAYS * 86_400_000) throw badField('/until', `at most ${MOST_DAYS} days after it begins`, until)
    const row = await insertDeputy(tx, { garageId: garage, managerId: principal, deputyId: deputy, from: begins, until: ends, createdById: personOf(actor) ?? principal })
    await changed(tx, actor, garage, 'deputy.named', { deputy: row.id, manager: principal, person: deputy })
    return one(tx, row)
  })
}

/** Ends it early. Said twice, the first counts. */
export async function endDeputy(database: Database, actor: Actor, id: string): Promise<Deputy> {
  return database.transaction(async (tx) => {
    const present = await deputyById(tx, id)
    demand(actor, 'deputies.write', { garage: present?.garageId, author: present?.managerId })
    if (present === null) throw problem('not-found')
    if (present.revokedAt !== null) return one(tx, present)
    const row = await revokeDeputy(tx, id)
    await changed(tx, actor, row.garageId, 'deputy.ended', { deputy: id })
    return one(tx, row)
  })
}

async function one(tx: Transaction, row: DeputyRow): Promise<Deputy> {
  return (await shown(tx, [row]))[0] as Deputy
}

async function shown(tx: Transaction, rows: readonly DeputyRow[]): Promise<Deputy[]> {
  const people = await names(tx, rows.flatMap(({ managerId, deputyId }) => [managerId, deputyId]))
  const ref = (id: string) => ({ id, name: people.get(id) ?? '' })
  return rows.map((row) => ({
    id: row.id, garage: row.garageId, manager: ref(row.managerId), deputy: ref(row.deputyId),
    from: row.from.toISOString(), until: row.until.toISOString(), revokedAt: row.revokedAt?.toISOString() ?? null,
  }))
}
