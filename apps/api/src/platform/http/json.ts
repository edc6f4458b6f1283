import plugin from 'fastify-plugin'
import { problem } from '../problems/problem.ts'
import { LIMITS } from './limits.ts'

/** Reads JSON bodies, nested no deeper than anything of ours is: what walks a value later must not run out of stack. */
export const jsonBodies = plugin(
  async (app) => {
    const parse = app.getDefaultJsonParser('error', 'error')
    app.removeContentTypeParser(['application/json', 'text/plain'])
    app.addContentTypeParser<string>('application/json', { parseAs: 'string' }, (request, text, done) => {
      if (isTooDeep(text)) return done(problem('invalid-request', undefined, { errors: [{ path: '', expected: `JSON nested at most ${LIMITS.jsonDepth} deep`, got: 'deeper' }] }))
      return parse(request, text, done)
    })
  },
  { name: 'json-bodies' },
)

/** Counts brackets outside texts. */
function isTooDeep(text: string): boolean {
  let depth = 0
  let inText = false
  for (let at = 0; at < text.length; at++) {
    const sign = text.charCodeAt(at)
    if (inText) {
      if (sign === 0x5c) at++ // a backslash: the sign after it ends nothing
      else if (sign === 0x22) inText = false
    } else if (sign === 0x22) inText = true
    else if (sign === 0x5b || sign === 0x7b) {
      if (++depth > LIMITS.jsonDepth) return true
    } else if (sign === 0x5d || sign === 0x7d) depth--
  }
  return false
}
