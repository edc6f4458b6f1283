import type { Routes } from '../../platform/http/app.ts'
import { eventStreamHeaders, followEvents } from './service.ts'

/** Live events over server-sent events. */
export const eventRoutes: Routes = async (app) => {
  app.get(
    '/v1/events',
    {
      config: { action: 'events.read' },
      schema: {
        tags: ['events'],
        summary: 'Live events of the caller’s garages',
        description: 'Server-sent events, each a LiveEvent as JSON. After a break send the id of the last one as Last-Event-ID.',
      },
    },
    (request, reply) => {
      const lastEventId = request.headers['last-event-id']
      const follow = followEvents(app.live, request.actor, typeof lastEventId === 'string' ? lastEventId : undefined)
      reply.hijack()
      reply.raw.writeHead(200, { ...(reply.getHeaders() as Record<string, string>), ...eventStreamHeaders })
      const stop = follow((text) => reply.raw.write(text), () => reply.raw.writableLength, () => reply.raw.end())
      request.raw.once('close', stop)
    },
  )
}
