export { APPS, OWNER, PEOPLE } from './people.ts'
export { FAMILIES } from './families.ts'
export { GARAGES } from './garages.ts'
export { VEHICLES } from './vehicles.ts'
export type { DemoFamily, DemoGarage, DemoJob, DemoLine, DemoPerson, DemoSession, DemoVehicle, GarageKey } from './types.ts'
import { HARBOUR_JOBS } from './jobs/harbour.ts'
import { MILL_JOBS } from './jobs/mill.ts'
import { TANNERY_JOBS } from './jobs/tannery.ts'
import type { DemoJob } from './types.ts'

/** Forty visits, in every stage a job can stand in. */
export const JOBS: readonly DemoJob[] = [...MILL_JOBS, ...HARBOUR_JOBS, ...TANNERY_JOBS]
