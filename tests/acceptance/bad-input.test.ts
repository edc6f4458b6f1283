import { BODY_EXAMPLES, problemSchema, type Problem } from '@evenbore/contract'
import { v7 } from 'uuid'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { testChain, testJob, testService, type TestChain, type TestService } from '../support/index.ts'
import { mutationsOf, type Components } from './mutations.ts'

/**
 * Whatever is sent, the answer is a 4xx that says where and what was expected; nothing is half written and nothing is a 5xx. The routes
 * come from the published document, so that none is left out: a new route with a body needs an example in the contract.
 */
let service: TestService
let chain: TestChain
let document: Document
/** Records that are there, by the name of their place in a path. */
let records: Record<string, string>

type Operation = { readonly requestBody?: { readonly content: Record<string, { readonly schema: { readonly $ref?: string } }> }; readonly parameters?: readonly { readonly name: string; readonly in: string; readonly required?: boolean }[]; readonly 'x-action'?: string }
type Document = { readonly paths: Record<string, Record<string, Operation>>; readonly components: { readonly schemas: Components } }
type Route = { readonly name: string; readonly method: string; readonly path: string; readonly operation: Operation; readonly schemaName: string | undefined }

function routes(): Route[] {
  return Object.entries(document.paths).flatMap(([path, methods]) => Object.entries(methods).map(([method, operation]) => ({
    name: `${method.toUpperCase()} ${path}`, method: method.toUpperCase(), path, operation, schemaName: operation.requestBody?.content['application/json']?.schema.$ref?.split('/').at(-1),
  })))
}
const withBody = () => routes().filter(({ operation }) => operation.requestBody !== undefined)
const exampleOf = (route: Route): unknown => BODY_EXAMPLES[route.schemaName?.replace(/Input$/, '') ?? ''] ?? (route.schemaName === undefined ? {} : undefined)

async function send(route: Route, body: unknown, { id = (_name: string): string => v7(), headers = {} as Record<string, string>, raw = false, query = '' } = {}) {
  const url = route.path.replaceAll(/\{(\w+)\}/g, (_, name: string) => id(name)) + query
  const answer = await service.app.inject({
    method: route.method as 'POST', url, headers: { authorization: `Bearer ${chain.owner.token}`, 'if-match': '"1"', 'idempotency-key': v7(), ...(body === undefined ? {} : { 'content-type': 'application/json' }), ...headers },
    ...(body === undefined ? {} : { payload: raw ? (body as string) : JSON.stringify(body) }),
  })
  return { status: answer.statusCode, type: answer.headers['content-type'], problem: (answer.body === '' ? {} : JSON.parse(answer.body)) as Problem }
}

/** A body of which nothing is required may be left out. */
const takesNothing = ({ schemaName }: Route) => schemaName === undefined || (document.components.schemas[schemaName]!.required ?? []).length === 0 && document.components.schemas[schemaName]!.oneOf === undefined

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  document = JSON.parse(service.app.openapi().text) as Document
  const job = await testJob(service, chain.mill)
  records = { garage: chain.mill.id, bay: chain.mill.bays[0]!, gauge: job.gauge, person: chain.mill.technician.id, customer: job.customer, vehicle: job.vehicle, engine: job.engine, job: job.id }
})
afterAll(() => service.close())

/** Faults found so far, as sentences; a test ends with none. */
function complaintsAbout(answer: Awaited<ReturnType<typeof send>>, what: string, pointer?: string): string[] {
  const { status, problem, type } = answer
  if (status < 400 || status >= 500) return [`${what}: answered ${status}`]
  if (!String(type).startsWith('application/problem+json') || !problemSchema.safeParse(problem).success) return [`${what}: ${status} is no problem document`]
  if (pointer === undefined) return []
  if (status !== 400 && status !== 422) return [`${what}: ${status} where the body is at fault`]
  const told = problem.errors ?? []
  // A union can only be named as a whole, so a path that leads to the field counts.
  const named = told.some(({ path, expected }) => expected !== '' && (path === pointer || path.startsWith(`${pointer}/`) || pointer.startsWith(`${path}/`) || path === ''))
  return named ? [] : [`${what}: the errors name ${told.map(({ path }) => path).join(', ') || 'nothing'}`]
}

