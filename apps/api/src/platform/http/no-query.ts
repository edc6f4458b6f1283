import plugin from 'fastify-plugin'
import { z } from 'zod'

/** A route under /v1 that names no query takes none: a misspelt filter is refused instead of silently answering everything. */
export const noQuery = plugin(
  async (app) => {
    app.addHook('onRoute', (route) => {
      if (route.url.startsWith('/v1')) route.schema = { querystring: z.strictObject({}), ...route.schema }
    })
  },
  { name: 'no-query' },
)
