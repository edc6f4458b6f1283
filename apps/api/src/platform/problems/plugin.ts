import type { FastifyReply, FastifyRequest } from 'fastify'
import plugin from 'fastify-plugin'
import { answerProblem, sendProblem } from './handler.ts'
import { problem } from './problem.ts'

declare module 'fastify' {
  interface FastifyInstance {
    /** What answers a path that no route has; the web pages put themselves before it. */
    answerUnknownPath: (request: FastifyRequest, reply: FastifyReply) => void
  }
}

/** Problem details for everything: errors, unknown paths, methods that a path does not take. */
export const problems = plugin(
  async (app) => {
    const paths: { readonly pattern: RegExp; readonly method: string }[] = []
    app.addHook('onRoute', (route) => {
      for (const method of [route.method].flat()) paths.push({ pattern: patternOf(route.url), method })
    })
    app.setErrorHandler(answerProblem)
    app.decorate('answerUnknownPath', (request: FastifyRequest, reply: FastifyReply) => {
      const path = request.url.split('?', 1)[0] ?? ''
      const methods = [...new Set(paths.filter(({ pattern }) => pattern.test(path)).map(({ method }) => method))]
      const unknown =
        methods.length === 0
          ? problem('not-found', `There is nothing at ${path.slice(0, 200)}.`)
          : problem('method-not-allowed', `This path takes ${methods.join(', ')}.`, { headers: { allow: methods.join(', ') } })
      sendProblem(unknown, request, reply)
    })
    app.setNotFoundHandler((request, reply) => app.answerUnknownPath(request, reply))
  },
  { name: 'problems' },
)

/** `/v1/jobs/:job` as an expression; the wildcard of the static pages matches nothing here, or every path would take GET. */
function patternOf(url: string): RegExp {
  if (url.includes('*')) return /^\b$/
  const parts = url.split('/').map((part) => (part.startsWith(':') ? '[^/]+' : part.replace(/[.+?^${}()|[\]\\]/g, '\\$&')))
  return new RegExp(`^${parts.join('/')}$`)
}
