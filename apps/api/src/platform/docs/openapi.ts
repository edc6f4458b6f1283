import swagger from '@fastify/swagger'
import { jsonSchemaTransform, jsonSchemaTransformObject } from 'fastify-type-provider-zod'
import plugin from 'fastify-plugin'

/** The parts of an OpenAPI 3.1 document that the readable documentation shows. */
export type OpenApiDocument = {
  readonly info: { readonly title: string; readonly version: string; readonly description?: string }
  readonly paths: Readonly<Record<string, Readonly<Record<string, OpenApiOperation>>>>
  readonly components: { readonly schemas: Readonly<Record<string, unknown>> }
}
export type OpenApiOperation = {
  readonly summary?: string
  readonly description?: string
  readonly tags?: readonly string[]
  readonly parameters?: readonly { readonly name: string; readonly in: string; readonly required?: boolean; readonly schema?: unknown }[]
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema: unknown }>> }
  readonly responses?: Readonly<Record<string, { readonly description?: string; readonly content?: Readonly<Record<string, { readonly schema: unknown }>> }>>
  readonly security?: readonly unknown[]
  readonly 'x-action'?: string
}

declare module 'fastify' {
  interface FastifyInstance {
    /** The published document, made once all routes are there. */
    openapi: () => { readonly document: OpenApiDocument; readonly text: string }
  }
}

const DESCRIPTION = `The shared record and second opinion of a chain of garages.
Errors are problem details (RFC 9457), described at /docs/problems. Lists come in pages: pass \`next\` as \`after\`.
What can be edited carries an ETag, and edits ask for it in If-Match.`

/** OpenAPI 3.1 from the routes' own schemas. Paths outside /v1 are left out. */
export const openApi = plugin<{ version: string; openActions: ReadonlySet<string> }>(
  async (app, { version, openActions }) => {
    await app.register(swagger, {
      openapi: {
        openapi: '3.1.0',
        info: { title: 'Evenbore', version, description: DESCRIPTION },
        servers: [{ url: '/' }],
        components: {
          securitySchemes: {
            token: { type: 'http', scheme: 'bearer', bearerFormat: 'JWT', description: 'an access token: of a person, of a person at a tablet, or of an outside app' },
            app: { type: 'oauth2', flows: { clientCredentials: { tokenUrl: '/v1/token', scopes: {} } } },
          },
        },
        security: [{ token: [] }],
      },
      transform: (route) => {
        const { schema, url } = jsonSchemaTransform(route as never) as { schema: Record<string, unknown>; url: string }
        if (!url.startsWith('/v1')) return { schema: { hide: true }, url } as never
        const action = (route.route as { config?: { action?: string } }).config?.action ?? ''
        const open = openActions.has(action)
        return { schema: { ...schema, 'x-action': action, ...(open ? { security: [] } : {}), response: withProblem(schema?.['response']) }, url } as never
      },
      transformObject: jsonSchemaTransformObject as never,
    })
    let made: ReturnType<typeof app.openapi> | undefined
    app.decorate('openapi', () => {
      if (made === undefined) {
        const document = app.swagger() as unknown as OpenApiDocument
        made = { document, text: JSON.stringify(document) }
      }
      return made
    })
  },
  { name: 'openapi' },
)

function withProblem(response: unknown): Record<string, unknown> {
  const problem = { description: 'A problem', content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } } }
  return { ...(response as Record<string, unknown> | undefined), default: problem }
}
