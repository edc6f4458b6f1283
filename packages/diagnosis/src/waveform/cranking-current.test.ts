import { describe, expect, it } from 'vitest'
import { analyseCurrent, type CurrentAnalysis, type CurrentTrace } from './cranking-current.ts'

/** A starter current of known truth: one raised-cosine hump for each compression stroke, in firing order. */
interface Making {
  readonly heights: readonly number[]
  readonly rpm?: number
  readonly hz?: number
  readonly seconds?: number
  /** half width of a hump, in humps */
  readonly halfWidth?: number
  readonly offset?: number
  readonly slope?: number
  readonly ripple?: number
  readonly noise?: number
  /** change of speed over the trace, relative */
  readonly speedChange?: number
  readonly inrush?: boolean
  readonly seed?: number
}

const CYLINDER_ONE_AT = 0.137

function make({ heights, rpm = 200, hz = 1000, seconds = 4, halfWidth = 0.5, offset = 0, slope = 0, ripple = 0, noise = 2, speedChange = 0, inrush = false, seed = 7 }: Making): CurrentTrace {
  const random = randomNormal(seed)
  const times: number[] = []
  const amps: number[] = []
  for (let i = 0; i < hz * seconds; i++) {
    const t = i / hz
    const hump = (rpm / 60) * (heights.length / 2) * (1 + (speedChange * t) / seconds / 2) * (t - CYLINDER_ONE_AT)
    let current = 120 + offset + slope * t + (inrush ? 500 * Math.exp(-t / 0.06) : 0) + ripple * Math.sin(2 * Math.PI * 137 * t) + noise * random()
    for (let k = Math.floor(hump) - 1; k <= Math.floor(hump) + 2; k++) {
      const away = (hump - k) / halfWidth
      if (Math.abs(away) < 1) current += 30 * heights[((k % heights.length) + heights.length) % heights.length]! * (1 + Math.cos(Math.PI * away))
    }
    times.push(t)
    amps.push(current)
  }
  return { seconds: times, amps, cylinderOneAt: CYLINDER_ONE_AT }
}

/** Normal numbers from a linear congruential generator (Numerical Recipes constants) and the Box-Muller formula. */
function randomNormal(seed: number): () => number {
  let state = seed >>> 0
  const next = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return (state + 0.5) / 4294967296
  }
  return () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next())
}

const FOUR = [1, 3, 4, 2]
const EIGHT = [1, 8, 4, 3, 6, 5, 7, 2]

function relatives(analysis: CurrentAnalysis): Map<number | null, number> {
  if (analysis.flaw !== null) throw new Error(analysis.flaw)
  return new Map(analysis.humps.map(({ cylinder, relative }) => [cylinder, relative]))
}

/** Every cylinder's hump within so much of its true height over the mean of the better half. */
function expectHeights(made: Making, firingOrder: readonly number[], within = 0.06): void {
  const found = relatives(analyseCurrent(make(made), firingOrder.length, firingOrder))
  const best = made.heights.toSorted((a, b) => b - a).slice(0, Math.ceil(made.heights.length / 2))
  const good = best.reduce((sum, height) => sum + height, 0) / best.length
  firingOrder.forEach((cylinder, place) => {
    expect(Math.abs(found.get(cylinder)! - made.heights[place]! / good), `cylinder ${cylinder}`).toBeLessThan(within)
  })
}

