import { humpHeights } from './heights.ts'
import { evenTrace, part, sampleRate, thin, type EvenTrace } from './resample.ts'
import { findRhythm, rpmAt, type Rhythm } from './rhythm.ts'
import { steadyCranking } from './steady.ts'

/** A trace of starter current while cranking with ignition and fuel off. */
export interface CurrentTrace {
  readonly seconds: readonly number[]
  readonly amps: readonly number[]
  /** time of cylinder one's compression stroke, if known */
  readonly cylinderOneAt?: number
}

/** The compression hump of one place in the firing order, against the better half of all. */
export interface Hump {
  /** null where the trace does not say which cylinder it is */
  readonly cylinder: number | null
  /** height over the mean height of the better half; about the ratio of compression pressures */
  readonly relative: number
  /** standard deviation of `relative`: scatter from cycle to cycle, and what heights say of pressure at all */
  readonly sd: number
}

/** Why a trace cannot be used. */
export type TraceFlaw = 'one-cylinder' | 'too-short' | 'too-slow' | 'engine-firing' | 'no-humps'

export type CurrentAnalysis =
  | { readonly flaw: null; readonly rpm: number; readonly cycles: number; /** in firing order */ readonly humps: readonly Hump[] }
  | { readonly flaw: TraceFlaw; readonly says: string; readonly do: string }

/** Whole engine cycles (two turns) needed. */
const LEAST_CYCLES = 2
/** Of so many cycles the first is left out. */
const RUN_UP_CYCLES = 4
/** Samples needed for each compression stroke. */
const LEAST_SAMPLES_PER_HUMP = 8
/** Slowest sampling that can show humps at all, Hz; from memory. */
const LEAST_RATE_HZ = 40
/** Part of the variance that a repeated engine cycle must explain. */
const LEAST_EXPLAINED = 0.35
/** Points kept of the whole trace, and of the stretch analysed: at 10 s of cranking 25 for each hump of an eight. */
const MOST_POINTS = 8192
const STRETCH_POINTS = 1024
const POINTS_PER_HUMP = 20
/** Hump height follows compression only so well (flywheel, battery): standard deviation of the ratio, from memory. */
const HEIGHT_SD = 0.05
/** What no way of explaining the trace explains (uneven firing, a starter that slips) may be any cylinder's: part of the swing left over. */
const MISFIT_SD = 0.7
/** A typical height less certain than this part is no evidence. */
const MOST_SCATTER = 0.35
/** Beyond this many cylinders the humps lie over each other. */
const MOST_CYLINDERS = 10
/** Within this much of a hump, cylinder one's time names it. */
const NAMES_WITHIN = 0.4

const FLAWS: Readonly<Record<TraceFlaw, { says: string; do: string }>> = {
  'one-cylinder': { says: 'One cylinder has no other hump to compare with.', do: 'Use the gauge.' },
  'too-short': { says: 'The trace holds fewer than two engine cycles of steady cranking.', do: 'Record at least five seconds of cranking with ignition and fuel off.' },
  'too-slow': { says: 'The trace was sampled too slowly to show single compression strokes.', do: 'Record with at least 200 samples a second.' },
  'engine-firing': { says: 'The engine fired or ran up during the trace, so the humps do not show compression.', do: 'Stop ignition and fuel and record again.' },
  'no-humps': { says: 'No regular compression humps stand out of the trace.', do: 'Make sure that the engine did not fire, check the clamp (one cable, closed jaws, plugs in) and record again.' },
}

const flawed = (flaw: TraceFlaw): CurrentAnalysis => ({ flaw, ...FLAWS[flaw] })

/**
 * Relative compression from the starter's current: each compression stroke loads the starter, so its hump is as high as the
 * cylinder compresses. The beat is found first (speed may drift), then the engine cycles are laid over each other and the heights
 * of overlapping humps of one common shape are fitted to them. Offset, drift, ripple and noise do not touch the heights.
 *
 * @param cylinders 2 to 10 (more: no humps to tell apart) @param firingOrder names the humps when cylinder one's time is known
 * @param knownRpm cranking speed if measured
 * @returns humps in firing order (from cylinder one where it is known), or the flaw of the trace with what to do
 */
