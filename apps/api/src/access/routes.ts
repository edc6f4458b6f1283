import plugin from 'fastify-plugin'
import type { Config } from '../config.ts'
import type { App } from '../platform/http/app.ts'
import { door } from './door.ts'
import { signingKeys, type SigningKeys } from './keys.ts'
import { adminRoutes } from './routes-admin.ts'
import { signInRoutes } from './routes-sign-in.ts'
import { tabletRoutes } from './routes-tablet.ts'
import { tokenRoutes } from './routes-token.ts'
import { verifiedTokens } from './verified.ts'

/** What the routes of access need to know of the configuration. */
type AccessOptions = { readonly config: Config }

declare module 'fastify' {
  interface FastifyInstance {
    keys: SigningKeys
  }
}

/** Puts the door before every route that is registered after this. */
export async function openAccess(app: App, config: Config): Promise<void> {
  const keys = await signingKeys(app.database)
  app.decorate('keys', keys)
  await app.register(door, { tokens: verifiedTokens(app.database, keys, config.production) })
}

/** Sign-in of people, tablets and outside apps, and who may sign in. */
export const accessRoutes = plugin<AccessOptions>(
  async (instance, { config }) => {
    const app = instance as unknown as App
    await signInRoutes(app, config)
    await tabletRoutes(app, config)
    await adminRoutes(app, config)
    await app.register(tokenRoutes as never, { config })
  },
  { name: 'access-routes', dependencies: ['door'] },
)
