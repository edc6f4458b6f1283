import { z } from 'zod'
import { scopeSchema } from '@evenbore/contract'

/** What an access token says. Roles are not in it: they are read with the token's first use and again shortly after. */
export const claimsSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('person'), sub: z.uuid(), family: z.uuid(), exp: z.number() }),
  z.object({ kind: z.literal('tablet'), sub: z.uuid(), family: z.uuid(), tablet: z.uuid(), exp: z.number() }),
  z.object({ kind: z.literal('app'), sub: z.uuid(), scopes: z.array(scopeSchema), exp: z.number() }),
])
export type Claims = z.infer<typeof claimsSchema>

/** Life of an access token. */
export const ACCESS_SECONDS = 600
/** Life of a refresh token: of people, and of people at a tablet, who sign in anew each day. */
export const REFRESH_SECONDS = { person: 30 * 86_400, tablet: 86_400 } as const
