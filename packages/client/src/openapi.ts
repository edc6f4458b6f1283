/** Types of the API. Written by openapi-typescript once the document exists; until then every path takes and answers anything. */
interface Anything {
  parameters: { query?: Record<string, unknown>; path?: Record<string, unknown>; header?: Record<string, unknown> }
  requestBody?: { content: { 'application/json': any } }
  responses: { 200: { content: { 'application/json': any } }; default: { content: { 'application/problem+json': import('@evenbore/contract').Problem } } }
}
export type paths = Record<string, Record<'get' | 'post' | 'put' | 'patch' | 'delete', Anything>>
export type components = { schemas: Record<string, any> }