describe('relative compression from a cranking current', () => {
  it('finds an even engine even, and its speed', () => {
    expectHeights({ heights: [1, 1, 1, 1] }, FOUR, 0.03)
    const found = analyseCurrent(make({ heights: [1, 1, 1, 1], rpm: 230 }), 4, FOUR)
    expect(found.flaw === null && found.rpm).toBeCloseTo(230, 0)
  })
  it('finds the weak cylinder by firing order from the time of cylinder one', () => expectHeights({ heights: [1, 0.7, 1, 1] }, FOUR, 0.03))
  it('a dead cylinder has no hump', () => expectHeights({ heights: [1, 0, 1, 1] }, FOUR))
  it('a weak pair does not become the measure', () => {
    expectHeights({ heights: [1, 1, 0.1, 0.1] }, FOUR)
    expectHeights({ heights: [1, 0.4, 1, 0.4] }, FOUR)
  })
  it('overlapping humps of an eight are taken apart', () => expectHeights({ heights: [1, 1, 0.6, 1, 1, 1, 0.9, 1], halfWidth: 0.85 }, EIGHT))
  it('an eight with uneven cylinders is not taken for one turning at half the speed', () => {
    const found = analyseCurrent(make({ heights: [1, 1, 1, 1, 0.3, 0.8, 1, 1], halfWidth: 0.95, rpm: 228, hz: 400, seconds: 2.4 }), 8, EIGHT)
    expect(found.flaw === null && found.rpm).toBeGreaterThan(215)
  })
  it('works on twins, sixes and slow starters', () => {
    expectHeights({ heights: [1, 0.6], halfWidth: 0.4 }, [1, 2])
    expectHeights({ heights: [1, 1, 0.6, 1, 1, 1], halfWidth: 0.8, rpm: 150, seconds: 6 }, [1, 5, 3, 6, 2, 4])
    expectHeights({ heights: [1, 0.7, 1, 1], rpm: 90 }, FOUR)
  })
  it('a starter as slow as 60 rpm turns at its own speed, not at twice that, with a dead cylinder as well', () => {
    for (const [order, heights] of [[FOUR, [1, 1, 1, 1]], [[1, 5, 3, 6, 2, 4], [1, 1, 0.9, 1, 1, 1]], [EIGHT, Array<number>(8).fill(1)], [FOUR, [1, 0.4, 1, 1]]] as const) {
      for (const rpm of [62, 75, 95]) {
        const analysis = analyseCurrent(make({ heights, rpm, seconds: 6, halfWidth: 0.65, hz: 400, noise: 3, slope: -2, inrush: true }), order.length, order)
        if (analysis.flaw !== null) throw new Error(`${order.length} cylinders at ${rpm} rpm: ${analysis.flaw}`)
        expect(Math.abs(analysis.rpm / rpm - 1)).toBeLessThan(0.03)
      }
    }
  })

  it('an engine that cranks steadily for five seconds has not fired, however uneven its cylinders are', () => {
    // from several hundred made traces, those of which one in three was taken for fired
    for (const [rpm, halfWidth, weak, order] of [[130, 0.5, 0.3, FOUR], [130, 0.6, 0, FOUR], [130, 0.7, 0, FOUR], [130, 0.8, 0, FOUR], [140, 0.7, 0, FOUR], [130, 0.5, 0, [1, 5, 3, 6, 2, 4]], [130, 0.6, 1, [1, 5, 3, 6, 2, 4]], [140, 0.8, 0.3, EIGHT], [130, 0.8, 0.6, EIGHT]] as const) {
      for (const inrush of [false, true]) {
        for (const seed of [1, 2, 3]) {
          const heights = order.map((_, i) => (i === 1 ? weak : 1))
          const analysis = analyseCurrent(make({ heights, rpm, seconds: 5, hz: 400, halfWidth, noise: 2, slope: -4, inrush, seed }), order.length, order)
          expect(`${order.length} at ${rpm} rpm, ${weak}: ${analysis.flaw}`).not.toContain('engine-firing')
        }
      }
    }
  })

  it('offset, drift, ripple, noise and inrush do not matter', () => {
    expectHeights({ heights: [1, 0.7, 1, 1], offset: -115 }, FOUR)
    expectHeights({ heights: [1, 0.7, 1, 1], slope: -60 }, FOUR)
    expectHeights({ heights: [1, 0.7, 1, 1], ripple: 30 }, FOUR)
    expectHeights({ heights: [1, 0.7, 1, 1], noise: 15 }, FOUR, 0.1)
    expectHeights({ heights: [1, 0.7, 1, 0.9], offset: -300, slope: 15, ripple: 30, noise: 15, inrush: true }, FOUR, 0.1)
  })
  it('follows a starter that slows down or picks up', () => {
    expectHeights({ heights: [1, 0.7, 1, 1], speedChange: -0.15 }, FOUR)
    expectHeights({ heights: [1, 0.7, 1, 1], speedChange: 0.15, hz: 250 }, FOUR)
  })
  it('a clamp the wrong way round is turned', () => {
    const trace = make({ heights: [1, 0.7, 1, 1] })
    const found = relatives(analyseCurrent({ ...trace, amps: trace.amps.map((current) => -current) }, 4, FOUR))
    expect(found.get(3)).toBeCloseTo(0.7, 1)
    expect(found.get(1)).toBeCloseTo(1, 1)
  })
  it('the key turned late and let go early', () => {
    const trace = make({ heights: [1, 0.7, 1, 1], seconds: 5 })
    const found = relatives(analyseCurrent({ ...trace, amps: trace.amps.map((current, i) => (i < 700 || i > 4200 ? 0.5 : current)) }, 4, FOUR))
    expect(found.get(3)).toBeCloseTo(0.7, 1)
  })
  it('a starter whose speed swings about is read where it turns steadily enough', () => {
    const trace = make({ heights: [1, 0.5, 1, 1], seconds: 8 })
    const warped = { ...trace, seconds: trace.seconds.map((t) => t + 0.5 * Math.sin((2 * Math.PI * t) / 8)) }
    const found = analyseCurrent({ ...warped, cylinderOneAt: CYLINDER_ONE_AT + 0.5 * Math.sin((2 * Math.PI * CYLINDER_ONE_AT) / 8) }, 4, FOUR)
    if (found.flaw !== null) throw new Error(found.flaw)
    expect(Math.abs(Math.min(...found.humps.map(({ relative }) => relative)) - 0.5)).toBeLessThan(0.1)
  })
  it('a long wait after the key was let go is no part of the cranking', () => {
    const trace = make({ heights: [1, 0.5, 1, 1], seconds: 6, inrush: true })
    const found = relatives(analyseCurrent({ ...trace, amps: trace.amps.map((current, i) => (i > 2600 ? 0.2 * Math.sin(i) : current)) }, 4, FOUR))
    expect(found.get(3)).toBeCloseTo(0.5, 1)
  })
  it("cylinder one's time names nobody where it lies far outside the trace", () => {
    const found = analyseCurrent({ ...make({ heights: [1, 0.5, 1, 1] }), cylinderOneAt: 13 }, 4, FOUR)
    expect(found.flaw === null && found.humps.map(({ cylinder }) => cylinder)).toEqual([null, null, null, null])
  })
  it("without cylinder one's time the humps have no names", () => {
    const { seconds, amps } = make({ heights: [1, 0.7, 1, 1] })
    const found = analyseCurrent({ seconds, amps }, 4, FOUR)
    expect(found.flaw).toBeNull()
    if (found.flaw !== null) return
    expect(found.humps.map(({ cylinder }) => cylinder)).toEqual([null, null, null, null])
    expect(Math.min(...found.humps.map(({ relative }) => relative))).toBeCloseTo(0.7, 1)
  })
  it('even a clean trace is no gauge: heights follow compression only to about 5 percent (from memory)', () => {
    const found = analyseCurrent(make({ heights: [1, 0.7, 1, 1], noise: 0 }), 4, FOUR)
    expect(found.flaw === null && Math.min(...found.humps.map(({ sd }) => sd))).toBeGreaterThanOrEqual(0.05)
  })
  it('states an uncertainty that holds the truth nine times in ten, at any noise', () => {
    let inside = 0
    let all = 0
    for (let seed = 1; seed <= 25; seed++) {
      const made = { heights: [1, 0.75, 1, 0.9], noise: 4 + seed, seed }
      const analysis = analyseCurrent(make(made), 4, FOUR)
      if (analysis.flaw !== null) continue
      analysis.humps.forEach(({ relative, sd }, place) => {
        all++
        if (Math.abs(relative - made.heights[place]!) < 1.645 * sd) inside++
      })
    }
    expect(all).toBeGreaterThan(80)
    expect(inside / all).toBeGreaterThan(0.9)
  })
})

