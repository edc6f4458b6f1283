import { readFile, writeFile } from 'node:fs/promises'
import openapiTS, { astToString, type OpenAPI3 } from 'openapi-typescript'

/** Writes the types of every route from the published document beside this file: run by `npm run openapi` after the document was written. */
const document = JSON.parse(await readFile(new URL('./openapi.json', import.meta.url), 'utf8')) as { paths: Record<string, Record<string, { requestBody?: { required?: boolean; content: Record<string, { schema: { anyOf?: { type?: string }[] } }> } }>> }
// a body that may be null may be left out as well
for (const operation of Object.values(document.paths).flatMap((path) => Object.values(path))) {
  const body = operation.requestBody
  if (body && Object.values(body.content).some(({ schema }) => schema.anyOf?.some(({ type }) => type === 'null'))) body.required = false
}
const types = astToString(await openapiTS(document as unknown as OpenAPI3, { defaultNonNullable: false }))
  // If-Match, If-None-Match and Idempotency-Key stand in no schema: any header may be given
  .replaceAll('header?: never;', 'header?: Record<string, string | undefined>;')
await writeFile(new URL('./src/openapi.ts', import.meta.url), `/** Types of every route, from openapi.json. Written by \`npm run openapi\`; not edited by hand. */\n${types}`)
