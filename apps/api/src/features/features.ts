import type { Routes } from '../platform/http/app.ts'
import { customerRoutes } from './customers/routes.ts'
import { engineRoutes } from './engines/routes.ts'
import { evaluationRoutes } from './evaluations/routes.ts'
import { eventRoutes } from './events/routes.ts'
import { exchangeRoutes } from './exchange/routes.ts'
import { garageRoutes } from './garages/routes.ts'
import { jobRoutes } from './jobs/routes.ts'
import { paperRoutes } from './papers/routes.ts'
import { peopleRoutes } from './people/routes.ts'
import { photoRoutes } from './photos/routes.ts'
import { quoteRoutes } from './quotes/routes.ts'
import { repairRoutes } from './repairs/routes.ts'
import { reportRoutes } from './reports/routes.ts'
import { retestRoutes } from './retests/routes.ts'
import { sessionRoutes } from './sessions/routes.ts'
import { trailRoutes } from './trail/routes.ts'
import { vehicleRoutes } from './vehicles/routes.ts'

/** Every feature of the service; `app.ts` says what a feature looks like. One line each. */
export const features: readonly Routes[] = [
  eventRoutes, sessionRoutes, photoRoutes, evaluationRoutes, trailRoutes, quoteRoutes, repairRoutes, retestRoutes, reportRoutes, paperRoutes, exchangeRoutes, garageRoutes, peopleRoutes, customerRoutes, vehicleRoutes, engineRoutes, jobRoutes,
]
