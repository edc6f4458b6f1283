import { expect, test } from 'vitest'
import { MOST_SAMPLES, parseTrace } from './parse-trace.ts'

const trace = { seconds: [0, 0.001, 0.002], amps: [121.4, 122, 119.5] }

test.each([
  ['a table with points', 'time,current\n0.000,121.4\n0.001,122.0\n0.002,119.5\n'],
  ['decimal commas, parted by semicolons', 's;A\r\n0,000;121,4\r\n0,001;122,0\r\n0,002;119,5'],
  ['tabs, with a mark that says in which bytes it was written', '\uFEFF0\t121.4\n0.001\t122\n0.002\t119.5'],
  ['decimal commas, parted by spaces', '0,000 121,4\n0,001 122,0\n0,002 119,5'],
  ['milliseconds, as the heading says', 'Time (ms),Current (A)\n0,121.4\n1,122\n2,119.5'],
  ['the current first, as the heading says', 'Amps,Seconds\n121.4,0\n122,0.001\n119.5,0.002'],
  ['a clock that ran before, units in the cells, quotes', '"5.000 s","121.4 A"\n"5.001 s","122 A"\n"5.002 s","119.5 A"'],
])('%s', (_, text) => {
  expect(parseTrace(text)).toEqual({ trace, grouped: 1 })
})

test('currents alone take their times from the samples a second', () => {
  expect(parseTrace('121.4\n122\n119.5', 1000)).toEqual({ trace, grouped: 1 })
  expect(parseTrace('121.4\n122\n119.5')).toEqual({ error: 'rate-needed' })
})

test.each([
  ['nothing', '', { error: 'empty' }],
  ['words alone', 'hello\nthere', { error: 'empty' }],
  ['a word among the numbers', '0,1\n0.1,2\n0.2,over', { error: 'not-a-number', line: 3, got: '0.2,over' }],
  ['a time that goes back', '0,1\n0.1,2\n0.05,3', { error: 'time-goes-back', line: 3, got: '0.05,3' }],
  ['a line that broke off', '0,1\n0.1,2\n0.2', { error: 'one-column', line: 3, got: '0.2' }],
  ['an emoji', '0,1\n🔧,2', { error: 'not-a-number', line: 2, got: '🔧,2' }],
])('%s is refused with its line', (_, text, fault) => {
  expect(parseTrace(text)).toEqual(fault)
})

test('a trace too long to keep is averaged in groups, its length in seconds stays', () => {
  const text = Array.from({ length: 3 * MOST_SAMPLES }, (_, i) => `${i / 10_000},${100 + (i % 3)}`).join('\n')
  const read = parseTrace(text)
  if ('error' in read) throw new Error(read.error)
  expect(read.grouped).toBe(3)
  expect(read.trace.amps).toHaveLength(MOST_SAMPLES)
  expect(new Set(read.trace.amps)).toEqual(new Set([101]))
  expect(read.trace.seconds.at(-1)).toBeCloseTo(6, 3)
})
