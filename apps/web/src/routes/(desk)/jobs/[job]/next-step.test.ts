import { jobStateSchema, may, type Action, type Actor, type Role } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { nextSteps } from './next-step.ts'

const as = (role: Role) => {
  const actor: Actor = { kind: 'person', person: 'p', roles: [{ garage: 'g', role }], deputyFor: [] }
  return (action: Action) => may(actor, action, { garage: 'g' })
}

test('each kind of user is offered what is theirs to do', () => {
  expect(nextSteps('waiting-for-manager', as('manager'))[0]).toBe('decide')
  expect(nextSteps('waiting-for-manager', as('technician'))[0]).toBe('test')
  expect(nextSteps('waiting-for-customer', as('front-desk'))).toEqual(['word'])
  expect(nextSteps('approved', as('technician'))[0]).toBe('start-repair')
  expect(nextSteps('retest-due', as('technician'))[0]).toBe('retest')
  expect(nextSteps('ready', as('front-desk'))).toEqual(['hand-over'])
  expect(nextSteps('ready', as('technician'))).not.toContain('hand-over')
})

test('a job that ended offers nothing, to nobody', () => {
  for (const role of ['technician', 'front-desk', 'manager', 'owner'] as const) {
    expect(nextSteps('handed-over', as(role))).toEqual([])
    expect(nextSteps('cancelled', as(role))).toEqual([])
  }
})

test('every open state lets an owner do something', () => {
  for (const state of jobStateSchema.options) {
    if (state !== 'handed-over' && state !== 'cancelled') expect(nextSteps(state, as('owner')), state).not.toEqual([])
  }
})