export function analyseCurrent(trace: CurrentTrace, cylinders: number, firingOrder: readonly number[] | null, knownRpm?: number): CurrentAnalysis {
  if (cylinders < 2) return flawed('one-cylinder')
  if (cylinders > MOST_CYLINDERS) return flawed('no-humps')
  const { seconds, amps, cylinderOneAt } = trace
  const rate = sampleRate(seconds)
  if (seconds.length < 16 || seconds.at(-1)! - seconds[0]! < 0.5) return flawed('too-short')
  if (rate < LEAST_RATE_HZ) return flawed('too-slow')
  const found = steadyCranking(evenTrace(seconds, amps, MOST_POINTS), cylinders, knownRpm)
  if (found.flaw !== null) return flawed(found.flaw)
  const rough = findRhythm(thin(found.trace, STRETCH_POINTS), cylinders, knownRpm)
  if (!rough) return flawed('too-short')
  const steadier = withoutRunUp(found.trace, cylinders / rough.humpsPerSecond)
  // averaged to a few points a hump: ripple and noise go, humps stay
  const steady = thin(steadier, Math.ceil(POINTS_PER_HUMP * rough.humpsPerSecond * steadier.values.length * steadier.step))
  const rhythm = findRhythm(steady, cylinders, rpmAt(rough.humpsPerSecond, cylinders))
  if (!rhythm) return flawed('too-short')
  if (rhythm.explained < LEAST_EXPLAINED) return flawed('no-humps')
  if (rate / rhythm.humpsPerSecond < LEAST_SAMPLES_PER_HUMP) return flawed('too-slow')
  const { heights, scatters, firstHump, shift, cycles, misfit } = humpHeights(steady, rhythm, cylinders)
  if (cycles < LEAST_CYCLES) return flawed('too-short')
  const one = cylinderOneAt === undefined ? null : humpOf(cylinderOneAt, steady, rhythm, firstHump, shift)
  const named = one !== null && firingOrder !== null
  const offset = one === null ? 0 : ((one % cylinders) + cylinders) % cylinders
  const good = betterHalf(heights)
  // humps that overlap so far that their heights cannot be told apart say nothing
  if (!(good > 0) || scatters.toSorted((a, b) => a - b)[cylinders >> 1]! > MOST_SCATTER * good) return flawed('no-humps')
  return {
    flaw: null,
    rpm: rpmAt(rhythm.humpsPerSecond + (rhythm.drift * steady.step * steady.values.length) / 2, cylinders),
    cycles,
    humps: heights.map((_, place) => {
      const hump = (place + offset) % cylinders
      return { cylinder: named ? firingOrder[place]! : null, relative: Math.max(0, heights[hump]! / good), sd: Math.hypot(HEIGHT_SD, scatters[hump]! / good, MISFIT_SD * Math.sqrt(misfit)) }
    }),
  }
}

/** The hump that stands where cylinder one was said to compress; null when it is halfway between two. */
function humpOf(time: number, { start }: EvenTrace, { humpsPerSecond, drift, phase }: Rhythm, earliest: number, shift: number): number | null {
  const t = time - start
  const at = (humpsPerSecond + (drift / 2) * t) * t + phase - shift
  const hump = Math.round(at)
  if (Math.abs(at - hump) > NAMES_WITHIN || !Number.isFinite(at) || Math.abs(hump - earliest) > 1000) return null
  return hump
}

/** The first engine cycle left out where enough remain: the starter still gathers speed. */
function withoutRunUp(trace: EvenTrace, cycleSeconds: number): EvenTrace {
  const cycle = Math.round(cycleSeconds / trace.step), count = trace.values.length
  return count >= RUN_UP_CYCLES * cycle ? part(trace, cycle, count) : trace
}

/** Mean of the better half: a weak pair among four must not become the measure. */
function betterHalf(heights: readonly number[]): number {
  const best = heights.toSorted((a, b) => b - a).slice(0, Math.ceil(heights.length / 2))
  return best.reduce((sum, height) => sum + height, 0) / best.length
}
