import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Case, evaluationSchema, comparisonSchema, parseCase } from '@evenbore/contract'
import { OBSERVATION_CODES, PLUG_APPEARANCES, VACUUM_PATTERNS } from '@evenbore/contract'
import { compare } from './compare.ts'
import { evaluate } from './evaluate.ts'

/** Cases that pass the contract and yet are absurd: zeros, giants, contradictions, everything at once. */
const unit = fc.constantFrom('psi', 'kPa', 'bar', 'kgf/cm2')
const PER_MEGAPASCAL = { psi: 145.03, kPa: 1000, bar: 10, 'kgf/cm2': 10.197 } as const
const pressure = fc.tuple(fc.oneof(fc.constantFrom(0, 1e-12, 1, 0.1), fc.double({ min: 0, max: 10, noNaN: true })), unit).map(([mpa, name]) => ({ value: mpa * PER_MEGAPASCAL[name as keyof typeof PER_MEGAPASCAL], unit: name }))
const usual = fc.double({ min: 60, max: 200, noNaN: true }).map((value) => ({ value: Math.round(value), unit: 'psi' }))
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined })

const reading = (cylinders: number): fc.Arbitrary<unknown> => {
  const cylinder = fc.integer({ min: 1, max: cylinders })
  const loud = maybe(fc.integer({ min: 0, max: 3 }))
  return fc.oneof(
    { weight: 6, arbitrary: fc.record({ test: fc.constant('compression'), cylinder, pressure: fc.oneof(pressure, usual), wet: maybe(fc.boolean()), running: maybe(fc.boolean()), strokeCount: maybe(fc.integer({ min: 1, max: 12 })), firstStroke: maybe(usual), seq: maybe(fc.integer({ min: 0, max: 9 })), heldTenSeconds: maybe(fc.boolean()), oilMl: maybe(fc.double({ min: 0, max: 1000, noNaN: true })), session: maybe(fc.constant('s')) }) },
    { weight: 4, arbitrary: fc.record({ test: fc.constant('leakage'), cylinder, percent: maybe(fc.double({ min: 0, max: 100, noNaN: true })), heard: maybe(fc.record({ intake: loud, exhaust: loud, crankcase: loud, coolant: loud, neighbour: loud, outside: loud })), wet: maybe(fc.boolean()), rockersSlack: maybe(fc.array(cylinder, { maxLength: 4 })), supply: maybe(fc.constant({ value: 80, unit: 'psi' })) }) },
    fc.record({ test: fc.constant('plug'), cylinder, appearance: fc.constantFrom(...PLUG_APPEARANCES) }),
    fc.record({ test: fc.constant('power-balance'), cylinder, rpmDrop: fc.double({ min: -1000, max: 5000, noNaN: true }) }),
    fc.record({ test: fc.constant('vacuum'), pattern: fc.constantFrom(...VACUUM_PATTERNS) }),
    fc.record({ test: fc.constant('coolant-gas'), present: fc.boolean() }),
    fc.record({ test: fc.constant('valve-lift'), cylinder, valve: fc.constantFrom('intake', 'exhaust'), mm: fc.double({ min: 0, max: 50, noNaN: true }) }),
    fc.record({ test: fc.constant('observation'), cylinder: maybe(cylinder), present: maybe(fc.boolean()), code: fc.constantFrom(...OBSERVATION_CODES) }),
    fc.record({ test: fc.constant('cranking-current'), samples: fc.array(fc.double({ min: -1e9, max: 1e9, noNaN: true }), { maxLength: 400 }).map((amps) => ({ amps, seconds: amps.map((_, index) => index * 0.01) })) }),
  )
}
const conditions = fc.record({ engine: fc.constantFrom('hot', 'warm', 'cold'), throttle: fc.constantFrom('open', 'closed'), plugsOut: fc.constantFrom('all', 'one'), strokes: maybe(fc.integer({ min: 1, max: 1000 })), crankingRpm: maybe(fc.double({ min: 0.001, max: 10000, noNaN: true })), altitudeM: maybe(fc.double({ min: -500, max: 9000, noNaN: true })) })
const wildCase: fc.Arbitrary<Case> = fc.integer({ min: 1, max: 6 }).chain((cylinders) => fc.record({
  engine: fc.record({
    fuel: fc.constantFrom('petrol', 'diesel'), cycle: maybe(fc.constantFrom(4, 2)), layout: fc.constant('inline'), cylinders: fc.constant(cylinders),
    boreMm: maybe(fc.double({ min: 10, max: 1000, noNaN: true })), strokeMm: maybe(fc.double({ min: 10, max: 1000, noNaN: true })),
    compressionRatio: maybe(fc.double({ min: 2, max: 40, noNaN: true })), intakeClosesDegAbdc: maybe(fc.double({ min: -90, max: 150, noNaN: true })),
    cooling: maybe(fc.constantFrom('water', 'air')), valveGear: maybe(fc.constantFrom('overhead', 'side')),
    limits: maybe(fc.record({ spreadPercent: maybe(fc.constantFrom(0, 10, 100)), spreadPressure: maybe(pressure), minimum: maybe(fc.constant({ value: 100, unit: 'psi' })) })),
  }),
  conditions,
  gauge: maybe(fc.record({ span: fc.constantFrom({ value: 300, unit: 'psi' }, { value: 0.1, unit: 'psi' }, { value: 100, unit: 'bar' }), accuracyClass: fc.constantFrom(0, 1.6, 25), resolution: maybe(fc.constantFrom({ value: 0, unit: 'psi' }, { value: 1, unit: 'psi' }, { value: 50, unit: 'psi' })) })),
  leakageTester: maybe(fc.record({ supply: fc.constantFrom({ value: 80, unit: 'psi' }, { value: 1, unit: 'kPa' }), restrictorMm: fc.constantFrom(1.016, 1.524, 20, 0.01) })),
  sessions: fc.record({ s: fc.record({ conditions }) }),
  readings: fc.array(reading(cylinders), { maxLength: 14 }),
})).map((wild) => JSON.parse(JSON.stringify(wild)) as unknown).filter((wild) => parseCase(wild).error === undefined).map((wild) => parseCase(wild).value!)

