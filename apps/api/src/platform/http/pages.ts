import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import serveFiles from '@fastify/static'
import plugin from 'fastify-plugin'

/** The start page of the built web, or undefined where nothing is built. */
export function startPage(folder: string): string | undefined {
  const file = join(folder, 'index.html')
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined
}

/** Serves the built web; a path of the web itself (which has no file) answers the start page. Paths of the API and its documentation never do. */
export const webPages = plugin<{ folder: string; page: string | undefined }>(
  async (app, { folder, page }) => {
    if (page === undefined) return
    await app.register(serveFiles, {
      root: folder,
      index: 'index.html',
      // the build puts compressed copies beside its files
      preCompressed: true,
      setHeaders: (reply, path) => {
        // Files under immutable/ have their content's hash in their name.
        reply.header('cache-control', path.includes('/immutable/') ? 'public, max-age=31536000, immutable' : 'no-cache')
      },
    })
    const unknown = app.answerUnknownPath
    app.answerUnknownPath = (request, reply) => {
      const isPage = (request.method === 'GET' || request.method === 'HEAD') && !/^\/(v1|docs|_app)(\/|\?|$)/.test(request.url)
      if (!isPage) return unknown(request, reply)
      reply.header('cache-control', 'no-cache').type('text/html; charset=utf-8').send(page)
    }
  },
  { name: 'web-pages', dependencies: ['problems'] },
)
