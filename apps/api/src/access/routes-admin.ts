import { idSchema, newOutsideAppSchema, newTabletSchema, outsideAppMadeSchema, outsideAppSchema, tabletMadeSchema, tabletSchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Config } from '../config.ts'
import type { App } from '../platform/http/app.ts'
import { listApps, makeApp, renewSecret, revokeApp } from './outside-apps.ts'
import { listTablets, makeTablet, renewCode, revokeTablet } from './tablets.ts'

const garageParams = z.strictObject({ garage: idSchema })
const tabletParams = z.strictObject({ tablet: idSchema })
const appParams = z.strictObject({ app: idSchema })

/** Which tablets and which outside apps may sign in. */
export async function adminRoutes(app: App, config: Config): Promise<void> {
  const { database, access } = app

  app.get('/v1/garages/:garage/tablets', {
    config: { action: 'settings.read' },
    schema: { tags: ['tablets'], summary: 'Tablets of a garage', params: garageParams, response: { 200: z.strictObject({ items: z.array(tabletSchema) }) } },
  }, async (request) => ({ items: await listTablets(database, request.actor, request.params.garage) }))

  app.post('/v1/garages/:garage/tablets', {
    config: { action: 'settings.write' },
    schema: { tags: ['tablets'], summary: 'Prepare a tablet for a bay', params: garageParams, body: newTabletSchema, response: { 201: tabletMadeSchema } },
  }, async (request, reply) => reply.code(201).send(await makeTablet(database, request.actor, request.params.garage, request.body, !config.production)))

  app.post('/v1/tablets/:tablet/enrolment-code', {
    config: { action: 'settings.write' },
    schema: { tags: ['tablets'], summary: 'A new one-time code; the device before it ends', params: tabletParams, response: { 200: tabletMadeSchema } },
  }, async (request) => {
    const made = await renewCode(database, request.actor, request.params.tablet, !config.production)
    access.forget(made.id)
    return made
  })

  app.post('/v1/tablets/:tablet/revocation', {
    config: { action: 'settings.write' },
    schema: { tags: ['tablets'], summary: 'Take a tablet out of use', params: tabletParams, response: { 200: tabletSchema } },
  }, async (request) => {
    const revoked = await revokeTablet(database, request.actor, request.params.tablet)
    access.forget(revoked.id)
    return revoked
  })

  app.get('/v1/apps', {
    config: { action: 'settings.write' },
    schema: { tags: ['outside apps'], summary: 'Outside apps', response: { 200: z.strictObject({ items: z.array(outsideAppSchema) }) } },
  }, async (request) => ({ items: await listApps(database, request.actor) }))

  app.post('/v1/apps', {
    config: { action: 'settings.write' },
    schema: { tags: ['outside apps'], summary: 'Let an outside app in', body: newOutsideAppSchema, response: { 201: outsideAppMadeSchema } },
  }, async (request, reply) => reply.code(201).send(await makeApp(database, request.actor, request.body)))

  app.post('/v1/apps/:app/secret', {
    config: { action: 'settings.write' },
    schema: { tags: ['outside apps'], summary: 'A new secret; the old one ends', params: appParams, response: { 200: outsideAppMadeSchema } },
  }, (request) => renewSecret(database, request.actor, request.params.app))

  app.post('/v1/apps/:app/revocation', {
    config: { action: 'settings.write' },
    schema: { tags: ['outside apps'], summary: 'Shut an outside app out', params: appParams, response: { 200: outsideAppSchema } },
  }, async (request) => {
    const revoked = await revokeApp(database, request.actor, request.params.app)
    access.forget(revoked.id)
    return revoked
  })
}
