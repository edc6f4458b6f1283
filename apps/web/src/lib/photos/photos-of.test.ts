import type { Photo, StoredReading } from '@evenbore/contract'
import { expect, test } from 'vitest'
import type { OutboxEntry } from '#lib/offline/outbox-entry.ts'
import { photosOf } from './photos-of.ts'
import { fitted } from './shrink.ts'

const reading = (id: string, replacedBy: string | null = null) => ({ id, replacedBy }) as StoredReading
const photo = (id: string, of: string, reason?: string) => ({ id, reading: of, withdrawn: reason ? { reason } : null }) as Photo
const entry = (part: Partial<OutboxEntry>) => ({ state: 'waiting', body: {}, ...part }) as OutboxEntry

test('a photo is shown at what took the place of its reading', () => {
  const shown = photosOf([reading('a', 'b'), reading('b', 'c'), reading('c')], [photo('1', 'a'), photo('2', 'c', 'blurred')])
  expect([...shown]).toEqual([['c', [{ id: '1', waiting: false, withdrawn: undefined }, { id: '2', waiting: false, withdrawn: 'blurred' }]]])
})

test('what waits here is shown once, before and after the server has it', () => {
  const waits = [entry({ id: '1', kind: 'photo', reading: 'a' }), entry({ id: 'w', kind: 'photo-withdrawn', reading: '1', body: { reason: 'wrong plug' } })]
  expect(photosOf([reading('a')], [], waits).get('a')).toEqual([{ id: '1', waiting: true, withdrawn: 'wrong plug' }])
  expect(photosOf([reading('a')], [photo('1', 'a')], waits).get('a')).toEqual([{ id: '1', waiting: false, withdrawn: 'wrong plug' }])
})

test('a photo is made smaller, never larger, and keeps its shape', () => {
  expect(fitted(8000, 6000)).toEqual({ width: 1600, height: 1200 })
  expect(fitted(3000, 10)).toEqual({ width: 1600, height: 5 })
  expect(fitted(20_000, 1)).toEqual({ width: 1600, height: 1 })
  expect(fitted(640, 480)).toEqual({ width: 640, height: 480 })
})
