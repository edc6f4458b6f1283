import type { Case } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../evaluate.ts'
import { OWN_COUNT } from '../model/states.ts'
import { doneTests } from './done.ts'
import { both, worthOf, type Outcomes, type Question } from './information.ts'
import { BRIDGED, LABELS, type Stakes } from './stakes.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })
const four: Case = {
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, boreMm: 80, strokeMm: 80, compressionRatio: 9, firingOrder: [1, 3, 4, 2] },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', crankingRpm: 200 },
  leakageTester: { supply: psi(80), restrictorMm: 1.016 },
  readings: [],
}
const dry = (...values: number[]): Case['readings'] => values.map((value, i) => ({ test: 'compression' as const, cylinder: i + 1, pressure: psi(value) }))

/** Two states, sound and one fault, even odds; to leave the fault costs 100, to repair costs 60 whatever is there. */
const minutes = new Float64Array(2 * LABELS).fill(60)
minutes.fill(0, 0, LABELS)
minutes[1] = 100
const stakes: Stakes = { decisions: 2, minutes }
const question: Question = {
  belief: { state: Int32Array.of(0, 1), worn: Uint8Array.of(0, 0), label: Uint8Array.of(0, 1), probability: Float64Array.of(0.5, 0.5) },
  stakes, othersSound: 1, elsewhere: 0, unread: false, otherCause: 0, settled: { at: 0.9, blur: 0.2 },
}
const tells = (right: number): Outcomes => ({ count: 2, table: (s, _worn, out) => { out[s] = right; out[1 - s] = 1 - right } })

describe('what a test is worth', () => {
  it('a test that tells everything is worth the whole bit, and saves what not knowing costs', () => {
    const worth = worthOf(question, tells(1))
    expect(worth.bits).toBeCloseTo(1, 12)
    // leaving it blindly costs 50; knowing, half the time 60 is spent
    expect(worth.saved).toBeCloseTo(20, 12)
    expect(worth.settles).toBeCloseTo(1, 4)
  })

  it('what is nearly settled is not settled by a test that says next to nothing', () => {
    const near = { ...question, belief: { ...question.belief, probability: Float64Array.of(0.899, 0.101) } }
    const slight: Outcomes = { count: 2, table: (s, _worn, out) => { out[0] = s === 0 ? 0.95 : 0.8; out[1] = 1 - out[0] } }
    // nine times of ten it lifts .899 to .91
    expect(worthOf(near, slight).settles).toBeLessThan(0.2)
    expect(worthOf(near, tells(0.999)).settles).toBeGreaterThan(0.45)
  })

  it('a test that tells nothing is worth nothing', () => {
    const worth = worthOf(question, tells(0.5))
    expect(worth.bits).toBeCloseTo(0, 12)
    expect(worth.saved).toBeCloseTo(0, 12)
    expect(worth.settles).toBe(0)
  })

  it('two tests together are worth what the pair tells, more than either and less than both added', () => {
    const one = worthOf(question, tells(0.8)).bits
    const pair = worthOf(question, both(tells(0.8), tells(0.8))).bits
    // 1 - H(.8), and the exact information of two independent looks (computed by hand)
    expect(one).toBeCloseTo(1 + 0.8 * Math.log2(0.8) + 0.2 * Math.log2(0.2), 12)
    const agree = 0.8 ** 2 + 0.2 ** 2, sure = 0.8 ** 2 / agree
    expect(pair).toBeCloseTo(agree * (1 + sure * Math.log2(sure) + (1 - sure) * Math.log2(1 - sure)), 12)
    expect(pair).toBeGreaterThan(one)
    expect(pair).toBeLessThan(2 * one)
  })

  it('labels are sound, the faults and the bridge', () => {
    expect(BRIDGED).toBe(OWN_COUNT)
    expect(LABELS).toBe(OWN_COUNT + 1)
  })
})