describe('traces that cannot be used', () => {
  const flaw = (trace: CurrentTrace, cylinders = 4) => analyseCurrent(trace, cylinders, null).flaw
  it('too short', () => {
    expect(flaw(make({ heights: [1, 0.7, 1, 1], seconds: 0.8 }))).toBe('too-short')
    expect(flaw({ seconds: [0], amps: [1] })).toBe('too-short')
    expect(flaw({ seconds: [], amps: [] })).toBe('too-short')
  })
  it('sampled too slowly', () => {
    expect(flaw(make({ heights: [1, 0.7, 1, 1], hz: 25 }))).toBe('too-slow')
    expect(flaw(make({ heights: [1, 1, 0.7, 1, 1, 1, 1, 1], hz: 60 }), 8)).toBe('too-slow')
  })
  it('the engine fired', () => {
    const trace = make({ heights: [1, 1, 1, 1] })
    expect(flaw({ ...trace, amps: trace.amps.map((current, i) => (i > 2000 ? 20 + (current - 120) * 0.2 : current)) })).toBe('engine-firing')
  })
  it('no rhythm: noise, a flat line, a ramp', () => {
    expect(flaw(make({ heights: [0, 0, 0, 0], noise: 15 }))).toBe('no-humps')
    const trace = make({ heights: [1, 1, 1, 1] })
    for (const amps of [trace.amps.map(() => 0), trace.amps.map((_, i) => i / 10)]) expect(flaw({ ...trace, amps })).not.toBeNull()
  })
  it('cut off at the top of the range', () => {
    const trace = make({ heights: [1, 0.7, 1, 1] })
    expect(flaw({ ...trace, amps: trace.amps.map((current) => Math.min(current, 140)) })).toBe('cut-off')
  })
  it('a twelve, whose humps lie over each other', () => expect(flaw(make({ heights: Array(12).fill(1) }), 12)).toBe('no-humps'))
  it('one cylinder', () => expect(flaw(make({ heights: [1] }), 1)).toBe('one-cylinder'))
})
