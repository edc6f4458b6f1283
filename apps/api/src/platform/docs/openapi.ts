import { BODY_EXAMPLES } from '@evenbore/contract'
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
  interface FastifyContextConfig {
    /** The route takes an Idempotency-Key. */
    takesKey?: true
    /** If-Match outside of PATCH, which always takes it. */
    takesVersion?: true
  }
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
        const headers = headersOf(route.route as { method: string | readonly string[]; url: string; config?: { takesKey?: true; takesVersion?: true } })
        return { schema: { ...schema, ...headers, 'x-action': action, ...(open ? { security: [] } : {}), response: withProblem(schema?.['response']) }, url } as never
      },
      transformObject: jsonSchemaTransformObject as never,
    })
    let made: ReturnType<typeof app.openapi> | undefined
    app.decorate('openapi', () => {
      if (made === undefined) {
        const document = withExamples(app.swagger() as unknown as OpenApiDocument)
        made = { document, text: JSON.stringify(document) }
      }
      return made
    })
  },
  { name: 'openapi' },
)

/** Headers that a handler reads itself, so that they stand in no schema: If-Match of an edit, Idempotency-Key where a route takes one. */
function headersOf({ method, url, config }: { readonly method: string | readonly string[]; readonly url: string; readonly config?: { readonly takesKey?: true; readonly takesVersion?: true } }): object {
  // One's own preferences have no versions: the last word counts.
  const readsVersion = config?.takesVersion === true || ([method].flat().includes('PATCH') && url !== '/v1/me')
  const properties = {
    ...(readsVersion ? { 'if-match': { type: 'string', description: 'the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one', examples: ['"3"'] } } : {}),
    ...(config?.takesVersion === true && [method].flat().includes('PUT') ? { 'if-none-match': { type: 'string', description: '`*` instead of if-match: starts the first one' } } : {}),
    ...(config?.takesKey ? { 'idempotency-key': { type: 'string', description: 'the same key and body again are answered as the first time; 8 to 200 characters' } } : {}),
  }
  return Object.keys(properties).length === 0 ? {} : { headers: { type: 'object', properties } }
}

/** Each body with its example; a schema that is read and written has the name of the written one with `Input` behind it. */
function withExamples(document: OpenApiDocument): OpenApiDocument {
  for (const [name, schema] of Object.entries(document.components.schemas)) {
    const example = BODY_EXAMPLES[name.replace(/Input$/, '')]
    if (example !== undefined) (schema as { examples?: unknown[] }).examples = [example]
  }
  return document
}

function withProblem(response: unknown): Record<string, unknown> {
  const problem = { description: 'A problem', content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } } }
  return { ...(response as Record<string, unknown> | undefined), default: problem }
}
