import { evenTrace, sampleRate, type EvenTrace } from './resample.ts'
import { rpmAt, type Rhythm } from './rhythm.ts'
import { steadyCranking } from './steady.ts'
import { betterHalf, isNear, readBest, secondsOf } from './stretch.ts'

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
  /** compression over the mean of the better half; about the ratio of compression pressures */
  readonly relative: number
  /** standard deviation of `relative`: scatter from cycle to cycle, what is left unexplained, and what a current says of pressure at all */
  readonly sd: number
}

/** Why a trace cannot be used. */
export type TraceFlaw = 'one-cylinder' | 'too-short' | 'too-slow' | 'engine-firing' | 'cut-off' | 'no-humps'

export type CurrentAnalysis =
  | { readonly flaw: null; readonly rpm: number; readonly cycles: number; /** in firing order */ readonly humps: readonly Hump[] }
  | { readonly flaw: TraceFlaw; readonly says: string; readonly do: string }

/** Samples needed for each compression stroke. */
const LEAST_SAMPLES_PER_HUMP = 6
/** Slowest sampling that can show humps at all, Hz; from memory. */
const LEAST_RATE_HZ = 40
/** Points kept of the whole trace. */
const MOST_POINTS = 8192
/** Current follows compression only so well (flywheel, battery): standard deviation of the ratio, from memory. */
const HEIGHT_SD = 0.05
/** What no way of explaining the trace explains (uneven firing, a starter that slips) may be any cylinder's: part of the swing left over. */
const MISFIT_SD = 0.7
/** Beyond this many cylinders the humps lie over each other. */
const MOST_CYLINDERS = 10
/** A trace of which more than this part stands at its greatest or least value is cut off there. */
const MOST_AT_EDGE = 0.2
/** Within this much of a hump, cylinder one's time names it. */
const NAMES_WITHIN = 0.4

const FLAWS: Readonly<Record<TraceFlaw, { says: string; do: string }>> = {
  'one-cylinder': { says: 'One cylinder has no other hump to compare with.', do: 'Use the gauge.' },
  'too-short': { says: 'The trace holds fewer than two engine cycles of steady cranking.', do: 'Record at least five seconds of cranking with ignition and fuel off.' },
  'too-slow': { says: 'The trace was sampled too slowly to show single compression strokes.', do: 'Record with at least 200 samples a second.' },
  'engine-firing': { says: 'The engine fired or ran up during the trace, so the humps do not show compression.', do: 'Stop ignition and fuel and record again.' },
  'cut-off': { says: 'The trace is cut off at its top: the humps were greater than the range.', do: 'Record again with a greater range.' },
  'no-humps': { says: 'No regular compression humps stand out of the trace.', do: 'Make sure that the engine did not fire, check the clamp (one cable, closed jaws, plugs in) and record again. An engine that does not fire evenly cannot be read this way.' },
}

const flawed = (flaw: TraceFlaw): CurrentAnalysis => ({ flaw, ...FLAWS[flaw] })

/**
 * Relative compression from the starter's current: each compression stroke loads the starter, and the current follows through the flywheel.
 * The beat is found first (speed may drift), then the engine cycles are laid over each other and explained by what each cylinder compresses.
 * Offset, drift, ripple and noise do not touch that.
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
  if (cutOff(found.trace)) return flawed('cut-off')
  const read = readBest(found.trace, cylinders, knownRpm, cylinderOneAt)
  if (typeof read === 'string') return flawed(read)
  const { steady, rhythm, found: { heights, scatters, shift, cycles, misfit } } = read
  if (rate / rhythm.humpsPerSecond < LEAST_SAMPLES_PER_HUMP) return flawed('too-slow')
  const one = cylinderOneAt === undefined ? null : humpOf(cylinderOneAt, steady, rhythm, shift, cylinders)
  const named = one !== null && firingOrder !== null
  const offset = one === null ? 0 : ((one % cylinders) + cylinders) % cylinders
  const good = betterHalf(heights)
  return {
    flaw: null,
    rpm: rpmAt(rhythm.humpsPerSecond + (rhythm.drift * secondsOf(steady)) / 2, cylinders),
    cycles,
    humps: heights.map((_, place) => {
      const hump = (place + offset) % cylinders
      const sd = Math.hypot(HEIGHT_SD, scatters[hump]! / good, MISFIT_SD * Math.sqrt(misfit))
      return { cylinder: named ? firingOrder[place]! : null, relative: Math.max(0, heights[hump]! / good), sd }
    }),
  }
}

/** Whether the top of the trace (of a turned clamp the bottom) is missing: a great part of it stands at that value, and little at the other end. */
function cutOff({ values }: EvenTrace): boolean {
  const [most, least] = [Math.max(...values), Math.min(...values)].map((edge) => values.filter((value) => value === edge).length > MOST_AT_EDGE * values.length)
  return most !== least
}

/** The hump that stands where cylinder one was said to compress; null when it is halfway between two, or too far off to count there. */
function humpOf(time: number, steady: EvenTrace, rhythm: Rhythm, shift: number, cylinders: number): number | null {
  const { humpsPerSecond, drift, phase } = rhythm
  const t = time - steady.start
  const at = (humpsPerSecond + (drift / 2) * t) * t + phase - shift
  const hump = Math.round(at)
  if (Math.abs(at - hump) > NAMES_WITHIN || !isNear(time, steady, rhythm, cylinders)) return null
  return hump
}
