import { testChain, testService, type TestChain, type TestService } from '@evenbore/tests/support'
import pg from 'pg'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { emit } from '../../platform/live/outbox.ts'

let service: TestService
let chain: TestChain
let address: string
beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  address = await service.listen()
})
afterAll(() => service.close())

type Heard = { readonly id: string; readonly event: string; readonly data: { readonly garage: string } }

/** Listens; once this is settled it is connected. `events` is settled when `count` events have come. */
async function listen(token: string, count: number, lastEventId?: string) {
  const abort = new AbortController()
  const response = await fetch(`${address}/v1/events`, { headers: { authorization: `Bearer ${token}`, ...(lastEventId === undefined ? {} : { 'last-event-id': lastEventId }) }, signal: abort.signal })
  expect(response.headers.get('content-type')).toContain('text/event-stream')
  const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader()
  let text = ''
  while (!text.includes('retry:')) text += (await reader.read()).value ?? ''
  const events = (async () => {
    const events: Heard[] = []
    for (;;) {
      for (let end = text.indexOf('\n\n'); end >= 0; end = text.indexOf('\n\n')) {
        const block = Object.fromEntries(text.slice(0, end).split('\n').map((line) => [line.slice(0, line.indexOf(':')), line.slice(line.indexOf(':') + 2)]))
        text = text.slice(end + 2)
        if (block['data'] !== undefined) events.push({ id: block['id'] ?? '', event: block['event'] ?? '', data: JSON.parse(block['data']) })
      }
      if (events.length >= count) break
      const { value, done } = await reader.read()
      if (done) break
      text += value
    }
    abort.abort()
    return events
  })()
  return { events }
}

const tell = (garageId: string | null, kind = 'job.changed') => service.database.transaction((tx) => emit(tx, { kind, garageId }))

describe('live events', () => {
  test('reach a listener of the garage within a fraction of a second, and no other', async () => {
    const frontDesk = await listen(chain.mill.frontDesk.token, 2)
    const before = Date.now()
    await tell(chain.harbour.id)
    await tell(chain.mill.id)
    await tell(chain.mill.id, 'quote.sent')
    const events = await frontDesk.events
    expect(events.map(({ event }) => event)).toEqual(['job.changed', 'quote.sent'])
    expect(events.every(({ data }) => data.garage === chain.mill.id)).toBe(true)
    expect(Date.now() - before).toBeLessThan(900)
  })

  test('go on behind the Last-Event-ID, none missing and none twice', async () => {
    const first = await listen(chain.owner.token, 1)
    await tell(chain.mill.id, 'session.opened')
    const [known] = await first.events
    for (const kind of ['session.closed', 'finding.recorded', 'repair.changed']) await tell(chain.mill.id, kind)
    const rest = await (await listen(chain.owner.token, 3, known!.id)).events
    expect(rest.map(({ event }) => event)).toEqual(['session.closed', 'finding.recorded', 'repair.changed'])
  })

  test('of a transaction that commits late are not passed over by one with a higher id', async () => {
    // Of the other garage: the events of the test before may still be on their way to listeners of this one.
    const listener = await listen(chain.harbour.frontDesk.token, 2)
    const late = new pg.Client({ connectionString: service.database.url })
    await late.connect()
    await late.query('BEGIN')
    await late.query(`INSERT INTO outbox_event (kind, garage_id, body) VALUES ('garage.changed', $1, '{}')`, [chain.harbour.id])
    await tell(chain.harbour.id, 'retest.changed')
    await new Promise((done) => setTimeout(done, 200))
    await late.query('COMMIT')
    await late.end()
    expect((await listener.events).map(({ event }) => event)).toEqual(['garage.changed', 'retest.changed'])
  })

  test('a Last-Event-ID that is none of ours is refused', async () => {
    const { status } = await fetch(`${address}/v1/events`, { headers: { authorization: `Bearer ${chain.owner.token}`, 'last-event-id': 'x' } })
    expect(status).toBe(400)
  })
})
