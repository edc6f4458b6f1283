import { may, type Me } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { actorFrom } from './actor.ts'

const me = (over: Partial<Me>): Me => ({ kind: 'person', person: { id: 'ruth', name: 'Ruth' }, roles: [{ garage: 'mill', role: 'manager', approvalLimitMinor: 100_000 }], garages: [], tablet: null, scopes: [], locale: 'en', pressureUnit: null, deputyFor: [], ...over })

test('the screen asks the same table as the server: a manager approves within his limit, in his garage, what another wrote', () => {
  const actor = actorFrom(me({}))
  expect(may(actor, 'quotes.answer', { garage: 'mill', author: 'tomas', totalMinor: 100_000 })).toBe(true)
  expect(may(actor, 'quotes.answer', { garage: 'mill', author: 'tomas', totalMinor: 100_001 })).toBe(false)
  expect(may(actor, 'quotes.answer', { garage: 'mill', author: 'ruth', totalMinor: 1 })).toBe(false)
  expect(may(actor, 'quotes.answer', { garage: 'harbour', author: 'tomas', totalMinor: 1 })).toBe(false)
})

test('who stands in for a manager approves within that manager’s limit', () => {
  const actor = actorFrom(me({ roles: [{ garage: 'mill', role: 'technician' }], deputyFor: [{ manager: { id: 'petra', name: 'Petra' }, garage: 'mill', until: '2026-05-20T00:00:00Z', approvalLimitMinor: 5_000 }] }))
  expect(may(actor, 'quotes.answer', { garage: 'mill', author: 'tomas', totalMinor: 5_000 })).toBe(true)
  expect(may(actor, 'quotes.answer', { garage: 'mill', author: 'petra', totalMinor: 5_000 })).toBe(false)
})

test('a tablet with a technician does bay work and nothing else; alone it reads its own bay', () => {
  const tablet = { id: 't', name: 'Tablet', garage: 'mill', bay: 'one' }
  const withPerson = actorFrom(me({ kind: 'tablet', tablet, roles: [{ garage: 'mill', role: 'manager', approvalLimitMinor: 100_000 }] }))
  expect(may(withPerson, 'readings.write', { garage: 'mill' })).toBe(true)
  expect(may(withPerson, 'quotes.answer', { garage: 'mill', author: 'tomas', totalMinor: 1 })).toBe(false)
  const alone = actorFrom(me({ kind: 'tablet', tablet, person: null, roles: [] }))
  expect(may(alone, 'jobs.read', { garage: 'mill', bay: 'one' })).toBe(true)
  expect(may(alone, 'jobs.read', { garage: 'mill', bay: 'two' })).toBe(false)
})
