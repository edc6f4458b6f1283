import { escaped, paragraph } from './html.ts'
import type { OpenApiDocument, OpenApiOperation } from './openapi.ts'

/** Every route of the document as HTML, gathered by their tags. */
export function referenceBody(document: OpenApiDocument): string {
  const groups = new Map<string, string[]>()
  for (const [path, operations] of Object.entries(document.paths)) {
    for (const [method, operation] of Object.entries(operations)) {
      const tag = operation.tags?.[0] ?? 'other'
      groups.set(tag, [...(groups.get(tag) ?? []), routeBody(method.toUpperCase(), path, operation)])
    }
  }
  const parts = [...groups].sort(([a], [b]) => a.localeCompare(b)).map(([tag, routes]) => `<h2 id="${escaped(tag)}">${escaped(tag)}</h2>${routes.join('')}`)
  const schemas = Object.entries(document.components.schemas).map(([name, schema]) => `<details id="schema-${escaped(name)}"><summary>${escaped(name)}</summary>${json(schema)}</details>`)
  return `${parts.join('')}<h2 id="schemas">Schemas</h2>${schemas.join('')}`
}

function routeBody(method: string, path: string, operation: OpenApiOperation): string {
  const parameters = (operation.parameters ?? []).map(({ name, in: place, required }) => `<tr><td><code>${escaped(name)}</code></td><td>${escaped(place)}${required ? '' : ', optional'}</td></tr>`)
  const body = Object.values(operation.requestBody?.content ?? {})[0]
  const answers = Object.entries(operation.responses ?? {}).map(([status, { description, content }]) => {
    const schema = Object.values(content ?? {})[0]?.schema
    return `<tr><td>${escaped(status)}</td><td>${schema === undefined ? escaped(description ?? '') : shown(schema)}</td></tr>`
  })
  const needed = operation.security?.length === 0 ? 'no sign-in needed' : `permission: ${operation['x-action'] ?? ''}`
  return `<h3><code>${method} ${escaped(path)}</code></h3>${paragraph([operation.summary, operation.description].filter(Boolean).join('\n'))}
<p>${escaped(needed)}</p><table>${parameters.join('')}</table>${body === undefined ? '' : `<p>Body:</p>${shown(body.schema)}`}<table>${answers.join('')}</table>`
}

function shown(schema: unknown): string {
  const name = /^#\/components\/schemas\/(.+)$/.exec(String((schema as { $ref?: unknown }).$ref ?? ''))?.[1]
  return name === undefined ? json(schema) : `<a href="#schema-${escaped(name)}">${escaped(name)}</a>`
}

function json(schema: unknown): string {
  return `<pre>${escaped(JSON.stringify(schema, null, 1))}</pre>`
}
