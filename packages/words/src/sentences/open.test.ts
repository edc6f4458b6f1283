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

test('the reason for a test is what stands open where it is made', () => {
  expect(openWords(suggestion(3), evaluation, { unit: 'psi', locale: 'en-GB', words: en })).toBe('Open at cylinder 3: sound (26 in 100) or rings worn (20).')
  expect(openWords(suggestion(), evaluation, { unit: 'psi', locale: 'de-DE', words: de })).toBe('Offen für den ganzen Motor: nichts Gemeinsames (80 von 100) oder gleichmäßig verschlissen (11).')
})
