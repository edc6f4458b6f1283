import { expect, test } from 'vitest'
import { needlesOf } from './needles.ts'

test.each(['k27', 'K 27', 'k-27', ' K027 '])('%j is the job code K 27', (typed) => {
  expect(needlesOf(typed).code).toBe('K 27')
})
test('a plate is found however it is spaced', () => {
  expect(needlesOf('fx 204-b').plateKey).toBe('FX204B')
})
test('name fragments are words that must all occur', () => {
  expect(needlesOf('du ines')).toMatchObject({ words: ['du', 'ines'], digits: null, code: null })
})
test('the last digits of a phone number, and a number of a job', () => {
  expect(needlesOf('4711')).toMatchObject({ digits: '4711', number: '4711', words: null })
  expect(needlesOf('+351 912 004 711').digits).toBe('351912004711')
})
test('two digits are a job number and no phone number', () => {
  expect(needlesOf('27')).toMatchObject({ number: '27', digits: null })
})
