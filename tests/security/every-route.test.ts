import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { onTablet, testApp, testChain, testService, testTablet, type TestApp, type TestChain, type TestService } from '../support/index.ts'
import { makeRecords, putDraft, type Records } from './records.ts'
import { requests, type RouteRequest } from './requests.ts'
import { INCLUDES, RULES, SCOPES, type Caller, type Rule } from './table.ts'

/** What only some kinds of callers have, whoever may ask. */
const ONLY_SIGNED_IN = new Set(['PATCH /v1/me'])
const ONLY_BY_PASSWORD = new Set(['POST /v1/me/second-factor', 'PUT /v1/me/second-factor'])
const ONLY_TABLETS = new Set(['GET /v1/tablets/people', 'POST /v1/tablets/take-over'])
/** Past the door, and then refused for what was sent: a made-up one-time code, the PIN of somebody of another garage. */
const REFUSED_INSIDE: Readonly<Record<string, number>> = { 'PUT /v1/me/second-factor': 400, 'POST /v1/tablets/take-over': 401 }

let service: TestService
let chain: TestChain
let records: Records
let address: string
let paths: string[]
const here: Partial<Record<Caller, string>> = {}
const elsewhere: Partial<Record<Caller, string>> = {}
let apps: Record<string, TestApp>
let appOfHarbour: TestApp

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  const { mill, harbour, owner } = chain
  const [tablet, otherTablet] = [await testTablet(service, mill), await testTablet(service, harbour)]
  Object.assign(here, { technician: mill.technician.token, 'front desk': mill.frontDesk.token, manager: mill.manager.token, owner: owner.token, tablet: await onTablet(service, tablet, mill.technician), 'tablet alone': tablet.tabletToken })
  Object.assign(elsewhere, { technician: harbour.technician.token, 'front desk': harbour.frontDesk.token, manager: harbour.manager.token, tablet: await onTablet(service, otherTablet, harbour.technician), 'tablet alone': otherTablet.tabletToken })
  apps = Object.fromEntries(await Promise.all(SCOPES.map(async (scope) => [scope, await testApp(service, [scope])])))
  appOfHarbour = await testApp(service, SCOPES, [harbour.id])
  records = await makeRecords(service, chain, tablet, [...Object.values(apps), appOfHarbour])
  address = await service.listen()
  const { document } = service.app.openapi()
  paths = Object.entries(document.paths).flatMap(([path, methods]) => Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`))
})
afterAll(() => service.close())

async function ask(route: string, { params = {}, query, body, headers = {} }: RouteRequest, token?: string): Promise<number> {
  const [method, template] = route.split(' ') as [string, string]
  const path = template.replace(/\{(\w+)\}/g, (_, name: string) => {
    if (params[name] === undefined) throw new Error(`${route} needs an id for ${name}`)
    return params[name]
  })
  const response = await fetch(`${address}${path}${query === undefined ? '' : `?${query}`}`, {
    method,
    headers: { ...headers, ...(token === undefined ? {} : { authorization: `Bearer ${token}` }), ...(body === undefined ? {} : { 'content-type': 'application/json' }) },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  })
  // An event stream never ends by itself.
  await response.body?.cancel()
  return response.status
}

/** Whatever comes after the door: done, or in conflict with what stands. A bad request would prove nothing. */
const isLetIn = (route: string, status: number) => status < 400 || [409, 412, 428, REFUSED_INSIDE[route]].includes(status)

/** Every caller of the garage itself asks each route once; what it finds, as one line each. */
async function walk(callers: Partial<Record<string, string>>, expected: (route: string, request: RouteRequest, caller: string) => readonly number[] | 'in'): Promise<string[]> {
  const wrong: string[] = []
  for (const [route, make] of Object.entries(requests(chain, records))) {
    if (make().rule === 'open' || !paths.includes(route)) continue // what is missing fails the first test
    for (const [caller, token] of Object.entries(callers)) {
      const request = make()
      if (request.needsDraft) await putDraft(service, chain, records.job.id)
      const want = expected(route, request, caller)
      const status = await ask(route, request, token)
      const fits = want === 'in' ? isLetIn(route, status) : want.includes(status)
      if (!fits) wrong.push(`${route} as ${caller}: ${status}, expected ${want === 'in' ? 'to be let in' : want.join(' or ')}`)
    }
  }
  return wrong
}

const ruleOf = (request: RouteRequest): Rule => RULES[request.rule as keyof typeof RULES]
const mayHere = (route: string, request: RouteRequest, caller: string): boolean => {
  if (ONLY_SIGNED_IN.has(route) && caller === 'tablet alone') return false
  if (ONLY_BY_PASSWORD.has(route) && caller.startsWith('tablet')) return false
  if (ONLY_TABLETS.has(route) && !caller.startsWith('tablet')) return false
  return ruleOf(request).callers.includes(caller as Caller)
}
const mayApp = (route: string, request: RouteRequest, scopes: readonly string[]): boolean => {
  const { scope } = ruleOf(request)
  if (ONLY_SIGNED_IN.has(route) || ONLY_BY_PASSWORD.has(route) || ONLY_TABLETS.has(route)) return false
  return scope === 'any' || (scope !== undefined && scopes.some((has) => has === scope || INCLUDES[has] === scope))
}

// Some hundred requests a test.
describe('every route', { timeout: 180_000 }, () => {
  test('is in the list of this test, and every route of the list is there', () => {
    expect(Object.keys(requests(chain, records)).sort()).toEqual([...paths].sort())
  })

  test('asks for a sign-in, unless it is made for those who have none', async () => {
    expect(await walk({ nobody: undefined, 'a made-up token': 'eyJhbGciOiJub25lIn0.e30.' }, () => [401])).toEqual([])
  })

  test('lets an outside app in by its scope only', async () => {
    const tokens = Object.fromEntries(Object.entries(apps).map(([scope, app]) => [scope, app.token]))
    expect(await walk(tokens, (route, request, scope) => (mayApp(route, request, [scope]) ? 'in' : [403]))).toEqual([])
  })

  test('shows an outside app of another garage nothing of this one', async () => {
    const wrong = await walk({ 'an app of another garage': appOfHarbour.token }, (route, request) => {
      if (!mayApp(route, request, SCOPES)) return [403]
      return ruleOf(request).elsewhere === 'the same' ? 'in' : [404]
    })
    expect(wrong).toEqual([])
  })

  test('answers people and tablets of another garage as if its records did not exist', async () => {
    const wrong = await walk(elsewhere, (route, request, caller) => {
      if (!mayHere(route, request, caller)) return [403, 404]
      const { elsewhere: found } = ruleOf(request)
      return found === 'the same' || (found === 'staff' && caller !== 'tablet alone') ? 'in' : [404]
    })
    expect(wrong).toEqual([])
  })

  test('refuses those of the garage whose role does not do this, and lets the others in', async () => {
    expect(await walk(here, (route, request, caller) => (mayHere(route, request, caller) ? 'in' : [403, 404]))).toEqual([])
  })
})
