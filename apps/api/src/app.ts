import { readFileSync } from 'node:fs'
import { EVENT_KINDS } from '@evenbore/contract'
import Fastify, { LogController } from 'fastify'
import type { Config } from './config.ts'
import { accessRoutes, openAccess } from './access/routes.ts'
import { features } from './features/features.ts'
import type { Database } from './platform/database/database.ts'
import { keptFiles } from './platform/files/kept-files.ts'
import { openApi } from './platform/docs/openapi.ts'
import { documentation } from './platform/docs/routes.ts'
import { jsonBodies } from './platform/http/json.ts'
import { securityHeaders } from './platform/http/headers.ts'
import { rateLimits, LIMITS } from './platform/http/limits.ts'
import { logStream, requestLog } from './platform/http/log.ts'
import type { App } from './platform/http/app.ts'
import { noQuery } from './platform/http/no-query.ts'
import { startPage, webPages } from './platform/http/pages.ts'
import { serializerCompiler } from './platform/http/serializer.ts'
import { traceOf } from './platform/http/trace.ts'
import { liveEvents } from './platform/live/live-events.ts'
import { answerProblem } from './platform/problems/handler.ts'
import { problems } from './platform/problems/plugin.ts'
import { validatorCompiler } from './platform/problems/validation.ts'

const VERSION = (JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as { version: string }).version

/** Options beside the configuration. `strictAnswers`: an answer that does not fit its schema is an error (the tests). */
export type AppOptions = { readonly config: Config; readonly database: Database; readonly strictAnswers?: boolean }

/**
 * Builds the service; the tests build the same one. It does not listen, and it closes neither the database nor the process.
 *
 * **How a feature is added.** A folder `features/<noun>/` with
 * - `routes.ts`: exports `const nounRoutes: Routes = async (app) => { ... }`, HTTP only. Each route names its permission in
 *   `config: { action: 'jobs.read' }` (without it the start fails) and a zod schema for params, query, body and each answer:
 *   `app.get('/v1/jobs/:job', { config: { action: 'jobs.read' }, schema: { tags: ['jobs'], summary: 'One job', params, response: { 200: jobSchema } } },
 *     (request) => readJob(app.database, request.actor, request.params.job))`
 *   An edit: `expectedVersion(request)` in, `setVersion(reply, record.version)` out (`platform/http/etag.ts`). A list:
 *   `platform/http/cursor.ts`. An action with an Idempotency-Key: `once(...)` of `platform/http/idempotency.ts`.
 * - `service.ts`: the rules. Takes the database or a transaction, then the actor; calls `demand(actor, action, { garage, ... })` of
 *   `access/door.ts` for the record it acts on; throws `problem('wrong-state', 'sentence')` of `platform/problems/problem.ts`.
 *   What it writes goes through one `database.transaction(async (tx) => ...)`: records, trail entry and `emit(tx, event)` of
 *   `platform/live/outbox.ts` together. Live screens are told after the commit by `transaction` itself; code that writes an event with
 *   `database.run` calls `database.committed()` afterwards.
 * - `store.ts`: the queries, Prisma by `tx`, or a prepared statement by `database.run({ name, text }, values)` for what is hot.
 * and one line in `features/features.ts`.
 */
export async function buildApp({ config, database, strictAnswers = false }: AppOptions): Promise<App> {
  const page = startPage(config.webFolder)
  const fastify = Fastify({
    logger: config.logLevel === 'silent' ? false : { level: config.logLevel, stream: logStream(config.logFile), base: null },
    logController: new LogController({ disableRequestLogging: true, requestIdLogLabel: 'trace' }),
    genReqId: traceOf,
    requestIdHeader: false,
    bodyLimit: LIMITS.bodyBytes,
    routerOptions: { maxParamLength: LIMITS.pathParameterCharacters },
    trustProxy: config.trustProxy === undefined ? false : config.trustProxy.split(',').map((part) => part.trim()),
    requestTimeout: LIMITS.requestSeconds * 1000,
    // Event streams stay open for hours: closing ends them instead of waiting for them.
    forceCloseConnections: true,
    frameworkErrors: answerProblem as never,
    clientErrorHandler: answerBrokenRequest,
    ...(config.certificate === undefined ? {} : { https: { cert: readFileSync(config.certificate.certFile), key: readFileSync(config.certificate.keyFile) } }),
  })
  const app = fastify as unknown as App
  app.setValidatorCompiler(validatorCompiler as never)
  app.setSerializerCompiler(
    serializerCompiler({ strict: strictAnswers, report: (route, error) => app.log.error({ route, issues: error.issues.map(({ code, path }) => ({ code, path })) }, 'answer does not fit its schema') }) as never,
  )

  const live = liveEvents(database)
  app.decorate('database', database)
  app.decorate('live', live)
  app.decorate('files', keptFiles(config.photoFolder))
  app.addHook('onReady', () => live.start())
  app.addHook('onClose', () => live.stop())

  await app.register(problems)
  await app.register(noQuery)
  await app.register(jsonBodies)
  await app.register(requestLog)
  await app.register(securityHeaders, { pages: page, https: config.certificate !== undefined })
  await app.register(openApi, { version: VERSION, openActions: new Set(['open']) })
  await app.register(rateLimits, { requestsPerMinute: config.requestsPerMinute })
  await openAccess(app, config)

  await app.register(accessRoutes, { config })
  for (const feature of features) await app.register(feature as never)
  await app.register(publishedDocument as never)
  await app.register(documentation as never, { events: EVENT_KINDS, limits: limitsInWords(config) })
  await app.register(webPages, { folder: config.webFolder, page })
  return app
}

async function publishedDocument(app: App): Promise<void> {
  app.get('/v1/openapi.json', { config: { action: 'open' }, schema: { hide: true } }, (_request, reply) => reply.type('application/json').send(app.openapi().text))
}

function limitsInWords(config: Config): Record<string, string> {
  return {
    'requests': `${config.requestsPerMinute} a minute for one sign-in, app or (signed out) address; beyond it 429 with Retry-After`,
    'attempts to sign in': `${config.signInsPerMinute} a minute from one address; five wrong passwords or PINs in a row lock the person for a while`,
    'body': `${LIMITS.bodyBytes} bytes; beyond it 413; nested at most ${LIMITS.jsonDepth} deep`,
    'path field': `${LIMITS.pathParameterCharacters} characters`,
    'answer within': `${LIMITS.requestSeconds} seconds for the request to arrive whole`,
    'page of a list': '1 to 200 records, 50 unless asked otherwise',
    'access token': '10 minutes; refresh tokens 30 days, at a tablet 24 hours, each usable once',
    'case': 'readings and cylinders as the schema Case says',
  }
}

/** A request that is no HTTP at all is answered before any route is known. */
function answerBrokenRequest(error: Error & { code?: string }, socket: import('node:net').Socket): void {
  if (error.code === 'ECONNRESET' || !socket.writable) return void socket.destroy()
  const [status, reason] = error.code === 'HPE_HEADER_OVERFLOW' ? [431, 'Request Header Fields Too Large'] : [400, 'Bad Request']
  const body = JSON.stringify({ type: '/docs/problems/invalid-request', title: 'The request is not well formed', status })
  socket.end(`HTTP/1.1 ${status} ${reason}\r\nContent-Type: application/problem+json\r\nContent-Length: ${Buffer.byteLength(body)}\r\nConnection: close\r\n\r\n${body}`)
}
