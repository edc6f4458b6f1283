import type { Gauge as GaugeRow, Prisma } from '../../../generated/prisma/client.ts'
import type { Transaction } from '../../../platform/database/database.ts'
import { newId } from '../../../platform/ids.ts'

export type { GaugeRow }

export function gaugesOf(tx: Transaction, garageId: string): Promise<GaugeRow[]> {
  return tx.gauge.findMany({ where: { garageId }, orderBy: [{ kind: 'asc' }, { name: 'asc' }], take: 1000 })
}

export function gaugeById(tx: Transaction, id: string): Promise<GaugeRow | null> {
  return tx.gauge.findUnique({ where: { id } })
}

export function insertGauge(tx: Transaction, garageId: string, gauge: Omit<Prisma.GaugeCreateManyInput, 'id' | 'garageId'>): Promise<GaugeRow> {
  return tx.gauge.create({ data: { id: newId(), garageId, ...gauge } })
}

export function updateGauge(tx: Transaction, id: string, version: number, data: Prisma.GaugeUpdateManyMutationInput): Promise<GaugeRow[]> {
  return tx.gauge.updateManyAndReturn({ where: { id, version }, data: { ...data, version: { increment: 1 } } })
}
