import { jobStateSchema, standingSchema, type Standing } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { en } from '@evenbore/words/en.ts'
import { besideStanding, standingLine, standingSentence } from './sentence.ts'

const standing = (over: Partial<Standing>): Standing => ({ state: 'booked', since: '2026-05-06T10:20:00Z', waitsFor: 'technician', waitsOn: null, until: null, beside: [], ...over })
const when = (instant: string) => instant.slice(11, 16)

test('the sentence says what it waits for, on whom and since when', () => {
  expect(standingSentence(standing({ state: 'waiting-for-manager', waitsOn: 'Ruth' }), en, when)).toBe('waits for Ruth’s yes since 10:20')
  expect(standingSentence(standing({ state: 'waiting-for-manager' }), en, when)).toBe('waits for a manager’s yes since 10:20')
  expect(standingSentence(standing({ state: 'handed-over' }), en, when)).toBe('handed over 10:20')
})

test('a next call and a promise are said beside it, each once', () => {
  const waiting = standing({ state: 'waiting-for-customer', waitsOn: 'Mr Ondrej', until: '2026-05-06T11:30:00Z', beside: ['sent-back'] })
  expect(besideStanding(waiting, '2026-05-06T16:00:00Z', en, when)).toEqual(['the quote was sent back', 'next call 11:30', 'promised for 16:00'])
  expect(standingLine({ standing: standing({ state: 'ready', until: '2026-05-06T12:00:00Z' }), promisedAt: '2026-05-06T12:00:00Z' }, en, when)).toBe('ready to hand over since 10:20; promised for 12:00')
})

test('every state and every fact beside it has words', () => {
  for (const state of jobStateSchema.options) expect(en.desk.says[state], state).toBeDefined()
  for (const fact of standingSchema.shape.beside.element.options) expect(en.desk.beside[fact], fact).toBeDefined()
})
