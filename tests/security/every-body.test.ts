import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { testApp, testChain, testService, testTablet, type TestChain, type TestService } from '../support/index.ts'
import { makeRecords, type Records } from './records.ts'
import { requests, type RouteRequest } from './requests.ts'
import { SCOPES } from './table.ts'

/** The part of JSON Schema that tells which types a field may have. */
type Schema = { readonly $ref?: string; readonly type?: string | readonly string[]; readonly const?: unknown; readonly enum?: readonly unknown[]; readonly anyOf?: readonly Schema[]; readonly oneOf?: readonly Schema[]; readonly allOf?: readonly Schema[]; readonly properties?: Readonly<Record<string, Schema>> }

/** A value of each type that JSON has, none of them likely to be right even where its type is. */
const VALUES: Readonly<Record<string, readonly unknown[]>> = {
  string: ['', 'x'.repeat(5000), 'a\u0000b'], number: [-1, 1e308, 0.123456789], boolean: [true], null: [null], array: [[], [[]]], object: [{}, { surprise: 1 }],
}
/** Signed in otherwise than by an access token, or answered in the words of another standard. */
const NOT_HERE = new Set(['POST /v1/token'])

/**
 * `tests/acceptance/bad-input.test.ts` spoils the examples of every body; here the records that a body speaks of are really there, so that
 * a value of the right type, however odd, gets past the schema to the services and the database.
 */
let service: TestService
let chain: TestChain
let records: Records
let schemas: Readonly<Record<string, Schema>>

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  const apps = await Promise.all(SCOPES.map((scope) => testApp(service, [scope])))
  records = await makeRecords(service, chain, await testTablet(service, chain.mill), apps)
  schemas = service.app.openapi().document.components.schemas as Readonly<Record<string, Schema>>
})
afterAll(() => service.close())

type Answer = { readonly status: number; readonly type: string; readonly errors: readonly { readonly path: string; readonly expected: string }[] }

async function send(route: string, { params = {}, query, headers = {} }: RouteRequest, payload: unknown): Promise<Answer> {
  const [method, template] = route.split(' ') as [string, string]
  const path = template.replace(/\{(\w+)\}/g, (_, name: string) => params[name] ?? 'x')
  const answer = await service.app.inject({
    method: method as 'POST',
    url: `${path}${query === undefined ? '' : `?${query}`}`,
    headers: { ...headers, authorization: `Bearer ${chain.owner.token}`, 'content-type': 'application/json' },
    payload: JSON.stringify(payload),
  })
  const body = (answer.headers['content-type']?.toString().includes('json') ? answer.json() : {}) as { errors?: Answer['errors'] }
  return { status: answer.statusCode, type: String(answer.headers['content-type']), errors: body.errors ?? [] }
}

/** Routes with a JSON body: the body's schema, and how to ask. */
function bodies(): { route: string; schema: Schema; make: () => RouteRequest }[] {
  const { paths } = service.app.openapi().document
  return Object.entries(requests(chain, records)).flatMap(([route, make]) => {
    const [method, path] = route.split(' ') as [string, string]
    const schema = paths[path]?.[method.toLowerCase()]?.requestBody?.content['application/json']?.schema as Schema | undefined
    return schema === undefined || NOT_HERE.has(route) ? [] : [{ route, schema, make }]
  })
}

function resolved(schema: Schema): Schema[] {
  if (schema.$ref !== undefined) return resolved(schemas[schema.$ref.split('/').at(-1) ?? ''] ?? {})
  const parts = [...(schema.anyOf ?? []), ...(schema.oneOf ?? []), ...(schema.allOf ?? [])]
  return parts.length === 0 ? [schema] : parts.flatMap(resolved)
}

/** JSON types that a field may have; undefined where the schema leaves it open. */
function typesOf(schema: Schema): ReadonlySet<string> | undefined {
  const types = resolved(schema).flatMap(({ type, const: only, enum: few }) => type ?? (few ?? (only === undefined ? [] : [only])).map((value) => (value === null ? 'null' : typeof value)))
  if (types.length === 0) return undefined
  return new Set(types.flat().map((type) => (type === 'integer' ? 'number' : type)))
}

const problemOf = (answer: Answer) => answer.status >= 400 && answer.status < 500 && answer.type.includes('application/problem+json')

describe('every body of every route', () => {
  test('there are many, so that this test cannot pass by looking at nothing', () => {
    expect(bodies().length).toBeGreaterThan(35)
  })

  test('a field of a wrong type is a 4xx that names it; no value at all makes a 5xx', async () => {
    const wrong: string[] = []
    let demanded = 0
    for (const { route, schema, make } of bodies()) {
      for (const [field, of] of resolved(schema).flatMap((one) => Object.entries(one.properties ?? {}))) {
        const allowed = typesOf(of)
        for (const [type, values] of Object.entries(VALUES)) {
          for (const value of values) {
            const request = make()
            const answer = await send(route, request, { ...request.body, [field]: value })
            const mustFail = allowed !== undefined && !allowed.has(type)
            if (mustFail) demanded++
            const named = answer.errors.some(({ path, expected }) => (path === `/${field}` || path.startsWith(`/${field}/`)) && expected.length > 0)
            if (answer.status >= 500 || (mustFail && !(problemOf(answer) && named))) wrong.push(`${route} ${field}=${JSON.stringify(value).slice(0, 40)}: ${answer.status} ${JSON.stringify(answer.errors).slice(0, 120)}`)
          }
        }
      }
    }
    expect(wrong).toEqual([])
    expect(demanded).toBeGreaterThan(1500)
  }, 300_000)
})
