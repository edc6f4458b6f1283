import { type EvenTrace, withoutTrend } from './resample.ts'

/** Cranking speeds looked for, rpm. */
const SLOWEST_RPM = 50
const FASTEST_RPM = 420
/** Part of the best-folding variance that a rhythm must explain to be in the running. */
const FOLDS = 0.85
const BINS_PER_HUMP = 8
/** Starters turn at 150 to 250 rpm (from memory); the spread is of the logarithm, the weight was set by hand. */
const USUAL = { rpm: 190, spread: 0.3, weight: 1.5, weightOfOverlapping: 3, overlapFrom: 8 } as const

/** The beat of the compression strokes: humps per second at the start, how fast that changes, and where a hump stands. */
export interface Rhythm {
  readonly humpsPerSecond: number
  /** change of the beat in humps per second squared */
  readonly drift: number
  /** phase of the first sample, in humps; whole numbers are crests */
  readonly phase: number
  /** part of the variance that one engine cycle repeated explains, 0 to 1 */
  readonly explained: number
}

/** Compression strokes a second of a four-stroke: half the cylinders each turn. */
export function humpsAt(rpm: number, cylinders: number): number {
  return (rpm / 60) * (cylinders / 2)
}

/** Cranking speed behind a beat. */
export function rpmAt(humpsPerSecond: number, cylinders: number): number {
  return (humpsPerSecond * 120) / cylinders
}

/**
 * Finds the beat: among rates whose engine cycle, repeated, explains nearly as much as any does, the one with the most power at
 * the beat itself, unusual speeds counting for less; then refined together with a steady change of speed.
 * @param knownRpm cranking speed if somebody measured it: only a quarter either side is searched
 * @param leastCycles engine cycles that must fit into the trace
 */
export function findRhythm(trace: EvenTrace, cylinders: number, knownRpm: number | undefined, leastCycles = 1.5): Rhythm | null {
  const flat = withoutTrend(trace.values)
  const seconds = trace.values.length * trace.step
  const slowest = humpsAt(knownRpm ? knownRpm * 0.75 : SLOWEST_RPM, cylinders)
  const fastest = Math.min(humpsAt(knownRpm ? knownRpm * 1.25 : FASTEST_RPM, cylinders), 0.25 / trace.step)
  const from = Math.max(slowest, (leastCycles * cylinders) / seconds)
  if (!(fastest > from)) return null
  const rates: number[] = []
  for (let rate = from; rate <= fastest; rate += 0.3 / seconds) rates.push(rate)
  const power = rates.map((rate) => powerAt(flat, trace.step, rate, 0).power)
  const candidates = rates.map((rate, index) => ({ rate, power: power[index]! })).filter(({ power: own }, index) => own >= (power[index - 1] ?? 0) && own >= (power[index + 1] ?? 0))
    .map((each) => ({ ...each, score: Math.log(each.power + Number.MIN_VALUE) - (knownRpm === undefined ? unusual(rpmAt(each.rate, cylinders), cylinders) : 0) }))
    .sort((a, b) => b.score - a.score).slice(0, 12).map((each) => ({ ...each, explained: explainedBy(flat, trace.step, each.rate, 0, cylinders) }))
  const most = Math.max(...candidates.map(({ explained }) => explained), 0)
  const best = candidates.find(({ explained }) => explained >= FOLDS * most)
  return best ? refine(flat, trace.step, best.rate, cylinders) : null
}

/** How unusual a cranking speed is, in units of log-power: overlapping humps of uneven cylinders beat at half their rate as well. */
function unusual(rpm: number, cylinders: number): number {
  return (cylinders < USUAL.overlapFrom ? USUAL.weight : USUAL.weightOfOverlapping) * Math.log1p(0.5 * (Math.log(rpm / USUAL.rpm) / USUAL.spread) ** 2)
}

function refine(flat: Float64Array, step: number, rate: number, cylinders: number): Rhythm {
  const seconds = flat.length * step
  let best = { rate, drift: 0, ...powerAt(flat, step, rate, 0) }
  let rateStep = 0.25 / seconds
  let driftStep = 0.5 / seconds ** 2
  for (let round = 0; round < 6; round++) {
    const centre = best
    for (let r = -2; r <= 2; r++) {
      for (let d = -3; d <= 3; d++) {
        // a change of speed about the middle leaves the mean rate alone
        const drift = centre.drift + d * driftStep
        const start = centre.rate + r * rateStep - (d * driftStep * seconds) / 2
        const found = powerAt(flat, step, start, drift)
        if (found.power > best.power) best = { rate: start, drift, ...found }
      }
    }
    rateStep /= 2
    driftStep /= 2
  }
  return {
    humpsPerSecond: best.rate, drift: best.drift, phase: -best.angle / (2 * Math.PI),
    explained: explainedBy(flat, step, best.rate, best.drift, cylinders),
  }
}

/** Power and angle of the beat in a trace. */
function powerAt(flat: Float64Array, step: number, rate: number, drift: number): { power: number; angle: number } {
  let cosine = 0
  let sine = 0
  for (let i = 0; i < flat.length; i++) {
    const t = i * step
    const angle = 2 * Math.PI * (rate + (drift / 2) * t) * t
    cosine += flat[i]! * Math.cos(angle)
    sine += flat[i]! * Math.sin(angle)
  }
  return { power: (cosine * cosine + sine * sine) / flat.length, angle: Math.atan2(sine, cosine) }
}

/** Part of the variance explained by repeating one engine cycle, with what chance alone would explain taken off. */
function explainedBy(flat: Float64Array, step: number, rate: number, drift: number, cylinders: number): number {
  const bins = BINS_PER_HUMP * cylinders
  const sums = new Float64Array(bins)
  const counts = new Uint32Array(bins)
  let total = 0
  for (let i = 0; i < flat.length; i++) {
    const t = i * step
    const humps = (rate + (drift / 2) * t) * t
    const cycle = humps / cylinders
    const bin = Math.min(bins - 1, Math.floor((cycle - Math.floor(cycle)) * bins))
    sums[bin]! += flat[i]!
    counts[bin]!++
    total += flat[i]! ** 2
  }
  let between = 0
  let used = 0
  for (let bin = 0; bin < bins; bin++) {
    if (counts[bin] === 0) continue
    between += sums[bin]! ** 2 / counts[bin]!
    used++
  }
  const spare = flat.length - used
  if (total <= 0 || spare <= 0) return 0
  return Math.max(0, 1 - ((total - between) / spare) / (total / flat.length))
}
