import type { Evaluation, Fault } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { measured, observationsOf } from './reliability.ts'

/** An evaluation of a four whose cylinder 3 is believed as given; the rest is sound. */
function believing(sound: number, faults: Partial<Record<Fault, number>>, bridge = 0.01): Evaluation {
  const cylinder = (number: number) => ({
    cylinder: number, sound: number === 3 ? sound : 0.9,
    faults: Object.entries(number === 3 ? faults : { 'ring-wear': 0.1 }).map(([fault, probability]) => ({ fault: fault as Fault, probability })),
  })
  return {
    model: 'test', consistency: {} as Evaluation['consistency'], cylinders: [1, 2, 3, 4].map(cylinder), neighbours: [{ cylinders: [2, 3], fault: 'gasket-between', probability: bridge }],
    engine: [{ cause: 'none', probability: 0.8 }, { cause: 'worn-evenly', probability: 0.2 }], leakage: [], because: [], next: [], enough: null, repairs: [], objections: [], cautions: [],
  }
}

const valve = believing(0.1, { 'exhaust-valve-leak': 0.6, 'ring-wear': 0.3 })

test('a finding that led counts as first, the second as one of two, the third as neither', () => {
  const first = observationsOf(valve, { fault: 'exhaust-valve-leak', cylinders: [3] })
  const second = observationsOf(valve, { fault: 'ring-wear', cylinders: [3] })
  const third = observationsOf(valve, { fault: 'nothing', cylinders: [3] })
  expect(measured([...first, ...second, ...third])).toMatchObject({ findings: 3, topOne: 1 / 3, topTwo: 2 / 3 })
})

test('log loss is the mean of minus the natural logarithm of what was believed', () => {
  const { logLoss } = measured([...observationsOf(valve, { fault: 'exhaust-valve-leak', cylinders: [3] }), ...observationsOf(valve, { fault: 'ring-wear', cylinders: [3] })])
  expect(logLoss).toBeCloseTo(-(Math.log(0.6) + Math.log(0.3)) / 2, 12)
})

test('a finding in two cylinders is two observations; one of the whole engine is held against the causes', () => {
  expect(observationsOf(valve, { fault: 'ring-wear', cylinders: [1, 3] })).toHaveLength(2)
  const [engine] = observationsOf(valve, { fault: 'worn-evenly', cylinders: [] })
  expect(measured([engine!])).toMatchObject({ topOne: 0, topTwo: 1 })
})

test('a gasket between two is held against the faults of both', () => {
  const likely = observationsOf(believing(0.7, { 'ring-wear': 0.3 }, 0.5), { fault: 'gasket-between', cylinders: [2, 3] })
  expect(measured(likely).topOne).toBe(1)
  expect(observationsOf(valve, { fault: 'gasket-between', cylinders: [1, 4] })).toEqual([])
})

test('bins set what was believed beside what was found', () => {
  const { bins } = measured([...observationsOf(valve, { fault: 'exhaust-valve-leak', cylinders: [3] }), ...observationsOf(valve, { fault: 'ring-wear', cylinders: [3] })])
  expect(bins).toHaveLength(10)
  expect(bins[6]).toEqual({ from: 0.6, to: 0.7, count: 2, believed: 0.6, found: 0.5 })
  expect(bins[3]).toMatchObject({ count: 2, found: 0.5 })
  expect(bins[9]).toEqual({ from: 0.9, to: 1, count: 0, believed: null, found: null })
})

test('no findings, no figures', () => {
  expect(measured([])).toMatchObject({ findings: 0, topOne: null, topTwo: null, logLoss: null })
})
