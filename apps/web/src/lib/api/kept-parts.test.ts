import { expect, test } from 'vitest'
import { keptParts } from './kept-parts.ts'

const floor = () => ({ bays: [{ id: 'a', job: { id: '1', says: 'waits', tags: ['x', 'y'] } }, { id: 'b', job: null }], ready: [{ id: '2', says: 'ready' }] })

test('nothing changed: the very same object', () => {
  const before = floor()
  expect(keptParts(before, floor())).toBe(before)
})

test('what changed is new, with its parents; the rest is the same, also where it moved', () => {
  const [before, after] = [floor(), floor()]
  after.ready.unshift({ id: '3', says: 'new' })
  after.bays[0]!.job!.says = 'tested'
  const kept = keptParts(before, after)
  expect(kept).toEqual(after)
  expect(kept).not.toBe(before)
  expect(kept.ready[1]).toBe(before.ready[0])
  expect(kept.bays[1]).toBe(before.bays[1])
  expect(kept.bays[0]!.job!.tags).toBe(before.bays[0]!.job!.tags)
})

test.each([
  ['a field gone', { a: 1, b: 2 }, { a: 1 }],
  ['a field more', { a: 1 }, { a: 1, b: undefined }],
  ['a list become nothing', { a: [1] }, { a: null }],
  ['nothing become a list', { a: null }, { a: [1] }],
  ['a list become an object', { a: [1] }, { a: { 0: 1 } }],
  ['a shorter list', { a: [1, 2] }, { a: [1] }],
  ['another order', { a: [{ id: 1 }, { id: 2 }] }, { a: [{ id: 2 }, { id: 1 }] }],
  ['the same id twice', { a: [{ id: 1, v: 1 }] }, { a: [{ id: 1, v: 1 }, { id: 1, v: 2 }] }],
])('%s', (_, before: object, after: object) => {
  expect(keptParts(before, after)).toStrictEqual(after)
})
