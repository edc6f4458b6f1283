import type { EnteredReading } from '@evenbore/contract'
import { expect, test } from 'vitest'
import type { Bench } from './bench.svelte.ts'
import { CompressionEntry } from './compression-entry.svelte.ts'

/** A bench of a four that stores readings when told to. */
function slowBench() {
  const given: EnteredReading[] = []
  const stored: ((id: string | undefined) => void)[] = []
  const bench = {
    jobId: 'job',
    session: { id: 'session', conditions: {} },
    readings: [],
    job: { engineRecord: { specification: { layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2] } } },
    record: (reading: EnteredReading) => {
      given.push(reading)
      return new Promise<string | undefined>((resolve) => stored.push(resolve))
    },
  }
  const entry = new CompressionEntry(bench as unknown as Bench, 'compression', () => 'psi')
  const type = (digits: string) => [...digits].forEach((digit) => entry.key(digit as '1', '.'))
  const values = () => given.map((reading) => (reading.test === 'compression' ? [reading.cylinder, reading.pressure.value, reading.seq] : []))
  return { entry, type, stored, values }
}
const says = () => ''

test('digits typed while the last value is being stored belong to the next cylinder, and none is lost', async () => {
  const { entry, type, stored, values } = slowBench()
  type('152')
  const first = entry.keep(says)
  type('12')
  stored[0]!('a')
  expect(await first).toBe('next')
  type('9')
  void entry.keep(says)
  expect(entry.cylinder).toBe(4)
  expect(values()).toEqual([[1, 152, 1], [3, 129, 1]])
})

test('a second press on keep does not keep the value twice, and cylinders on their way count as read', async () => {
  const { entry, type, values } = slowBench()
  type('152')
  void entry.keep(says)
  expect(await entry.keep(says)).toBeUndefined()
  for (const value of ['129', '147', '156']) {
    type(value)
    void entry.keep(says)
  }
  expect(values()).toEqual([[1, 152, 1], [3, 129, 2], [4, 147, 3], [2, 156, 4]])
})

test('a value that could not be stored stands in the line again', async () => {
  const { entry, type, stored } = slowBench()
  type('152')
  const kept = entry.keep(says)
  expect([entry.cylinder, entry.typed]).toEqual([3, ''])
  stored[0]!(undefined)
  expect(await kept).toBeUndefined()
  expect([entry.cylinder, entry.typed]).toEqual([1, '152'])
})
