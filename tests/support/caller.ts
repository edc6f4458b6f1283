import request from 'supertest'
import type { TestService } from './service.ts'

/** Calls the service with one token, as JSON: `caller(service, token).post('/v1/garages', { ... })`. */
export function caller(service: TestService, token: string) {
  const at = (call: request.Test) => call.auth(token, { type: 'bearer' })
  return {
    get: (path: string) => at(request(service.server).get(path)),
    post: (path: string, body: object = {}) => at(request(service.server).post(path)).send(body),
    /** `version` goes into If-Match; undefined sends none, a text is sent as it stands. */
    patch: (path: string, version: number | string | undefined, body: object) => {
      const call = at(request(service.server).patch(path))
      return (version === undefined ? call : call.set('if-match', typeof version === 'number' ? `"${version}"` : version)).send(body)
    },
  }
}
