import type { Actor, Contact, NewContact, NewPartsOrder, PartsOrder } from '@evenbore/contract'
import { personOf } from '../../access/actors.ts'
import { demand } from '../../access/door.ts'
import type { Database, Transaction } from '../../platform/database/database.ts'
import { problem } from '../../platform/problems/problem.ts'
import { demandJob, demandOpen } from './service.ts'
import { shownContact, shownPart } from './show.ts'
import { arrived, factsOfJob, insertContact, insertPart, names, partById, partsOf } from './store.ts'
import { told } from './told.ts'

/** Notes a talk with the customer, or something for the next person. Also after hand-over: people ring. */
export async function noteContact(tx: Transaction, actor: Actor, job: string, { nextAt, ...contact }: NewContact): Promise<Contact> {
  const facts = await demandJob(tx, actor, 'jobs.note', job)
  const byId = personOf(actor)
  const row = await insertContact(tx, { jobId: job, byId, nextAt, ...contact })
  await told(tx, facts, { contact: row.id })
  return shownContact(row, await names(tx, [byId]))
}

/** Parts ordered for a job, in the order of ordering. */
export async function listParts(database: Database, actor: Actor, job: string): Promise<PartsOrder[]> {
  await demandJob(database.prisma, actor, 'jobs.read', job)
  const rows = await partsOf(database.prisma, job)
  const people = await names(database.prisma, rows.flatMap(({ orderedById, arrivedById }) => [orderedById, arrivedById]))
  return rows.map((row) => shownPart(row, people))
}

/** Orders parts: the job waits for them until they have come. */
export async function orderPart(tx: Transaction, actor: Actor, job: string, part: NewPartsOrder): Promise<PartsOrder> {
  const facts = await demandJob(tx, actor, 'parts.write', job)
  demandOpen(facts)
  const orderedById = personOf(actor)
  const row = await insertPart(tx, { jobId: job, orderedById, ...part })
  await told(tx, facts, { partsOrdered: row.id })
  return shownPart(row, await names(tx, [orderedById]))
}

/** Records that parts have come. Said twice, the first counts. */
export async function partArrived(database: Database, actor: Actor, id: string): Promise<PartsOrder> {
  return database.transaction(async (tx) => {
    const part = await partById(tx, id)
    const facts = part === null ? undefined : await factsOfJob(tx, part.jobId)
    demand(actor, 'parts.write', { garage: facts?.garage })
    if (part === null || facts === undefined) throw problem('not-found')
    if (part.arrivedAt === null) {
      await arrived(tx, id, personOf(actor))
      await told(tx, facts, { partsArrived: id })
    }
    const row = (await partById(tx, id)) ?? part
    return shownPart(row, await names(tx, [row.orderedById, row.arrivedById]))
  })
}
