import { describe, expect, it } from 'vitest'
import { bridged, chainTotal, sumChain } from '../../packages/diagnosis/src/model/chain.ts'
import { noisyOr } from '../../packages/diagnosis/src/model/flags.ts'
import { conditional, posterior, totalWeight, type Factor } from './factors.ts'

/** Lauritzen and Spiegelhalter 1988, tables as printed in the documentation of the R package gRain (published). */
const chestClinic: Factor[] = [
  conditional('a', [], () => 0.01), conditional('s', [], () => 0.5),
  conditional('t', ['a'], ({ a }) => (a ? 0.05 : 0.01)), conditional('l', ['s'], ({ s }) => (s ? 0.1 : 0.01)), conditional('b', ['s'], ({ s }) => (s ? 0.6 : 0.3)),
  conditional('x', ['t', 'l'], ({ t, l }) => (t || l ? 0.98 : 0.05)),
  conditional('d', ['b', 't', 'l'], ({ b, t, l }) => (t || l ? (b ? 0.9 : 0.7) : b ? 0.8 : 0.1)),
]

describe('chest clinic (Lauritzen and Spiegelhalter 1988; tables of the R package gRain)', () => {
  it('gives the published marginals', () => {
    expect(posterior(chestClinic, 't')).toBeCloseTo(0.0104, 12)
    expect(posterior(chestClinic, 'l')).toBeCloseTo(0.055, 12)
    expect(posterior(chestClinic, 'b')).toBeCloseTo(0.45, 12)
    expect(totalWeight(chestClinic, { a: true, d: true })).toBeCloseTo(0.004501375, 12)
  })
  it.each([
    [{ d: true }, 't', 3160 / 167681], [{ d: true }, 'l', 224000 / 2179853], [{ d: true }, 'b', 0.833967336330], [{ d: true }, 's', 0.633996879606],
    [{ a: true, d: true }, 't', 3160 / 36011], [{ a: true, d: true }, 'b', 146097 / 180055], [{ a: true, d: true, x: true }, 'l', 250880 / 564701],
    [{ a: true, s: false, d: true, x: true }, 't', 39200 / 61993],
  ] as const)('given %o, %s has the value computed in rational arithmetic', (evidence, variable, expected) => {
    expect(posterior(chestClinic, variable, evidence)).toBeCloseTo(expected, 11)
  })

  /**
   * The same network through the engine's own chain: cells are (smoking), two "cylinders" stand for tuberculosis with lung cancer
   * and for bronchitis, and the bridge between them carries "either", which dyspnoea needs.
   */
  it('comes out of the forward-backward sum as well', () => {
    const cells = 2
    const smoking = [1, 0]
    // bridge level 1 = either; its chance is folded into the first cylinder's emission
    const first = new Float64Array(2 * cells), second = new Float64Array(2 * cells)
    smoking.forEach((s, cell) => {
      const t = 0.0104, l = s === 1 ? 0.1 : 0.01, b = s === 1 ? 0.6 : 0.3
      const either = t + l - t * l
      first[cell] = 1 - either
      first[cells + cell] = either
      second[cell] = b * 0.8 + (1 - b) * 0.1
      second[cells + cell] = b * 0.9 + (1 - b) * 0.7
    })
    const total = chainTotal([first, second], Float64Array.of(1, 1), cells, new Float64Array(cells))
    expect(0.5 * total[0]! + 0.5 * total[1]!).toBeCloseTo(0.4359706, 12)
  })
})

/**
 * Marginals of small networks through the engine's own chain. Cells are what all share; a "cylinder" is a variable or several with no more
 * neighbours than two; the "bridge" between two of them, 0 or 1 with weight one each, says what the left tells the right.
 */
