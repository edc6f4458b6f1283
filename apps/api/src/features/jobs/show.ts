import { may, type Actor, type Job, type PersonRef } from '@evenbore/contract'
import type { Transaction } from '../../platform/database/database.ts'
import { shownCustomer } from '../customers/service.ts'
import { knownEngine, shownEngine } from '../engines/service.ts'
import { shownVehicle } from '../vehicles/service.ts'
import { summaryOf, type JobFacts } from './facts.ts'
import { permittedMinor } from './standing.ts'
import { names, type JobRow } from './store.ts'

/** A job as the API shows it to this actor. */
export async function shownJob(tx: Transaction, actor: Actor, row: JobRow, facts: JobFacts): Promise<Job> {
  const sees = may(actor, 'customers.read', { garage: row.garageId, bay: row.bayId })
  const engine = await knownEngine(tx, row.engineId)
  const people = await names(tx, [row.bookedById, ...row.contacts.map(({ byId }) => byId), ...row.partsOrders.flatMap(({ orderedById, arrivedById }) => [orderedById, arrivedById])])
  const permitted = permittedMinor(facts)
  return {
    ...summaryOf(facts, sees),
    customerRecord: sees ? shownCustomer(row.customer) : null,
    vehicleRecord: shownVehicle({ ...row.vehicle, engine: row.vehicle.fittings[0]?.engineId ?? null }),
    engineRecord: shownEngine(engine, actor),
    odometerKm: row.odometerKm,
    priorWork: row.priorWork as Job['priorWork'],
    comeBackOf: row.comeBackOfId,
    bookedBy: personRef(people, row.bookedById),
    contacts: row.contacts.map((contact) => shownContact(contact, people)),
    parts: row.partsOrders.map((part) => shownPart(part, people)),
    permitted: permitted === null ? null : { amountMinor: permitted, currency: row.garage.currency },
    cancelReason: row.cancelReason,
    handedOverAt: row.handedOverAt?.toISOString() ?? null,
    version: row.version,
  }
}

/** A talk or a note, with who had it. */
export function shownContact(contact: JobRow['contacts'][number], people: ReadonlyMap<string, string>): Job['contacts'][number] {
  const { id, kind, text, nextAt, byId, at } = contact
  return { id, kind: kind as Job['contacts'][number]['kind'], text, nextAt: nextAt?.toISOString() ?? null, by: personRef(people, byId), at: at.toISOString() }
}

/** Parts ordered, and whether they have come. */
export function shownPart(part: JobRow['partsOrders'][number], people: ReadonlyMap<string, string>): Job['parts'][number] {
  return {
    id: part.id, text: part.text, orderedAt: part.orderedAt.toISOString(), orderedBy: personRef(people, part.orderedById),
    expectedAt: part.expectedAt?.toISOString() ?? null, arrivedAt: part.arrivedAt?.toISOString() ?? null, arrivedBy: personRef(people, part.arrivedById),
  }
}

function personRef(people: ReadonlyMap<string, string>, id: string | null): PersonRef | null {
  return id === null ? null : { id, name: people.get(id) ?? '' }
}
