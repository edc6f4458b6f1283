import type { Evaluation, Suggestion } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { de } from '../de.ts'
import { en } from '../en.ts'
import { openWords } from './open.ts'

const evaluation = {
  cylinders: [{ cylinder: 3, sound: 0.26, faults: [{ fault: 'exhaust-valve-leak', probability: 0.15 }, { fault: 'ring-wear', probability: 0.2 }] }],
  engine: [{ cause: 'none', probability: 0.8 }, { cause: 'worn-evenly', probability: 0.11 }],
} as unknown as Evaluation
const suggestion = (...cylinders: number[]): Suggestion => ({ tests: [{ test: 'leakage', ...(cylinders.length ? { cylinders } : {}) }], bits: 1, minutes: 5, bitsPerMinute: 0.2, says: '' })

test('a test that asks whether coolant leaks says how likely it does, at any cylinder', () => {
  const leaky = { ...evaluation, cylinders: [0.1, 0.2].map((probability, i) => ({ cylinder: i + 1, sound: 0.7, faults: [{ fault: 'gasket-to-coolant', probability }, { fault: 'ring-wear', probability: 0.1 }] })) } as unknown as Evaluation
  const reader = { unit: 'psi', locale: 'en-GB', words: en } as const
  // 1 - .9 x .8
  for (const test of [{ test: 'cooling-pressure' }, { test: 'observation', code: 'water-in-oil' }] as const) {
    expect(openWords({ ...suggestion(), tests: [test] }, leaky, reader)).toBe('Open for the whole engine: a leak into the coolant at one of the cylinders (28 in 100).')
  }
  expect(openWords({ ...suggestion(), tests: [{ test: 'vacuum' }] }, leaky, reader)).toBe('Open for the whole engine: nothing common to all (80 in 100) or worn evenly (11).')
})

test('a repeat that an undecided verdict or a contradiction calls for says so', () => {
  const reader = { unit: 'psi', locale: 'en-GB', words: en } as const
  const repeat = (test: 'compression' | 'leakage', ...cylinders: number[]): Suggestion => ({ ...suggestion(), tests: [{ test, repeat: true, cylinders }] })
  const undecided = { ...evaluation, consistency: { verdict: 'undecided', probabilityInside: 0.62 } } as unknown as Evaluation
  expect(openWords(repeat('compression', 1, 3), undecided, reader)).toBe('With this gauge it is within the limit 62 times in 100. Read the two extremes again.')
  expect(openWords(repeat('compression', 3), undecided, reader)).toMatch(/^Open at cylinder 3/)
  const against = { ...evaluation, leakage: [{ reading: 4, cylinder: 3 }], objections: [{ code: 'leakage-against-compression', readings: [4] }] } as unknown as Evaluation
  expect(openWords(repeat('leakage', 3), against, { ...reader, words: de })).toBe('Zwei Messungen an Zylinder 3 widersprechen sich.')
  expect(openWords(suggestion(3), against, reader)).toMatch(/^Open at cylinder 3/)
  const shut = { ...evaluation, objections: [{ code: 'throttle-shut', readings: [0] }] } as unknown as Evaluation
  expect(openWords(repeat('compression', 3), shut, { ...reader, words: de })).toBe('Die Drosselklappe war zu: mit offener zeigen die Drücke, was dieser Motor hat.')
})

test('the reason for a test is what stands open where it is made', () => {
  expect(openWords(suggestion(3), evaluation, { unit: 'psi', locale: 'en-GB', words: en })).toBe('Open at cylinder 3: sound (26 in 100) or rings worn (20).')
  expect(openWords(suggestion(), evaluation, { unit: 'psi', locale: 'de-DE', words: de })).toBe('Offen für den ganzen Motor: nichts Gemeinsames (80 von 100) oder gleichmäßig verschlissen (11).')
})
