import { FAULTS, type Because, type Reading } from '@evenbore/contract'
import { OBJECTIONS } from '@evenbore/contract'
import { describe, expect, test } from 'vitest'
import { de } from '../de.ts'
import { en } from '../en.ts'
import { es } from '../es.ts'
import type { Reader } from '../reader.ts'
import { becauseWords, objectionWords, turnsWords } from './reasons.ts'

const german: Reader = { unit: 'bar', locale: 'de-DE', words: de }
const spanish: Reader = { unit: 'psi', locale: 'es-ES', words: es }
const english: Reader = { unit: 'psi', locale: 'en-GB', words: en }
const readings: Reading[] = [{ test: 'compression', cylinder: 3, pressure: { value: 129, unit: 'psi' } }]
const row = (parts: Partial<Because>): Because => ({ kind: 'reading', readings: [0], cylinder: 3, fault: 'ring-wear', decibans: 12, says: 'As the model says.', ...parts })

test('a reason is said in the language and the unit of whoever reads it', () => {
  const { text, own } = becauseWords(row({}), readings, german)
  expect(own).toBe(false)
  expect(text).toMatch(/^Zylinder 3, .* 8,89 bar: spricht stark für „Zylinder 3: Ringe verschlissen“\.$/)
  expect(becauseWords(row({ decibans: -3 }), readings, spanish).text).toContain('habla un poco en contra de')
})
test('English, and a reading that is not at hand, keep the sentence of the model and say so', () => {
  expect(becauseWords(row({}), readings, english)).toEqual({ text: 'As the model says.', own: true })
  expect(becauseWords(row({ readings: [7] }), readings, german)).toEqual({ text: 'As the model says.', own: true })
})
test('an objection names the cylinders to look at, but not where its readings are those of all the others', () => {
  const about = { readings: [0], says: 'said', do: 'done' }
  expect(objectionWords({ code: 'over-span', ...about }, readings, german).says).toMatch(/Betrifft Zylinder 3\.$/)
  expect(objectionWords({ code: 'incomplete', ...about }, readings, german).says).not.toContain('Zylinder 3')
  expect(objectionWords({ code: 'incomplete', ...about }, readings, english)).toEqual({ says: 'said', do: 'done', own: true })
})
test('what would turn it names value and explanation', () => {
  expect(turnsWords({ reading: 0, cylinder: 3, to: { value: 150, unit: 'psi' }, leads: 'sound', says: '' }, spanish).text).toBe('Si el cilindro 3 hubiera dado 150 psi, iría delante «sano».')
})
describe.each([['German', de], ['Spanish', es]] as const)('%s', (_, words) => {
  test('has a name for every fault and a sentence of its own for every objection', () => {
    for (const fault of FAULTS) expect(words.diagnosis.faults[fault], fault).toBeTruthy()
    for (const code of OBJECTIONS) expect(words.reasons?.objections[code].do, code).toBeTruthy()
    expect(new Set(OBJECTIONS.map((code) => words.reasons?.objections[code].says)).size).toBe(OBJECTIONS.length)
  })
})
