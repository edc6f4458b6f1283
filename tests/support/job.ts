import type { EngineSpecification } from '@evenbore/contract'
import { newId } from '../../apps/api/src/platform/ids.ts'
import type { TestGarage } from './chain.ts'
import type { TestService } from './service.ts'

/** A job with its customer, vehicle and engine. */
export type TestJob = { readonly id: string; readonly code: string; readonly engine: string; readonly vehicle: string; readonly customer: string; readonly gauge: string; readonly tester: string }

/** An inline petrol four with one gasket and the firing order of most of them. */
export const INLINE_FOUR: EngineSpecification = {
  fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], boreMm: 84, strokeMm: 89, compressionRatio: 8.8, valveGear: 'overhead', cooling: 'water',
}

let number = 0

/** Books a job straight into the database of the test. Its garage has a compression gauge and a leakage tester. */
export async function testJob(service: TestService, garage: TestGarage, engine: EngineSpecification = INLINE_FOUR): Promise<TestJob> {
  const { prisma } = service.database
  const job = { id: newId(), code: `T ${++number}`, engine: newId(), vehicle: newId(), customer: newId(), gauge: newId(), tester: newId() }
  const psi = (value: number) => ({ value, unit: 'psi' })
  await prisma.gauge.createMany({
    data: [
      { id: job.gauge, garageId: garage.id, name: `Gauge ${number}`, kind: 'compression', specification: { span: psi(300), accuracyClass: 1.6, resolution: psi(1) } },
      { id: job.tester, garageId: garage.id, name: `Tester ${number}`, kind: 'leakage', specification: { supply: psi(80), restrictorMm: 1.016 } },
    ],
  })
  await prisma.customer.create({ data: { id: job.customer, garageId: garage.id, name: 'Cora Customer', phone: '555 0100', phoneDigits: '5550100' } })
  await prisma.vehicle.create({ data: { id: job.vehicle, garageId: garage.id, customerId: job.customer, plate: `TT ${number}`, plateKey: `TT${number}`, description: 'grey estate' } })
  await prisma.engine.create({ data: { id: job.engine, specification: engine as object, description: 'test engine', history: {} } })
  await prisma.job.create({
    data: { id: job.id, garageId: garage.id, code: job.code, customerId: job.customer, vehicleId: job.vehicle, engineId: job.engine, complaint: 'down on power', priorWork: {} },
  })
  return job
}
