import { describe, expect, it } from 'vitest'
import { evaluationSchema, comparisonSchema, parseCase, parseJson, parsePair, PROBLEMS } from '@evenbore/contract'
import { compare, evaluate } from '@evenbore/diagnosis'

type Json = Record<string, unknown>

/** A good case that touches every kind of reading. */
function fullCase(): Json & { engine: Json; conditions: Json; readings: Json[] } {
  return {
    engine: {
      fuel: 'petrol', cycle: 4, injection: 'none', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], banks: [[1, 2, 3, 4]], gaskets: [[1, 2], [3, 4]],
      boreMm: 80, strokeMm: 80, rodLengthMm: 140, compressionRatio: 9, intakeClosesDegAbdc: 50, decompressor: false, valveGear: 'overhead', cooling: 'water', camshaft: 'standard',
      limits: { minimum: { value: 110, unit: 'psi' }, maximum: { value: 190, unit: 'psi' }, spreadPercent: 10, spreadPressure: { value: 15, unit: 'psi' } },
      hotExhaustCylinders: [2, 3], history: { kmSinceRings: 20000, monthsStored: 2, minutesRunBeforeTest: 20, overheated: false, headSkimmed: false },
    },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 4, crankingRpm: 210, batteryVolts: 11.2, altitudeM: 300, airPressure: { value: 97.8, unit: 'kPa' }, airTempC: 18, clearancesSet: true, headTorqued: true },
    gauge: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6, resolution: { value: 1, unit: 'psi' }, volumeBeforeValveMl: 2, connection: 'screwed' },
    leakageTester: { supply: { value: 80, unit: 'psi' }, restrictorMm: 1.016 },
    sessions: { '019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b': { conditions: { engine: 'warm', throttle: 'open', plugsOut: 'one' } } },
    readings: [
      { test: 'compression', cylinder: 1, pressure: { value: 150, unit: 'psi' }, firstStroke: { value: 90, unit: 'psi' }, strokes: [90, 130, 147, 150].map((value) => ({ value, unit: 'psi' })), strokeCount: 4, heldTenSeconds: true, seq: 1 },
      { test: 'compression', cylinder: 2, pressure: { value: 151, unit: 'psi' } },
      { test: 'compression', cylinder: 3, pressure: { value: 121, unit: 'psi' } },
      { test: 'compression', cylinder: 4, pressure: { value: 149, unit: 'psi' } },
      { test: 'compression', cylinder: 3, wet: true, oilMl: 5, pressure: { value: 128, unit: 'psi' } },
      { test: 'compression', cylinder: 3, running: true, snap: true, pressure: { value: 70, unit: 'psi' }, session: '019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b' },
      { test: 'leakage', cylinder: 3, held: { value: 50, unit: 'psi' }, heard: { intake: 0, exhaust: 3, crankcase: 1, coolant: 0, neighbour: 0, outside: 0 }, neighbour: 2, rockersSlack: [3], wet: false, offTopDeg: 0 },
      { test: 'leakage', cylinder: 1, percent: 8, supply: { value: 80, unit: 'psi' } },
      { test: 'plug', cylinder: 3, appearance: 'tan', afterRunAtSpeed: true },
      { test: 'power-balance', cylinder: 3, rpmDrop: 20 },
      { test: 'vacuum', pattern: 'regular-drop', reading: { value: 17, unit: 'inHg' } },
      { test: 'coolant-gas', present: false },
      { test: 'borescope', cylinder: 3, seen: ['burnt-exhaust-valve'] },
      { test: 'clearance', cylinder: 3, valve: 'exhaust', state: 'right' },
      { test: 'valve-lift', cylinder: 3, valve: 'exhaust', mm: 8.1 },
      { test: 'cooling-pressure', lostPressure: { value: 0.5, unit: 'psi' }, minutes: 2 },
      { test: 'observation', cylinder: 3, present: true, code: 'weak-by-hand' },
      { test: 'observation', present: false, code: 'water-in-oil' },
      { test: 'cranking-current', samples: { seconds: [0, 0.01, 0.02], amps: [120, 130, 125] }, cylinderOneAt: 0.01 },
    ],
  }
}

/** Sets what a JSON Pointer names in a copy of a value; undefined takes it away. */
function changed(value: Json, pointer: string, to: unknown): Json {
  const copy = structuredClone(value)
  const keys = pointer.slice(1).split('/')
  let at: Record<string, unknown> = copy
  for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>
  if (to === undefined) delete at[keys.at(-1)!]
  else at[keys.at(-1)!] = to
  return copy
}

