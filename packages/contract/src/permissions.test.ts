import { describe, expect, test } from 'vitest'
import { may, whyNot, type Actor } from './permissions.ts'

const person = (role: 'technician' | 'front-desk' | 'manager' | 'owner', limitMinor = 150_000): Actor =>
  ({ kind: 'person', person: `the-${role}`, roles: [{ garage: role === 'owner' ? null : 'mill', role, limitMinor }], deputyFor: [] })
const tablet = (signedIn: string | null): Actor => ({ kind: 'tablet', tablet: 't', garage: 'mill', bay: 'bay-2', person: signedIn, roles: signedIn ? [{ garage: 'mill', role: 'technician', limitMinor: null }] : [] })

describe('who may do what', () => {
  test('a manager does not approve a quote he wrote', () => {
    expect(whyNot(person('manager'), 'quotes.answer', { garage: 'mill', author: 'the-manager', totalMinor: 1 })).toBe('own-quote')
    expect(may(person('manager'), 'quotes.answer', { garage: 'mill', author: 'somebody', totalMinor: 150_000 })).toBe(true)
  })
  test('above his limit an owner must', () => {
    expect(whyNot(person('manager'), 'quotes.answer', { garage: 'mill', author: 'somebody', totalMinor: 150_001 })).toBe('above-limit')
    expect(may(person('owner'), 'quotes.answer', { garage: 'mill', author: 'somebody', totalMinor: 150_001 })).toBe(true)
  })
  test('an owner approves his own only when nobody else could', () => {
    expect(whyNot(person('owner'), 'quotes.answer', { garage: 'mill', author: 'the-owner', totalMinor: 1 })).toBe('own-quote')
    expect(may(person('owner'), 'quotes.answer', { garage: 'mill', author: 'the-owner', totalMinor: 1, loneOwner: true })).toBe(true)
  })
  test('a deputy approves within the limit of the manager, and neither his own nor the manager’s quote', () => {
    const deputy: Actor = { kind: 'person', person: 'd', roles: [{ garage: 'mill', role: 'technician' }], deputyFor: [{ manager: 'm', garage: 'mill', limitMinor: 1000 }] }
    expect(may(deputy, 'quotes.answer', { garage: 'mill', author: 'x', totalMinor: 1000 })).toBe(true)
    expect(whyNot(deputy, 'quotes.answer', { garage: 'mill', author: 'x', totalMinor: 1001 })).toBe('above-limit')
    expect(whyNot(deputy, 'quotes.answer', { garage: 'mill', author: 'm', totalMinor: 1 })).toBe('own-quote')
    expect(whyNot(deputy, 'quotes.answer', { garage: 'mill', author: 'd', totalMinor: 1 })).toBe('own-quote')
  })
  test('another garage’s job is not found, its engines are readable', () => {
    expect(whyNot(person('technician'), 'jobs.read', { garage: 'harbour' })).toBe('not-found')
    expect(may(person('technician'), 'engines.read', {})).toBe(true)
    expect(may(person('technician'), 'sessions.read', { garage: 'harbour' })).toBe(true)
    expect(whyNot(person('technician'), 'sessions.write', { garage: 'harbour' })).toBe('not-found')
  })
  test('a tablet alone reads only the job of its bay', () => {
    expect(may(tablet(null), 'jobs.read', { garage: 'mill', bay: 'bay-2' })).toBe(true)
    expect(whyNot(tablet(null), 'jobs.read', { garage: 'mill', bay: 'bay-1' })).toBe('not-found')
    expect(whyNot(tablet(null), 'readings.write', { garage: 'mill', bay: 'bay-2' })).toBe('not-allowed')
    expect(may(tablet('p'), 'readings.write', { garage: 'mill' })).toBe(true)
    expect(whyNot(tablet('p'), 'quotes.answer', { garage: 'mill' })).toBe('not-allowed')
    const movedAway: Actor = { ...tablet('p'), roles: [{ garage: 'harbour', role: 'technician', limitMinor: null }] } as Actor
    expect(whyNot(movedAway, 'readings.write', { garage: 'mill' })).toBe('not-allowed')
    expect(may(movedAway, 'engines.read', {})).toBe(true)
    expect(whyNot({ ...tablet('p'), roles: [{ garage: 'mill', role: 'front-desk', limitMinor: null }] } as Actor, 'readings.write', { garage: 'mill' })).toBe('not-allowed')
  })
  test('an outside app posts readings only into a session that names it', () => {
    const app: Actor = { kind: 'app', app: 'a', scopes: ['readings:write'], garages: [] }
    expect(may(app, 'readings.write', { garage: 'mill', apps: ['a'] })).toBe(true)
    expect(whyNot(app, 'readings.write', { garage: 'mill', apps: [] })).toBe('not-allowed')
    expect(whyNot(app, 'jobs.read', { garage: 'mill' })).toBe('not-allowed')
  })
})
