import type { DemoAccounts } from './accounts.ts'
import { need } from './answer.ts'
import { JOBS, VEHICLES, type DemoJob, type DemoVehicle, type GarageKey } from './chain/index.ts'
import { crewOf, type Crew } from './crew.ts'
import { decide, type Visit } from './decide.ts'
import { measure } from './measure.ts'
import { finish } from './finish.ts'

const HOUR_MS = 3_600_000
const inHours = (hours: number | undefined) => (hours === undefined ? null : new Date(Date.now() + hours * HOUR_MS).toISOString())

/** Books every visit of the chain and takes each as far as its story goes. Reports after each visit. */
export async function loadJobs(options: { readonly baseUrl: string; readonly accounts: DemoAccounts; readonly onProgress?: (done: number, of: number) => void }): Promise<void> {
  const crews = new Map<GarageKey, Crew>()
  const known = new Map<string, { customer: string; vehicle: string }>()
  for (const [index, job] of JOBS.entries()) {
    const crew = crews.get(job.garage) ?? (await crewOf(options.baseUrl, options.accounts, job.garage))
    crews.set(job.garage, crew)
    await loadJob(job, crew, options.accounts, known)
    options.onProgress?.(index + 1, JOBS.length)
  }
}

async function loadJob(job: DemoJob, crew: Crew, accounts: DemoAccounts, known: Map<string, { customer: string; vehicle: string }>): Promise<void> {
  const garage = accounts.garages.get(job.garage)!
  const vehicle = VEHICLES.find((candidate) => candidate.key === job.vehicle)!
  const booked = await book(job, vehicle, crew, accounts, known)
  const visit: Visit = { job, id: booked.id, garage, crew, customerName: vehicle.customer.name, phone: vehicle.customer.phone }
  const path = { job: booked.id }
  if (job.bay) await need(crew.technician.POST('/v1/jobs/{job}/bay', { params: { path }, body: { bay: garage.bays.get(job.bay)! } }))
  for (const session of job.sessions ?? []) await measure(visit, session, 'test')
  await decide(visit)
  for (const { kind, text, nextInHours } of job.contacts ?? []) await need(crew.desk.POST('/v1/jobs/{job}/contacts', { params: { path }, body: { kind, text, nextAt: inHours(nextInHours) } }))
  await finish(visit)
}

async function book(job: DemoJob, vehicle: DemoVehicle, crew: Crew, accounts: DemoAccounts, known: Map<string, { customer: string; vehicle: string }>) {
  const before = known.get(vehicle.key)
  const { name, phone, email } = vehicle.customer
  const booked = await need(
    crew.desk.POST('/v1/garages/{garage}/jobs', {
      params: { path: { garage: accounts.garages.get(job.garage)!.id } },
      body: {
        customer: before?.customer ?? { name, phone, email: email ?? null },
        vehicle: before?.vehicle ?? { plate: vehicle.plate, description: vehicle.description, year: vehicle.year ?? null },
        ...(before ? {} : { engine: { family: accounts.families.get(vehicle.family)!, description: vehicle.engine, stampedNumber: vehicle.stampedNumber ?? null, history: vehicle.history ?? {} } }),
        complaint: job.complaint,
        odometerKm: job.odometerKm ?? null,
        priorWork: job.priorWork ?? {},
        promisedAt: inHours(job.promisedInHours),
      },
    }),
  )
  known.set(vehicle.key, { customer: booked.customerRecord!.id, vehicle: booked.vehicleRecord.id })
  return booked
}
