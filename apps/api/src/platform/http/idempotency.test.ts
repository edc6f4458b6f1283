import { testService, type TestService } from '@evenbore/tests/support'
import type { FastifyRequest } from 'fastify'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { emit } from '../live/outbox.ts'
import { once } from './idempotency.ts'

let service: TestService
beforeAll(async () => { service = await testService() })
afterAll(() => service.close())

const asked = (key: string | undefined, body: unknown) => ({ method: 'POST', url: '/v1/x', headers: { 'idempotency-key': key }, body }) as unknown as FastifyRequest
const events = (kind: string) => service.database.prisma.outboxEvent.count({ where: { kind } })

describe('an action with an Idempotency-Key', () => {
  const act = (kind: string, request: FastifyRequest, actor = 'person:1') =>
    once(service.database, request, actor, async (tx) => {
      await emit(tx, { kind, garageId: null })
      return { status: 201, body: { number: await tx.outboxEvent.count({ where: { kind } }) } }
    })

  test('is done once, also when ten come at the same moment', async () => {
    const answers = await Promise.all(Array.from({ length: 10 }, () => act('a', asked('key-of-ten', { sum: 1 }))))
    expect(await events('a')).toBe(1)
    expect(answers.every((answer) => JSON.stringify(answer) === '{"status":201,"body":{"number":1}}')).toBe(true)
  })

  test('with another body under the same key is refused; the order of fields does not count', async () => {
    await act('b', asked('key-of-b', { x: 1, y: 2 }))
    await act('b', asked('key-of-b', { y: 2, x: 1 }))
    await expect(act('b', asked('key-of-b', { x: 1, y: 3 }))).rejects.toMatchObject({ code: 'id-reused' })
    expect(await events('b')).toBe(1)
  })

  test('keys of two callers never meet, and a missing key is asked for', async () => {
    await act('c', asked('key-of-c', {}), 'person:1')
    await act('c', asked('key-of-c', {}), 'person:2')
    expect(await events('c')).toBe(2)
    await expect(act('c', asked(undefined, {}))).rejects.toMatchObject({ code: 'idempotency-key-needed' })
  })

  test('that fails leaves no key and no record', async () => {
    const request = asked('key-of-d', {})
    const failing = once(service.database, request, 'person:1', async (tx) => {
      await emit(tx, { kind: 'd', garageId: null })
      throw new Error('broken')
    })
    await expect(failing).rejects.toThrow('broken')
    expect(await events('d')).toBe(0)
    expect(await act('d', request)).toMatchObject({ body: { number: 1 } })
  })
})