describe('a good case', () => {
  it('passes whole, and its evaluation is as the contract says', () => {
    const { value } = parseCase(fullCase())
    expect(value).toEqual(fullCase())
    const evaluation = evaluate(value!)
    expect(() => evaluationSchema.parse(evaluation)).not.toThrow()
    for (const { cylinder, sound, faults } of evaluation.cylinders) {
      expect(Math.abs(sound + faults.reduce((sum, { probability }) => sum + probability, 0) - 1), `cylinder ${cylinder}`).toBeLessThan(1e-9)
    }
    expect(evaluation.engine.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9)
    expect(evaluation.cylinders.map(({ cylinder }) => cylinder)).toEqual([1, 2, 3, 4])
    expect(evaluation.neighbours.map(({ cylinders }) => cylinders)).toEqual([[1, 2], [3, 4]])
    expect(evaluation.leakage).toHaveLength(2)
  })
  it('compares with itself as the contract says', () => {
    const { value } = parsePair({ before: fullCase(), after: fullCase(), work: ['head-valves'] })
    expect(() => comparisonSchema.parse(compare(value!))).not.toThrow()
  })
})

describe('a bad case names the field and what was expected', () => {
  it.each([
    ['/readings/1/pressure/value', -1, /0 to 10 MPa/],
    ['/readings/1/pressure/value', 10000, /0 to 10 MPa/],
    ['/readings/1/pressure/value', '150', /a number/],
    ['/readings/1/pressure/unit', 'PSI', /one of psi, kPa, bar, kgf\/cm2/],
    ['/readings/1/pressure/value', undefined, /a number/],
    ['/readings/1/cylinder', 5, /1 to 4/],
    ['/readings/1/cylinder', 0, /1 to 16/],
    ['/readings/1/cylinder', 1.5, /whole number/],
    ['/readings/1/test', 'sniff', /one of compression, leakage/],
    ['/readings/1/extra', 1, /no such field/],
    ['/readings/1/pressure/extra', 1, /no such field/],
    ['/readings/1/session', 'nowhere', /one of the sessions/],
    ['/readings/0/strokeCount', 3, /number of strokes listed, 4/],
    ['/readings/0/strokes/3/value', 149, /the same as pressure/],
    ['/readings/0/strokes/0/value', 89, /the same as firstStroke/],
    ['/readings/6/held/value', 81, /at most the pressure supplied/],
    ['/readings/6/heard/exhaust', 4, /whole number from 0 to 3/],
    ['/readings/6/heard/roof', 1, /no such field/],
    ['/readings/6/neighbour', 3, /other than the one under test/],
    ['/readings/6/rockersSlack/0', 9, /1 to 4/],
    ['/readings/7/percent', 101, /0 to 100/],
    ['/readings/12/seen', [], /1 to 6/],
    ['/readings/12/seen', ['nothing', 'carbon'], /"nothing" alone/],
    ['/readings/15/minutes', 0, /above 0/],
    ['/readings/16/code', 'odd', /weak-by-hand/],
    ['/readings/18/samples/amps', [1, 2], /as many currents as times/],
    ['/readings/18/samples/seconds/2', 0.005, /later than the one before/],
    ['/conditions/strokes', 0, /whole number from 1/],
    ['/conditions/throttle', 'half', /one of open, closed/],
    ['/conditions/airPressure/value', 10, /30 to 120 kPa/],
    ['/conditions/wind', 3, /no such field/],
    ['/engine/fuel', undefined, /one of petrol, diesel/],
    ['/engine/cycle', 3, /4 or 2/],
    ['/engine/cylinders', 17, /1 to 16/],
    ['/engine/cylinders', 64, /1 to 16/],
    ['/engine/firingOrder/3', 3, /once/],
    ['/engine/banks/0/3', 3, /once/],
    ['/engine/gaskets/1/1', 3, /once/],
    ['/engine/rodLengthMm', 40, /longer than half the stroke/],
    ['/engine/limits/minimum/value', 200, /not above the maximum/],
    ['/engine/limits/margin', 1, /no such field/],
    ['/engine/history/smell', 'bad', /no such field/],
    ['/gauge/accuracyClass', -1, /0 to 25/],
    ['/gauge/span/value', 0, /above 0/],
    ['/leakageTester/restrictorMm', 0, /above 0/],
    ['/sessions/019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b/conditions/engine', 'tepid', /hot, warm, cold/],
    ['/comment', 'hello', /no such field/],
  ])('%s = %j', (pointer, to, expected) => {
    const { error } = parseCase(changed(fullCase(), pointer, to))
    const found = error?.errors.find(({ path }) => path === pointer)
    expect(found, JSON.stringify(error)).toBeDefined()
    expect(found!.expected).toMatch(expected)
    expect(error!.type).toBe('/docs/problems/invalid-case')
    expect(error!.title).toBe(PROBLEMS['invalid-case'].title)
  })
  it('says what it got, "nothing" where the field is missing', () => {
    expect(parseCase(changed(fullCase(), '/engine/layout', undefined)).error!.errors).toEqual([{ path: '/engine/layout', expected: 'one of inline, v, flat', got: 'nothing' }])
    expect(parseCase(changed(fullCase(), '/engine/layout', 'w')).error!.errors[0]!.got).toBe('"w"')
  })
  it('a v or flat engine needs its banks; a bank must not forget a cylinder', () => {
    const v = changed(changed(fullCase(), '/engine/layout', 'v'), '/engine/banks', undefined)
    expect(parseCase(v).error!.errors.map(({ path }) => path)).toEqual(['/engine/banks'])
    expect(parseCase(changed(fullCase(), '/engine/banks', [[1, 2, 3]])).error!.errors[0]!.path).toBe('/engine/banks')
    expect(parseCase(changed(fullCase(), '/engine/firingOrder', [1, 2, 3])).error!.errors[0]!.path).toBe('/engine/firingOrder')
  })
  it('a reading of 0 psi is legal, and 500 readings are; 501 are not', () => {
    expect(parseCase(changed(fullCase(), '/readings/2/pressure/value', 0)).error).toBeUndefined()
    const reading = { test: 'coolant-gas', present: false }
    expect(parseCase({ ...fullCase(), readings: Array(500).fill(reading) }).error).toBeUndefined()
    expect(parseCase({ ...fullCase(), readings: Array(501).fill(reading) }).error!.errors[0]).toMatchObject({ path: '/readings', expected: 'a list of at most 500 readings' })
  })
  it('at most 200,000 samples in the whole case', () => {
    const trace = (count: number) => ({ test: 'cranking-current', samples: { seconds: Array.from({ length: count }, (_, i) => i / 1000), amps: Array(count).fill(100) } })
    expect(parseCase({ ...fullCase(), readings: [trace(100_000), trace(100_000)] }).error).toBeUndefined()
    expect(parseCase({ ...fullCase(), readings: [trace(100_000), trace(100_001)] }).error!.errors[0]!.path).toBe('/readings/1/samples')
  })
  it('keys that reach into prototypes are refused like any other', () => {
    expect(parseCase(JSON.parse(JSON.stringify(fullCase()).replace('"comment"', '"x"').replace(/^\{/, '{"__proto__":{"a":1},'))).error!.errors[0]!.path).toBe('/__proto__')
    const named = JSON.parse(JSON.stringify(fullCase()).replaceAll('019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b', '__proto__'))
    expect(parseCase(named).error!.errors.map(({ path }) => path)).toEqual(['/readings/5/session'])
  })
  it('broken JSON is a bad case with the path ""', () => {
    expect(parseJson('{"engine":', parseCase).error!.errors[0]).toMatchObject({ path: '', expected: 'JSON' })
  })
  it('numbers that are none are refused', () => {
    expect(parseCase(changed(fullCase(), '/readings/1/pressure/value', NaN)).error).toBeDefined()
    expect(parseJson(JSON.stringify(fullCase()).replace('"value":151', '"value":1e999'), parseCase).error!.errors[0]!.path).toBe('/readings/1/pressure/value')
  })
  it('a pair names the side', () => {
    const { error } = parsePair({ before: fullCase(), after: changed(fullCase(), '/readings/1/cylinder', 9), work: ['polish'] })
    expect(error!.errors.map(({ path }) => path).sort()).toEqual(['/after/readings/1/cylinder', '/work/0'])
    expect(parsePair({ before: fullCase(), after: { engine: { fuel: 'petrol', layout: 'inline', cylinders: 2 }, conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' }, readings: [] } }).error!.errors[0]!.path).toBe('/after/engine/cylinders')
  })
})
