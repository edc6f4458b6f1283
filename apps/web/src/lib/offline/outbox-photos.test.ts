import { expect, test } from 'vitest'
import type { OutboxEntry } from './outbox-entry.ts'
import { isHeldBack, pointedAt } from './outbox-photos.ts'

const entry = (part: Partial<OutboxEntry>): OutboxEntry => ({ id: 'r', kind: 'reading', method: 'PUT', path: '/', body: {}, job: 'j', session: 's', person: 'p', madeAt: '', says: '', state: 'waiting', tried: false, ...part })
const photo = entry({ id: 'f', kind: 'photo', reading: 'r', path: '/v1/readings/r/photos/f' })

test('a photo waits for its reading, and no longer', () => {
  expect(isHeldBack(photo, [entry({}), photo])).toBe(true)
  expect(isHeldBack(photo, [entry({ state: 'conflict', conflict: { why: 'rights' } }), photo])).toBe(true)
  expect(isHeldBack(photo, [entry({ state: 'conflict', conflict: { why: 'unplaced' } }), photo])).toBe(false)
  expect(isHeldBack(photo, [entry({ state: 'sent' }), photo])).toBe(false)
  expect(isHeldBack(photo, [photo])).toBe(false)
  expect(isHeldBack(entry({}), [entry({}), photo])).toBe(false)
})

test('a photo follows its reading to another id', () => {
  const refused: OutboxEntry = { ...photo, state: 'conflict', conflict: { why: 'refused' }, tried: true }
  expect(pointedAt(refused, 'other')).toMatchObject({ id: 'f', reading: 'other', path: '/v1/readings/other/photos/f', state: 'waiting', tried: false })
})
