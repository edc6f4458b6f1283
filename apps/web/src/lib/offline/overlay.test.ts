import type { Session, StoredReading } from '@evenbore/contract'
import { expect, test } from 'vitest'
import type { OutboxEntry } from './outbox-entry.ts'
import { currentReadings, doubles, overlay } from './overlay.ts'

const names = { engine: 'e', person: { id: 'p', name: 'Ines' }, gauges: new Map([['g', { name: 'Gauge 4', specification: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6 } }]]) }
const stored = (id: string, cylinder: number, value: number, extra: Partial<StoredReading> = {}): StoredReading => ({
  id, session: 's', reading: { test: 'compression', cylinder, pressure: { value, unit: 'psi' } }, state: 'placed', current: true, replaces: null, replacedBy: null, withdrawn: false, reason: null,
  takenAt: '2026-05-06T10:00:00Z', receivedAt: '2026-05-06T10:00:01Z', takenBy: { id: 'p', name: 'Ines' }, offline: false, ...extra,
})
const session = (readings: StoredReading[]): Session => ({
  id: 's', job: 'j', engine: 'e', purpose: 'test', conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' }, gauge: null, gaugeSpecification: null, tester: null, testerSpecification: null,
  apps: [], openedAt: '2026-05-06T09:00:00Z', openedBy: null, closedAt: null, readings, version: 1,
})
const entry = (change: Partial<OutboxEntry>): OutboxEntry => ({ id: 'r2', kind: 'reading', method: 'PUT', path: '', body: {}, job: 'j', session: 's', person: 'p', madeAt: '2026-05-06T10:01:00Z', says: '', state: 'waiting', tried: false, ...change })
const put = (cylinder: number, value: number, extra: object = {}) => ({ reading: { test: 'compression', cylinder, pressure: { value, unit: 'psi' } }, takenAt: '2026-05-06T10:01:00Z', ...extra })

test('a reading that waits stands beside those that were sent', () => {
  const [shown] = overlay([session([stored('r1', 1, 150)])], [entry({ body: put(2, 148) })], names)
  expect(currentReadings(shown!).map(({ id }) => id)).toEqual(['r1', 'r2'])
})

test('a reading that has arrived meanwhile is not counted twice', () => {
  const [shown] = overlay([session([stored('r2', 2, 148)])], [entry({ body: put(2, 148) })], names)
  expect(shown!.readings).toHaveLength(1)
})

test('a correction that waits already replaces, and a withdrawal takes away', () => {
  const moved = overlay([session([stored('r1', 1, 150)])], [entry({ body: put(3, 150, { replaces: 'r1', reason: 'hose was on 3' }) })], names)[0]!
  expect(currentReadings(moved).map(({ reading }) => reading && 'cylinder' in reading && reading.cylinder)).toEqual([3])
  const withdrawn = overlay([session([stored('r1', 1, 150)])], [entry({ body: { takenAt: '2026-05-06T10:01:00Z', replaces: 'r1', withdrawn: true, reason: 'undone' } })], names)[0]!
  expect(currentReadings(withdrawn)).toEqual([])
})

test('a session opened without network is there at once, with its gauge', () => {
  const sessions = overlay([], [entry({ id: 's9', kind: 'session', session: undefined, body: { conditions: { engine: 'cold', throttle: 'open', plugsOut: 'all' }, gauge: 'g', purpose: 'test' } }), entry({ session: 's9', body: put(1, 120) })], names)
  expect(sessions).toHaveLength(1)
  expect(sessions[0]).toMatchObject({ id: 's9', waiting: true, gauge: { name: 'Gauge 4' }, gaugeSpecification: { accuracyClass: 1.6 } })
  expect(currentReadings(sessions[0]!)).toHaveLength(1)
})

test('two people on one cylinder within minutes are asked; one person repeating is not', () => {
  const other = { takenBy: { id: 'q', name: 'Tomas' }, takenAt: '2026-05-06T10:04:00Z' }
  expect(doubles(session([stored('r1', 1, 150), stored('r2', 1, 149, other)]), new Set())).toHaveLength(1)
  expect(doubles(session([stored('r1', 1, 150), stored('r2', 1, 149)]), new Set())).toHaveLength(0)
  expect(doubles(session([stored('r1', 1, 150), stored('r2', 1, 149, { ...other, takenAt: '2026-05-06T11:04:00Z' })]), new Set())).toHaveLength(0)
  expect(doubles(session([stored('r1', 1, 150), stored('r2', 1, 149, other)]), new Set(['r1 r2']))).toHaveLength(0)
})
