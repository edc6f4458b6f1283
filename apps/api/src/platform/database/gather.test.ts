import { expect, test } from 'vitest'
import { gatherRows } from './gather.ts'

/** Runs that end when the test says so. */
function held() {
  const runs: { readonly rows: readonly string[]; readonly end: () => void; readonly fail: () => void }[] = []
  const runAll = (rows: readonly string[]) => new Promise<string[]>((resolve, reject) => {
    runs.push({ rows, end: () => resolve(rows.map((row) => `${row} kept`)), fail: () => reject(new Error(`not ${rows.join(', ')}`)) })
  })
  return { runs, runAll }
}
const settled = () => new Promise((done) => setImmediate(done))

test('one alone is run at once, those that come meanwhile together', async () => {
  const { runs, runAll } = held()
  const keep = gatherRows<string, string>({ runAll, keyOf: (row) => row, mostRows: 2, mostRunning: 1 })
  const outcomes = ['a', 'b', 'c', 'd'].map((row) => keep(row))
  expect(runs.map(({ rows }) => rows)).toEqual([['a']])
  for (const at of [0, 1, 2]) {
    runs[at]?.end()
    await settled()
  }
  expect(runs.map(({ rows }) => rows)).toEqual([['a'], ['b', 'c'], ['d']])
  expect(await Promise.all(outcomes)).toEqual(['a kept', 'b kept', 'c kept', 'd kept'])
})

test('two of one key go one after the other, in their order', async () => {
  const { runs, runAll } = held()
  const keep = gatherRows<string, string>({ runAll, keyOf: (row) => row.slice(0, 1), mostRows: 9, mostRunning: 1 })
  const outcomes = ['x', 'a1', 'a2', 'b1', 'a3'].map((row) => keep(row))
  for (const at of [0, 1, 2, 3]) {
    runs[at]?.end()
    await settled()
  }
  expect(runs.map(({ rows }) => rows)).toEqual([['x'], ['a1', 'b1'], ['a2'], ['a3']])
  expect(await Promise.all(outcomes)).toHaveLength(5)
})

test('a failure meets only the row that caused it', async () => {
  const keep = gatherRows<string, string>({
    runAll: (rows) => (rows.includes('bad') ? Promise.reject(new Error('bad')) : Promise.resolve(rows.map((row) => `${row} kept`))),
    keyOf: (row) => row, mostRows: 9, mostRunning: 1,
  })
  const outcomes = await Promise.allSettled(['first', 'a', 'bad', 'b'].map((row) => keep(row)))
  expect(outcomes.map(({ status }) => status)).toEqual(['fulfilled', 'fulfilled', 'rejected', 'fulfilled'])
})