const RUNS = { numRuns: 40, seed: 20 }

/** The contract's schemas refuse NaN and infinities, so parsing is the check. */
describe('absurd cases that pass the contract', () => {
  it('get an evaluation as the contract says, with probabilities that sum to one', () => {
    fc.assert(fc.property(wildCase, (wild) => {
      const found = evaluate(wild, undefined, { ranking: false })
      evaluationSchema.parse(found)
      for (const { sound, faults } of found.cylinders) expect(Math.abs(sound + faults.reduce((sum, { probability }) => sum + probability, 0) - 1)).toBeLessThan(1e-9)
      expect(Math.abs(found.engine.reduce((sum, { probability }) => sum + probability, 0) - 1)).toBeLessThan(1e-9)
    }), RUNS)
  }, 120_000)
  it('with next tests and reasons too', () => {
    fc.assert(fc.property(wildCase, (wild) => {
      evaluationSchema.parse(evaluate(wild))
    }), { numRuns: 8, seed: 21 })
  }, 120_000)
  it('compare without breaking, probabilities of change summing to one', () => {
    fc.assert(fc.property(wildCase, wildCase, (before, wild) => {
      const after = { ...wild, engine: { ...wild.engine, cylinders: Math.max(before.engine.cylinders, wild.engine.cylinders) } }
      const found = compare({ before: { ...before, engine: { ...before.engine, cylinders: after.engine.cylinders } }, after })
      comparisonSchema.parse(found)
      for (const { improved, unchanged, worse } of found.cylinders) if (improved !== null) expect(improved + unchanged! + worse!).toBeCloseTo(1, 9)
    }), RUNS)
  }, 120_000)
  it('the same case gives the same bytes, and the order of its readings moves no probability of the verdict', () => {
    fc.assert(fc.property(wildCase, (wild) => {
      const once = evaluate(wild, undefined, { ranking: false })
      expect(JSON.stringify(evaluate(wild, undefined, { ranking: false }))).toBe(JSON.stringify(once))
      const turned = evaluate({ ...wild, readings: wild.readings.toReversed() }, undefined, { ranking: false })
      expect(turned.consistency.verdict).toBe(once.consistency.verdict)
      if (once.consistency.probabilityInside !== null) expect(turned.consistency.probabilityInside).toBeCloseTo(once.consistency.probabilityInside, 9)
      expect(turned.consistency.spreadPercent ?? -1).toBeCloseTo(once.consistency.spreadPercent ?? -1, 9)
    }), RUNS)
  }, 120_000)
})

describe('hundreds of readings that contradict each other', () => {
  const flat = { seconds: Array.from({ length: 400 }, (_, i) => i / 80), amps: Array.from({ length: 400 }, (_, i) => 100 + Math.sin(i / 3)) }
  const heard = { intake: 3, exhaust: 3, crankcase: 0, coolant: 3, outside: 3 } as const
  const kinds: readonly (readonly [string, (i: number) => Case['readings'][number]])[] = [
    ['leakage', (i) => ({ test: 'leakage', cylinder: 3, wet: i % 3 === 0, percent: i % 2 === 0 ? 5 : 95, heard })],
    ['traces', () => ({ test: 'cranking-current', samples: { seconds: [...flat.seconds], amps: [...flat.amps] } })],
    ['looks', () => ({ test: 'borescope', cylinder: 3, seen: ['burnt-exhaust-valve', 'scored-bore', 'cracked-piston', 'carbon', 'coolant'] })],
    ['vacuum', (i) => ({ test: 'vacuum', pattern: (['steady', 'low-steady', 'regular-drop', 'irregular-drop', 'slow-fall'] as const)[i % 5]!, reading: { value: 1, unit: 'inHg' } })],
    ['signs', (i) => ({ test: 'observation', code: (['water-in-oil', 'oil-in-water', 'smoke-white', 'oil-use-high'] as const)[i % 4]!, present: i % 8 < 4 })],
    ['power balance', (i) => ({ test: 'power-balance', cylinder: 1 + (i % 4), rpmDrop: [5, 300, -500][i % 3]! })],
  ]
  it.each(kinds)('%s: something is left to believe, and it sums to one', (_, reading) => {
    const readings = [150, 150, 90, 150].map((value, i): Case['readings'][number] => ({ test: 'compression', cylinder: i + 1, pressure: { value, unit: 'psi' } }))
    const found = evaluate({
      engine: { fuel: 'petrol', layout: 'inline', cylinders: 4 }, conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' },
      leakageTester: { supply: { value: 80, unit: 'psi' }, restrictorMm: 1.016 }, readings: [...readings, ...Array.from({ length: 490 }, (_x, i) => reading(i))],
    }, undefined, { ranking: false })
    for (const { sound, faults } of found.cylinders) expect(faults.reduce((sum, { probability }) => sum + probability, sound)).toBeCloseTo(1, 9)
    expect(found.engine.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9)
  })
})
