import { expect, test } from 'vitest'
import { en } from '@evenbore/words/en.ts'
import { nextUnread, readingOrder, shapeOf } from './banks.ts'
import { dry, ends, evaluationWith } from './evaluation.builder.ts'
import { bandOf, dryReadings, planOf, ticksOf } from './picture.ts'
import type { Reader } from '@evenbore/words/reader.ts'
import { beliefRows, suspects, verdictSentence } from '@evenbore/words/sentences/verdict.ts'
import { suggestionWords, testAddress } from './suggestion-words.ts'

const reader: Reader = { unit: 'psi', locale: 'en-GB', words: en }
// the trade's own case: 155, 160, 140, 145 psi, spread 12.5 percent (common practice, no source)
const readings = [dry(1, 155), dry(2, 160), dry(3, 140), dry(4, 145)]
const outside = evaluationWith({ ...ends([3, 140], [2, 160]), spreadPercent: 12.5, asRead: 'outside', verdict: 'outside', probabilityInside: 0.04 })

test('the verdict is a sentence with its certainty', () => {
  expect(verdictSentence(outside, reader)).toEqual({ lead: 'Not within one tenth.', rest: 'Cylinder 3 stands 13 percent below cylinder 2. So sure the gauge lets us be: 96 in 100.' })
})

test('near the limit the percentage keeps its decimal, and undecided says what to do', () => {
  const near = evaluationWith({ ...ends([3, 145], [2, 160]), spreadPercent: 9.4, verdict: 'undecided', probabilityInside: 0.6 })
  expect(verdictSentence(near, reader).rest).toContain('9.4 percent')
  expect(verdictSentence(near, reader).rest).toContain('Read the two extremes again')
})

test('one reading alone says that a sister is missing', () => {
  expect(verdictSentence(evaluationWith({}), reader).rest).toBe(en.diagnosis.oneOnly)
})

test('the plan says low, highest, not sure and not read by word', () => {
  const found = dryReadings([dry(1, 155), dry(2, 160), dry(3, 142)], outside.consistency)
  const ticks = ticksOf(found, undefined, reader)
  const plan = planOf([1, 2, 3, 4], found, outside, ticks, reader)
  expect(plan.map(({ word, state }) => [word, state])).toEqual([['sound', 'sound'], ['highest', 'sound'], ['not sure', 'unsure'], ['not read', 'unread']])
  const lower = planOf([3], dryReadings([dry(3, 129)], undefined), outside, ticksOf(new Map([[3, dry(3, 129)]]) as never, undefined, reader), { ...reader })
  expect(lower[0]).toMatchObject({ word: 'low', state: 'low', figure: '129' })
})

test('the band follows the rule in force, in the unit of the person', () => {
  expect(bandOf(outside.consistency, reader)).toMatchObject({ low: 144, says: 'one tenth below the highest' })
  expect(bandOf(evaluationWith({ ...outside.consistency, rule: 'own-spread-pressure', limitPercent: undefined, limitPressure: { value: 25, unit: 'psi' } }).consistency, reader)!.low).toBe(135)
  expect(bandOf(outside.consistency, { ...reader, unit: 'bar' })!.low).toBeCloseTo(9.93, 2)
})

test('readings of another session than the judged one are not drawn with it', () => {
  expect([...dryReadings([dry(1, 90, 'old'), ...readings], outside.consistency).values()].map(({ pressure }) => pressure.value)).toEqual([155, 160, 140, 145])
})

test('a few explanations and the rest together make the whole', () => {
  const evaluation = evaluationWith({}, { cylinders: [{ cylinder: 3, sound: 0.1, faults: [{ fault: 'exhaust-valve-leak', probability: 0.6 }, { fault: 'ring-wear', probability: 0.2 }, { fault: 'rod-bent', probability: 0.04 }, { fault: 'carbon-build-up', probability: 0.06 }] }] })
  const rows = beliefRows(evaluation, 3, reader)
  expect(rows.map(({ name }) => name)).toEqual(['exhaust valve leaks', 'rings worn', 'sound', 'carbon built up', 'something else'])
  expect(rows.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9)
  expect(rows[0]!.figure).toBe('60 in 100')
  expect(suspects(evaluation)).toEqual([3])
})

test('the next cylinder follows the firing order or the banks, and skips what was read', () => {
  const engine = { layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2] } as const
  expect(readingOrder({ ...engine, firingOrder: [...engine.firingOrder] }, 'firing')).toEqual([1, 3, 4, 2])
  expect(readingOrder({ ...engine, firingOrder: [...engine.firingOrder] }, 'bank')).toEqual([1, 2, 3, 4])
  expect(nextUnread([1, 3, 4, 2], new Set([1, 3]), 3)).toBe(4)
  expect(nextUnread([1, 3, 4, 2], new Set([3, 4, 2]), 2)).toBe(1)
  expect(nextUnread([1, 3, 4, 2], new Set([1, 2, 3, 4]), 2)).toBeUndefined()
})

test('a V without stated banks is drawn odd against even', () => {
  expect(shapeOf({ layout: 'v', cylinders: 6 }).banks).toEqual([[1, 3, 5], [2, 4, 6]])
})

test('a suggestion is said in the words of the trade', () => {
  const words = suggestionWords({ tests: [{ test: 'leakage', cylinders: [3, 1], rockersSlack: [3] }], bits: 1, minutes: 11, bitsPerMinute: 0.1, says: '' }, en)
  expect(words).toBe('Leakage on 3 and 1, rockers of 3 slack')
  expect(suggestionWords({ tests: [{ test: 'leakage', cylinders: [3], wet: true }], bits: 1, minutes: 8.5, bitsPerMinute: 0.1, says: '' }, en)).toBe('Leakage on 3, oil in')
})

test('a suggested test opens its screen on its cylinder, done as suggested', () => {
  expect(testAddress('J', { test: 'compression', cylinders: [1, 2] })).toBe('/jobs/J/test?test=compression')
  expect(testAddress('J', { test: 'leakage', cylinders: [3], rockersSlack: [3] })).toBe('/jobs/J/test?test=leakage&cylinder=3&slack=3')
  expect(testAddress('J', { test: 'leakage', cylinders: [3], rockersSlack: [2] })).toBe('/jobs/J/test?test=leakage&cylinder=3&slack=2')
  expect(testAddress('J', { test: 'leakage', cylinders: [3], wet: true })).toBe('/jobs/J/test?test=leakage&cylinder=3&oil=yes')
  expect(testAddress('J', { test: 'observation', code: 'bubbles-at-joint', cylinders: [2] })).toBe('/jobs/J/test?test=observation&code=bubbles-at-joint')
})
