import type { Routes } from '../platform/http/app.ts'
import { eventRoutes } from './events/routes.ts'
import { sessionRoutes } from './sessions/routes.ts'
import { trailRoutes } from './trail/routes.ts'

/** Every feature of the service; `app.ts` says what a feature looks like. One line each. */
export const features: readonly Routes[] = [eventRoutes, sessionRoutes, trailRoutes]
