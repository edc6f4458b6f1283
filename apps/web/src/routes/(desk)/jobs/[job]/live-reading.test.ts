import type { LiveEvent, Session, StoredReading } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { readingOf, withReading } from './live-reading.ts'

const stored = (id: string, over: Partial<StoredReading> = {}): StoredReading => ({
  id, session: 's', reading: { test: 'compression', cylinder: 3, pressure: { value: 129, unit: 'psi' } }, state: 'placed', current: true, replaces: null, replacedBy: null, withdrawn: false, reason: null,
  takenAt: '2026-05-06T10:00:00Z', receivedAt: '2026-05-06T10:00:00Z', takenBy: { id: 'p', name: 'Ines' }, offline: false, ...over,
})
const session = (readings: StoredReading[]): Session => ({ id: 's', job: 'j', engine: 'e', purpose: 'test', conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' }, gauge: null, gaugeSpecification: null, tester: null, testerSpecification: null, apps: [], openedAt: '2026-05-06T09:00:00Z', openedBy: null, closedAt: null, readings, version: 1 })
const event = (body: Record<string, unknown>): LiveEvent => ({ id: '1', kind: 'reading.kept', at: '2026-05-06T10:00:00Z', garage: 'g', job: 'j', engine: 'e', body })

test('another’s reading stands on the screen with the name of who took it, where that is known', () => {
  const [after] = withReading([session([stored('a')])], stored('b', { takenBy: null }), 'p')!
  expect(after!.readings.map(({ id, takenBy }) => [id, takenBy?.name])).toEqual([['a', 'Ines'], ['b', 'Ines']])
})

test('a correction marks the reading it replaces; the same event twice counts once', () => {
  const once = withReading([session([stored('a')])], stored('b', { replaces: 'a', reason: 'hose was on 2' }), 'p')!
  expect(once[0]!.readings.map(({ current, replacedBy }) => [current, replacedBy])).toEqual([[false, 'b'], [true, null]])
  expect(withReading(once, stored('b', { replaces: 'a' }), 'p')![0]!.readings).toHaveLength(2)
})

test('a session that is not on the screen, or a reading too large for an event, is fetched instead', () => {
  expect(withReading([], stored('b'), 'p')).toBeUndefined()
  expect(readingOf(event({ session: 's', readingId: 'x' }))).toBeUndefined()
})
