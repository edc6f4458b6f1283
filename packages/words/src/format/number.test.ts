import { expect, test } from 'vitest'
import { parseNumber } from './number.ts'

test.each([
  ['15,5', undefined, 15.5], ['15.5', undefined, 15.5], [' 148 ', undefined, 148], ['１４８', undefined, 148], ['84 200 km', 'km', 84_200], ['84200KM', 'km', 84_200],
  ['12,4 V', 'V', 12.4], ['25%', '%', 25], ['0,35 mm', 'mm', 0.35], [',5', undefined, 0.5],
])('"%s" with the unit %s is %d', (typed, unit, value) => {
  expect(parseNumber(typed, unit).value).toBe(value)
})
test.each([
  ['', undefined, 'bad-number'], ['abc', undefined, 'bad-number'], ['12a', undefined, 'bad-number'], ['1e3', undefined, 'bad-number'], ['148🔧', undefined, 'bad-number'],
  ['52000 mi', 'km', 'bad-number'], ['km', 'km', 'bad-number'], ['84200 km', undefined, 'bad-number'], ['1.020,5', undefined, 'two-marks'], ['1,020.5', undefined, 'two-marks'], ['-3', undefined, 'negative'], ['−3', undefined, 'negative'],
  ['1234567890123', undefined, 'bad-number'], ['١٤٨', undefined, 'bad-number'],
] as const)('"%s" with the unit %s is refused: %s', (typed, unit, error) => {
  expect(parseNumber(typed, unit)).toEqual({ error })
})