describe('every body of every route', () => {
  test('has an example, which is not what is refused', async () => {
    const without = withBody().filter((route) => exampleOf(route) === undefined).map(({ name }) => name)
    expect(without).toEqual([])
    const refused: string[] = []
    for (const route of withBody()) {
      const { status, problem } = await send(route, exampleOf(route))
      // Ids in an example name nothing here: that is told by the path of the id, or by 404.
      const about = (problem.errors ?? []).filter(({ got, expected }) => !/ids? of|bay of|in use|a garage of|present code|vehicle|customer|engine|person|manager/.test(`${expected} ${got}`))
      if (status >= 500 || (status === 400 && about.length > 0)) refused.push(`${route.name}: ${status} ${JSON.stringify(problem.errors ?? problem)}`)
    }
    expect(refused).toEqual([])
  })

  test('is refused with the path of the field, whichever field is spoiled', async () => {
    const complaints: string[] = []
    let tried = 0
    for (const route of withBody()) {
      const schema = route.schemaName === undefined ? undefined : document.components.schemas[route.schemaName]
      if (schema === undefined) continue
      for (const { what, pointer, body } of mutationsOf(exampleOf(route), schema, document.components.schemas)) {
        tried++
        complaints.push(...complaintsAbout(await send(route, body), `${route.name}, ${what}`, pointer))
      }
    }
    expect(complaints).toEqual([])
    expect(tried).toBeGreaterThan(1_500)
  }, 180_000)

  test.each([
    ['broken JSON', '{"reading": '], ['no JSON object', '"words"'], ['a list', '[]'], ['nothing', ''], ['null', 'null'], ['bytes', '\u0000\u0001'], ['numbers that are none', '{"a": NaN}'], ['a name twice and a prototype', '{"__proto__": {"a": 1}}'],
  ])('%s is refused', async (what, text) => {
    const complaints: string[] = []
    for (const route of withBody()) {
      if (takesNothing(route) && (text === '' || text === 'null')) continue
      complaints.push(...complaintsAbout(await send(route, text, { raw: true }), `${route.name}, ${what}`))
    }
    expect(complaints).toEqual([])
  })

  test('of 2 MB is refused as too large, and where a picture is sent one of 8 MB', async () => {
    for (const route of withBody()) {
      const bytes = route.path.endsWith('/photos/{photo}') ? 8_000_000 : 2_000_000
      expect([route.name, (await send(route, { text: 'x'.repeat(bytes) })).status]).toEqual([route.name, 413])
    }
  })

  test('of another media type is refused', async () => {
    for (const route of withBody()) {
      const { status } = await send(route, 'a=1', { raw: true, headers: { 'content-type': 'text/plain' } })
      expect([route.name, status]).toEqual([route.name, 415])
    }
  })
})

describe('every path and query', () => {
  test('an id that is none is refused with its path, and one that names nothing is not found', async () => {
    const complaints: string[] = []
    for (const route of routes().filter(({ path }) => path.includes('{'))) {
      const body = route.operation.requestBody === undefined ? undefined : exampleOf(route)
      const malformed = await send(route, body, { id: () => 'not-an-id' })
      if (malformed.status !== 400 || !malformed.problem.errors?.[0]?.path.startsWith('/params/')) complaints.push(`${route.name}: ${malformed.status} for an id that is none`)
      const needed = (route.operation.parameters ?? []).filter((parameter) => parameter.in === 'query' && parameter.required).map(({ name }) => `${name}=x`)
      const unknown = await send(route, body, { query: needed.length === 0 ? '' : `?${needed.join('&')}` })
      if (unknown.status !== 404) complaints.push(`${route.name}: ${unknown.status} for an id that names nothing: ${JSON.stringify(unknown.problem)}`)
    }
    expect(complaints).toEqual([])
  })

  test('an unknown query field is refused, and so is a page of nothing', async () => {
    const complaints: string[] = []
    for (const route of routes().filter(({ method, path }) => method === 'GET' && path !== '/v1/events' && path !== '/v1/keys')) {
      const id = (name: string) => records[name] ?? v7()
      const queried = (route.operation.parameters ?? []).filter((parameter) => parameter.in === 'query').map(({ name }) => name)
      if (queried.length > 0) complaints.push(...complaintsAbout(await send(route, undefined, { id, query: '?noSuchField=1' }), `${route.name}, unknown query field`, '/query/noSuchField'))
      if (queried.includes('limit')) for (const limit of ['0', '201', 'ten', '-1', '1.5']) complaints.push(...complaintsAbout(await send(route, undefined, { id, query: `?limit=${limit}` }), `${route.name}, limit ${limit}`, '/query/limit'))
      if (queried.includes('after')) complaints.push(...complaintsAbout(await send(route, undefined, { id, query: '?after=rubbish' }), `${route.name}, cursor of nobody`, '/query/after'))
    }
    expect(complaints).toEqual([])
  })
})

describe('edits', () => {
  const edits = () => routes().filter(({ method, path }) => method === 'PATCH' && [...path.matchAll(/\{(\w+)\}/g)].every(([, name]) => records[name!] !== undefined) && path !== '/v1/me')

  test('without If-Match are refused (428), and with an old one (412)', async () => {
    expect(edits().length).toBeGreaterThanOrEqual(7)
    for (const route of edits()) {
      const id = (name: string) => records[name]!
      expect([route.name, (await send(route, {}, { id, headers: { 'if-match': '' } })).status]).toEqual([route.name, expect.toSatisfy((status: number) => status === 428 || status === 412)])
      expect([route.name, (await send(route, {}, { id, headers: { 'if-match': '"999"' } })).status]).toEqual([route.name, 412])
    }
  })
})
