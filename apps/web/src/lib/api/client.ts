import { createClient } from '@evenbore/client'
import { leaving, renewAlone } from './alone.ts'

/** The one client of this page. Tokens live in memory; the refresh token is a cookie that scripts cannot read. */
export const client = createClient({
  baseUrl: globalThis.location?.origin ?? 'http://127.0.0.1',
  refresh: 'cookie',
  // a refresh token works once: two tabs that renew at the same moment would end the sign-in of both
  exclusive: renewAlone,
  leaving,
})
