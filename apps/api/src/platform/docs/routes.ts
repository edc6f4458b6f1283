import { PROBLEMS, type ProblemCode } from '@evenbore/contract'
import type { FastifyReply } from 'fastify'
import type { App } from '../http/app.ts'
import { problem } from '../problems/problem.ts'
import { escaped, htmlPage, paragraph, STYLE } from './html.ts'
import { PROBLEM_TEXTS } from './problem-texts.ts'
import { referenceBody } from './reference.ts'

/** What the documentation lists beside the routes: each name with its meaning. */
export type DocumentedLists = { readonly events: Readonly<Record<string, string>>; readonly limits: Readonly<Record<string, string>> }

/** The readable documentation at /docs, made from the published document and from the lists that the code itself uses. */
export async function documentation(app: App, { events, limits }: DocumentedLists): Promise<void> {
  const table = (rows: Readonly<Record<string, string>>) =>
    `<table>${Object.entries(rows).map(([name, text]) => `<tr><td><code>${escaped(name)}</code></td><td>${escaped(text)}</td></tr>`).join('')}</table>`
  const send = (reply: FastifyReply, title: string, body: string) => reply.type('text/html; charset=utf-8').send(htmlPage(title, body))
  const hidden = { schema: { hide: true } } as const

  app.get('/docs', hidden, (_, reply) => send(reply, 'Evenbore API', introduction(app.openapi().document.info.description ?? '')))
  app.get('/docs/reference', hidden, (_, reply) => send(reply, 'Routes', referenceBody(app.openapi().document)))
  app.get('/docs/events', hidden, (_, reply) => send(reply, 'Events', `${paragraph(EVENTS)}${table(events)}`))
  app.get('/docs/limits', hidden, (_, reply) => send(reply, 'Limits', table(limits)))
  app.get('/docs/problems', hidden, (_, reply) => send(reply, 'Problems', problemList()))
  app.get('/docs/problems/:code', hidden, (request, reply) => {
    const code = (request.params as { code: string }).code as ProblemCode
    if (!Object.hasOwn(PROBLEMS, code)) throw problem('not-found', 'There is no problem type of that name.')
    const { when, do: what } = PROBLEM_TEXTS[code]
    return send(reply, PROBLEMS[code].title, `<p><code>/docs/problems/${code}</code>, status ${PROBLEMS[code].status}</p>${paragraph(when)}<h2>What to do</h2>${paragraph(what)}`)
  })
  app.get('/docs/style.css', hidden, (_, reply) => reply.type('text/css').send(STYLE))
}

const EVENTS = `\`GET /v1/events\` streams events (server-sent events). Each has an id; after a break the browser sends it as Last-Event-ID and the stream goes on behind it.
An event says what changed; fetch the record to see it as you may.`

function introduction(description: string): string {
  return `${paragraph(description)}<ul><li><a href="/docs/reference">Every route</a>, and the same as <a href="/v1/openapi.json">OpenAPI 3.1</a></li>
<li><a href="/docs/problems">Every problem type</a></li><li><a href="/docs/events">Every event type</a></li><li><a href="/docs/limits">Limits</a></li></ul>`
}

function problemList(): string {
  const rows = Object.entries(PROBLEMS).map(([code, { status, title }]) => `<tr><td>${status}</td><td><a href="/docs/problems/${code}"><code>${code}</code></a></td><td>${escaped(title)}</td></tr>`)
  return `<table>${rows.join('')}</table>`
}