describe('what to do next', () => {
  it('begins with dry compression, not with a question', () => {
    const { next, enough } = evaluate(four)
    expect(next[0]!.tests[0]).toMatchObject({ test: 'compression', cylinders: [1, 2, 3, 4] })
    expect(enough).toBeNull()
  })

  it('goes to the low cylinder', () => {
    const { next } = evaluate({ ...four, readings: dry(150, 148, 90, 152) })
    expect(next[0]!.tests.every((test) => test.cylinders?.length === 1 && test.cylinders[0] === 3)).toBe(true)
  })

  it('reads the last cylinder before anything else', () => {
    expect(evaluate({ ...four, readings: dry(170, 171, 170, 169).slice(1) }).next[0]!.tests).toEqual([{ test: 'compression', cylinders: [1] }])
  })

  it('says that enough is known of an even engine, and of a plain fault that nothing can settle further', () => {
    expect(evaluate({ ...four, readings: dry(150, 149, 151, 150) }).enough).not.toBeNull()
    const plain = evaluate({ ...four, readings: [
      ...dry(150, 148, 70, 152), { test: 'leakage', cylinder: 3, percent: 60, heard: { intake: 0, exhaust: 3, crankcase: 0, coolant: 0, outside: 0 } },
      { test: 'leakage', cylinder: 3, percent: 60, rockersSlack: [3], heard: { intake: 0, exhaust: 3, crankcase: 0 } }, { test: 'borescope', cylinder: 3, seen: ['burnt-exhaust-valve'] },
    ] })
    expect(plain.enough).not.toBeNull()
  })

  it('asks for running compression where all cylinders read low alike, of a diesel for another gauge, and for neither where the engine reads as it should', () => {
    const asked = (readings: Case['readings'], fuel: 'petrol' | 'diesel' = 'petrol') =>
      evaluate({ ...four, engine: { ...four.engine, fuel, ...(fuel === 'diesel' ? { compressionRatio: 18 } : {}) }, readings }).next.flatMap(({ tests }) => tests).filter(({ first, running }) => first === 'swap-gauge' || running === true)
    expect(asked(dry(95, 96, 94, 95))[0]).toEqual({ test: 'compression', running: true, cylinders: [2] })
    expect(asked(dry(180, 181, 179, 180), 'diesel')).toEqual([{ test: 'compression', repeat: true, first: 'swap-gauge', cylinders: [1] }])
    expect(asked(dry(150, 149, 151, 150))).toEqual([])
  })

  it('says of running compression on one cylinder what it tells apart in the whole engine, and asks for a snap of the throttle once', () => {
    const low: Case = { ...four, readings: dry(110, 111, 109, 110) }
    expect(evaluate(low).next[0]!.says).toMatch(/^Running compression on cylinder 2\. Open for the whole engine: a closed throttle/)
    const run = (snap: boolean): Case['readings'][number] => ({ test: 'compression', cylinder: 2, running: true, ...(snap ? { snap } : {}), pressure: psi(snap ? 100 : 70) })
    const then = (...readings: Case['readings']) => evaluate({ ...low, readings: [...low.readings, ...readings] }).next.flatMap(({ tests }) => tests).filter(({ running }) => running === true)
    expect(then(run(false))).toEqual([{ test: 'compression', running: true, snap: true, cylinders: [2] }])
    expect(then(run(false), run(true))).toEqual([])
  })

  it('does not say that nothing is left to settle where only the cause common to all is not', () => {
    const said = (...values: number[]) => evaluate({ ...four, engine: { ...four.engine, fuel: 'diesel', compressionRatio: 18 }, readings: dry(...values) }).enough?.says
    expect(said(260, 261, 259, 260)).toContain('what all of them have in common is not settled')
    expect(said(350, 349, 351, 350)).toBe('Every cylinder has a clear leading explanation; no further test pays for its time.')
  })

  it('asks for the other gauge on a cylinder that was read, and not again once there was one', () => {
    const low = { ...four, readings: dry(60, 60, 60, 59).slice(1) }
    expect(evaluate(low).next.flatMap(({ tests }) => tests).find(({ first }) => first === 'swap-gauge')?.cylinders).toEqual([2])
    const gauge = (accuracyClass: number) => ({ conditions: four.conditions, gauge: { span: psi(300), accuracyClass } })
    const twice: Case = { ...four, sessions: { a: gauge(1.6), b: gauge(2.5) }, readings: ['a', 'b'].flatMap((session) => dry(95, 96, 94, 95).map((reading) => ({ ...reading, session }))) }
    expect(evaluate(twice).next.flatMap(({ tests }) => tests).some(({ first }) => first === 'swap-gauge')).toBe(false)
    // nor for ever where the gauges are not described: read in two more sessions it was read with two others
    const again: Case = { ...four, engine: { ...four.engine, fuel: 'diesel', compressionRatio: 18 }, sessions: { a: { conditions: four.conditions }, b: { conditions: four.conditions } }, readings: dry(180, 181, 179, 180) }
    const more = (...ids: string[]): Case => ({ ...again, readings: [...again.readings, ...ids.map((session) => ({ ...dry(181)[0]!, session }))] })
    const swaps = (given: Case): boolean => evaluate(given).next.flatMap(({ tests }) => tests).some(({ first }) => first === 'swap-gauge')
    expect([again, more('a'), more('a', 'b')].map(swaps)).toEqual([true, true, false])
  })

  it('tells a leakage test with the rockers of this cylinder slack, with those of a neighbour slack, and with oil in apart', () => {
    const leak = (more: object): Case['readings'][number] => ({ test: 'leakage', cylinder: 3, percent: 60, heard: { intake: 0, exhaust: 2, crankcase: 2 }, ...more })
    const done = (...readings: Case['readings']): string[] => [...doneTests({ ...four, readings }, new Set(readings.keys())).keys()]
    expect(done(leak({ rockersSlack: [2] }))).toEqual(['leakage 3'])
    expect(done(leak({}), leak({ rockersSlack: [3] }))).toEqual(['leakage 3', 'slack 3'])
    expect(done(leak({}), leak({ rockersSlack: [2] }))).toEqual(['leakage 3', 'slack 2 for 3'])
    expect(done(leak({}), leak({ wet: true }))).toEqual(['leakage 3', 'wet leakage 3'])
    expect(done(leak({}), leak({}))).toEqual(['leakage 3', 'retest 3'])
    const oiled = evaluate({ ...four, readings: [...dry(150, 148, 90, 152), leak({}), leak({ wet: true, percent: 30 })] })
    expect(oiled.next.flatMap(({ tests }) => tests).some((test) => test.test === 'compression' && test.repeat === true && test.cylinders?.[0] === 3)).toBe(false)
  })

  it('has the rockers of a neighbour slackened where a hiss there may have come through its open valve', () => {
    // at the top of No. 1 an exhaust valve of No. 2 stands open: computed from 1-3-4-2
    const hiss = (more: object = {}): Case['readings'][number] => ({ test: 'leakage', cylinder: 1, percent: 50, heard: { intake: 0, exhaust: 1, crankcase: 1, coolant: 0, outside: 0, neighbour: 2 }, neighbour: 2, ...more })
    const asked = (...readings: Case['readings']) => evaluate({ ...four, readings: [...dry(110, 112, 150, 151), ...readings] }).next.flatMap(({ tests }) => tests.map(({ rockersSlack }) => rockersSlack))
    const own = hiss({ rockersSlack: [1] })
    expect(asked(hiss(), own)).toContainEqual([2])
    expect(asked(hiss(), own, hiss({ rockersSlack: [2] }))).not.toContainEqual([2])
    const none = { heard: { exhaust: 2, neighbour: 0 } }
    expect(asked(hiss(none), hiss({ ...none, rockersSlack: [1] }))).not.toContainEqual([2])
  })

  it('has plug and lead swapped first where a cylinder of good compression does not pull', () => {
    const lame: Case['readings'] = [90, 95, 5, 92].map((rpmDrop, i) => ({ test: 'power-balance', cylinder: i + 1, rpmDrop }))
    const first = (...readings: Case['readings']) => evaluate({ ...four, readings: [...dry(150, 152, 149, 151), ...lame, ...readings] }).next[0]!.tests[0]
    expect(first()).toEqual({ test: 'observation', code: 'better-with-other-plug-and-lead', cylinders: [3] })
    expect(first({ test: 'observation', code: 'better-with-other-plug-and-lead', cylinder: 3, present: false })?.code).not.toBe('better-with-other-plug-and-lead')
  })

  it('reads a cylinder again that did not hold, before its leakage is tested', () => {
    const readings = dry(108, 182, 180, 174).map((reading, i) => (i === 0 ? { ...reading, heldTenSeconds: false } : reading))
    const first = evaluate({ ...four, readings }).next.map(({ tests }) => tests[0]!).find(({ test }) => test === 'compression' || test === 'leakage')
    expect(first).toEqual({ test: 'compression', repeat: true, cylinders: [1] })
  })

  it('charges what is done during a leakage test without a second set-up, where the tester can only stand there', () => {
    const loud = (cylinder: number): Case['readings'][number] => ({ test: 'leakage', cylinder, percent: 55, heard: { intake: 0, exhaust: 2, crankcase: 0, coolant: 0, outside: 0 } })
    const slack = (...readings: Case['readings']): number | undefined =>
      evaluate({ ...four, readings: [...dry(150, 148, 90, 152), ...readings] }).next.find(({ tests }) => tests.length === 1 && tests[0]!.rockersSlack?.[0] === 3)?.minutes
    expect(slack(loud(3))).toBe(3)
    expect(slack(loud(3), { ...loud(2), percent: 8 } as typeof four.readings[number])).toBe(3 + 5.5 / 2)
    expect(slack(loud(3), { test: 'borescope', cylinder: 3, seen: ['nothing'] })).toBe(3 + 5.5)
  })

  it('puts the cooling system under pressure where a leak into it is likely somewhere and in no cylinder by itself', () => {
    const signs: Case['readings'] = [{ test: 'coolant-gas', present: true }, { test: 'observation', code: 'smoke-white', present: true }]
    const { next } = evaluate({ ...four, readings: [...dry(150, 148, 149, 151), ...signs] })
    const pressure = next.find(({ tests }) => tests[0]!.test === 'cooling-pressure')
    expect(pressure?.says).toMatch(/^Put the cooling system under pressure\. Open for the whole engine: a leak into the coolant at one of the cylinders \([5-7]\d in 100\)\.$/)
  })

  it('gas in the coolant is not enough, however well the engine compresses: what boils is ruined', () => {
    const { enough, next } = evaluate({ ...four, readings: [...dry(155, 156, 154, 156), { test: 'coolant-gas', present: true }] })
    expect(enough).toBeNull()
    const tests = next.flatMap(({ tests: each }) => each.map(({ code, test }) => code ?? test))
    expect(tests).toContain('cooling-pressure')
    expect(tests).toContain('smoke-white')
  })

  it('lists the same test on more and more cylinders twice at most', () => {
    for (const values of [[150, 148, 149, 151], [150, 118, 149, 120], [160, 152, 145, 138]]) {
      const rounds = evaluate({ ...four, readings: dry(...values) }).next.map(({ tests }) => JSON.stringify(tests.map((test) => ({ ...test, cylinders: [] }))))
      for (const round of rounds) expect(rounds.filter((other) => other === round).length).toBeLessThanOrEqual(2)
    }
  })

  it('never offers oil to a diesel', () => {
    const { next } = evaluate({ ...four, engine: { ...four.engine, fuel: 'diesel', compressionRatio: 20 }, readings: dry(400, 395, 250, 402) })
    expect(next.flatMap((s) => s.tests).some((test) => test.wet === true)).toBe(false)
  })
})
