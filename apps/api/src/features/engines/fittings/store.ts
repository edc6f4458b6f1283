import type { Prisma } from '../../../generated/prisma/client.ts'
import type { Transaction } from '../../../platform/database/database.ts'
import { newId } from '../../../platform/ids.ts'

const WITH = { vehicle: { select: { id: true, plate: true, garageId: true } } } as const
/** A fitting with the vehicle it is in. */
export type FittingRow = Prisma.FittingGetPayload<{ include: typeof WITH }>

export function fittingById(tx: Transaction, id: string): Promise<FittingRow | null> {
  return tx.fitting.findUnique({ where: { id }, include: WITH })
}

/** The vehicle that an engine sits in now. */
export function fittingOfEngine(tx: Transaction, engineId: string): Promise<FittingRow | null> {
  return tx.fitting.findFirst({ where: { engineId, until: null }, include: WITH })
}

/** The engine that sits in a vehicle now. */
export function fittingOfVehicle(tx: Transaction, vehicleId: string): Promise<FittingRow | null> {
  return tx.fitting.findFirst({ where: { vehicleId, until: null }, include: WITH })
}

/** Two exclusion constraints refuse what overlaps: one vehicle at a time, one engine at a time. */
export function insertFitting(tx: Transaction, fitting: Omit<Prisma.FittingUncheckedCreateInput, 'id'>): Promise<FittingRow> {
  return tx.fitting.create({ data: { id: newId(), ...fitting }, include: WITH })
}

/** Ends a fitting that has not ended; false when it has. */
export async function endFitting(tx: Transaction, id: string, until: Date): Promise<boolean> {
  return (await tx.fitting.updateMany({ where: { id, until: null }, data: { until } })).count === 1
}