describe('published networks through forward-backward over a chain with cells', () => {
  const even = Float64Array.of(1, 1)
  /** What the last link weighs for each value of the bridge before it, in each cell. */
  const link = (cells: number, weight: (bridge: number, cell: number) => number): Float64Array =>
    Float64Array.from({ length: 2 * cells }, (_, at) => weight(at < cells ? 0 : 1, at % cells))
  const probability = (emissions: readonly Float64Array[], prior: readonly number[]): { total: number; bridged: number } => {
    const sums = sumChain(emissions, even, prior.length)
    const part = bridged(sums, 0, even, prior.length), all = chainTotal(emissions, even, prior.length, new Float64Array(prior.length))
    return { total: prior.reduce((sum, p, cell) => sum + p * all[cell]!, 0), bridged: prior.reduce((sum, p, cell) => sum + p * part[cell]!, 0) }
  }

  it.each([
    // dyspnoea; asia and dyspnoea; asia, dyspnoea and x-ray; and not smoking
    [{}, 0.120535834297, 0.633996879606, 11], [{ a: true }, 32824 / 180055, 22540 / 36011, 11],
    [{ a: true, x: true }, 0.813768702375, 0.702025117211, 11],
  ] as const)('chest clinic with dyspnoea and %o: "either" and smoking (computed)', (given, either, smoking, digits) => {
    const t = 'a' in given ? 0.05 : 0.0104, seen = (e: number): number => ('x' in given ? (e === 1 ? 0.98 : 0.05) : 1)
    const first = link(2, (e, s) => {
      const l = s === 1 ? 0.1 : 0.01, some = t + l - t * l
      return (e === 1 ? some : 1 - some) * seen(e)
    })
    const second = link(2, (e, s) => {
      const b = s === 1 ? 0.6 : 0.3
      return e === 1 ? b * 0.9 + (1 - b) * 0.7 : b * 0.8 + (1 - b) * 0.1
    })
    const all = probability([first, second], [0.5, 0.5])
    expect(all.bridged / all.total).toBeCloseTo(either, digits)
    expect(probability([first, second], [0, 0.5]).total / all.total).toBeCloseTo(smoking, digits)
  })

  it('burglary alarm: who called, given the burglar or not, is the chain alarm - calls over cells of burglary (Pearl; tables from memory)', () => {
    const alarm = link(2, (a, b) => {
      const rings = b === 1 ? 0.002 * 0.95 + 0.998 * 0.94 : 0.002 * 0.29 + 0.998 * 0.001
      return a === 1 ? rings : 1 - rings
    })
    const calls = link(2, (a) => (a === 1 ? 0.9 * 0.7 : 0.05 * 0.01))
    const all = probability([alarm, calls], [0.999, 0.001])
    expect(probability([alarm, calls], [0, 0.001]).total / all.total).toBeCloseTo(0.284171835364, 11)
  })

  it('sprinkler: rain and sprinkler share the cells of clouds (tables from memory)', () => {
    const sprinkler = link(2, (s, c) => (s === 1 ? [0.5, 0.1][c]! : [0.5, 0.9][c]!))
    const wet = link(2, (s, c) => {
      const rain = [0.2, 0.8][c]!
      return s === 1 ? rain * 0.99 + (1 - rain) * 0.9 : rain * 0.9
    })
    const all = probability([sprinkler, wet], [0.5, 0.5])
    expect(all.total).toBeCloseTo(0.6471, 12)
    expect(all.bridged / all.total).toBeCloseTo(309 / 719, 12)
  })
})

describe('burglary alarm (Pearl; tables from memory)', () => {
  const alarm: Factor[] = [
    conditional('B', [], () => 0.001), conditional('E', [], () => 0.002),
    conditional('A', ['B', 'E'], ({ B, E }) => (B ? (E ? 0.95 : 0.94) : E ? 0.29 : 0.001)),
    conditional('j', ['A'], ({ A }) => (A ? 0.9 : 0.05)), conditional('m', ['A'], ({ A }) => (A ? 0.7 : 0.01)),
  ]
  it('explains away', () => {
    expect(posterior(alarm, 'B', { j: true, m: true })).toBeCloseTo(0.284171835364, 11)
    expect(posterior(alarm, 'B', { A: true })).toBeCloseTo(0.373551228282, 11)
    expect(posterior(alarm, 'B', { A: true, E: true })).toBeCloseTo(95 / 29066, 12)
  })
})

describe('sprinkler (tables from memory)', () => {
  const sprinkler: Factor[] = [
    conditional('C', [], () => 0.5), conditional('S', ['C'], ({ C }) => (C ? 0.1 : 0.5)), conditional('R', ['C'], ({ C }) => (C ? 0.8 : 0.2)),
    conditional('W', ['S', 'R'], ({ S, R }) => (S ? (R ? 0.99 : 0.9) : R ? 0.9 : 0)),
  ]
  it('gives the values known for it', () => {
    expect(posterior(sprinkler, 'W')).toBeCloseTo(0.6471, 12)
    expect(posterior(sprinkler, 'S', { W: true })).toBeCloseTo(2781 / 6471, 12)
    expect(posterior(sprinkler, 'R', { W: true })).toBeCloseTo(4581 / 6471, 12)
    expect(posterior(sprinkler, 'S', { W: true, R: true })).toBeCloseTo(891 / 4581, 12)
  })
})

describe('noisy-or (Russell and Norvig\'s fever, from memory)', () => {
  const reached = { cold: 1 - 0.6, flu: 1 - 0.2, malaria: 1 - 0.1 }
  it('is what signs of the whole engine use', () => {
    expect(noisyOr(0, [reached.flu, reached.malaria])).toBeCloseTo(0.98, 12)
    expect(noisyOr(0, [reached.cold, reached.malaria])).toBeCloseTo(0.94, 12)
    expect(noisyOr(0, [reached.cold, reached.flu])).toBeCloseTo(0.88, 12)
    expect(noisyOr(0, [reached.cold, reached.flu, reached.malaria])).toBeCloseTo(0.988, 12)
  })
})
