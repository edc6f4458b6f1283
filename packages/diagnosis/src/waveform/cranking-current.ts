import { humpHeights, WELL_EXPLAINED, type Heights } from './heights.ts'
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
export type TraceFlaw = 'one-cylinder' | 'too-short' | 'too-slow' | 'engine-firing' | 'cut-off' | 'no-humps'

export type CurrentAnalysis =
  | { readonly flaw: null; readonly rpm: number; readonly cycles: number; /** in firing order */ readonly humps: readonly Hump[] }
  | { readonly flaw: TraceFlaw; readonly says: string; readonly do: string }

/** Whole engine cycles (two turns) needed. */
const LEAST_CYCLES = 2
/** Of so many cycles the first is left out. */
const RUN_UP_CYCLES = 4
/** Samples needed for each compression stroke. */
const LEAST_SAMPLES_PER_HUMP = 6
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
/** What is less explained than this does not fire evenly, or does not crank. */
const MOST_MISFIT = 0.3
/** Half the speed is believed where it leaves less than this part of the misfit. */
const HALF_FITS = 0.6
/** Where at the full speed every other hump is missing, it is believed if it leaves no more than so many times the misfit. */
const ALTERNATE_FITS = 1.6
const MISSING = 0.15
/** A trace of which more than this part stands at its greatest or least value is cut off there. */
const MOST_AT_EDGE = 0.2
/** The beat is followed so many engine cycles beyond the stretch that was read. */
const FOLLOWED_CYCLES = 3
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

/** A stretch of cranking, its beat, and how much each cylinder compresses. */
interface Read {
  readonly steady: EvenTrace
  readonly rhythm: Rhythm
  readonly found: Heights
}

/** The whole trace, or where its speed changes too much for that, the half or quarter that is explained best: with cylinder one's time in it or near it if there is any such. */
function readBest(trace: EvenTrace, cylinders: number, knownRpm: number | undefined, cylinderOneAt: number | undefined): Read | 'too-short' | 'no-humps' {
  const whole = readStretch(trace, cylinders, knownRpm)
  if (whole !== 'no-beat') return whole
  for (const parts of [2, 4]) {
    const length = Math.floor(trace.values.length / parts)
    const reads = Array.from({ length: 2 * parts - 1 }, (_, k) => readStretch(part(trace, Math.floor((k * length) / 2), Math.floor((k * length) / 2) + length), cylinders, knownRpm))
      .filter((read) => typeof read !== 'string').sort((a, b) => a.found.misfit - b.found.misfit)
    const near = reads.find(({ steady, rhythm }) => cylinderOneAt !== undefined && isNear(cylinderOneAt, steady, rhythm, cylinders))
    if (reads.length > 0) return near ?? reads[0]!
  }
  return 'no-humps'
}

function readStretch(trace: EvenTrace, cylinders: number, knownRpm: number | undefined): Read | 'too-short' | 'no-beat' | 'no-humps' {
  const rough = findRhythm(thin(trace, STRETCH_POINTS), cylinders, knownRpm)
  if (!rough) return 'too-short'
  const read = readAt(trace, cylinders, rough.humpsPerSecond)
  if (knownRpm !== undefined) return read
  // a slow starter's humps are steep, and beat at twice their rate as well
  const sure = typeof read !== 'string' && read.found.misfit < WELL_EXPLAINED && !everyOtherMissing(read.found.heights)
  if (sure) return read
  const slower = readAt(trace, cylinders, rough.humpsPerSecond / 2)
  if (typeof slower === 'string') return read
  return typeof read === 'string' || slower.found.misfit < (everyOtherMissing(read.found.heights) ? ALTERNATE_FITS : HALF_FITS) * read.found.misfit ? slower : read
}

/** Whether every other hump is all but missing, as where the beat is taken for twice what it is. */
function everyOtherMissing(heights: readonly number[]): boolean {
  const [even, odd] = [0, 1].map((rest) => heights.filter((_, place) => place % 2 === rest))
  return heights.length % 2 === 0 && (Math.max(...even!) < MISSING * Math.min(...odd!) || Math.max(...odd!) < MISSING * Math.min(...even!))
}

/** The same at a beat of about so many humps a second. */
function readAt(trace: EvenTrace, cylinders: number, humpsPerSecond: number): Read | 'too-short' | 'no-beat' | 'no-humps' {
  const steadier = withoutRunUp(trace, cylinders / humpsPerSecond)
  // averaged to a few points a hump: ripple and noise go, humps stay
  const steady = thin(steadier, Math.ceil(POINTS_PER_HUMP * humpsPerSecond * secondsOf(steadier)))
  const rhythm = findRhythm(steady, cylinders, rpmAt(humpsPerSecond, cylinders))
  if (!rhythm) return 'too-short'
  if (rhythm.explained < LEAST_EXPLAINED) return 'no-beat'
  const found = humpHeights(steady, rhythm, cylinders)
  if (found.cycles < LEAST_CYCLES) return 'too-short'
  const good = betterHalf(found.heights)
  // humps that overlap so far that their heights cannot be told apart say nothing
  const apart = good > 0 && found.scatters.toSorted((a, b) => a - b)[cylinders >> 1]! <= MOST_SCATTER * good
  return apart && found.misfit <= MOST_MISFIT ? { steady, rhythm, found } : 'no-humps'
}

const secondsOf = ({ values, step }: EvenTrace): number => values.length * step

/** Whether a time lies in a stretch or so near that the beat can be followed to it. */
function isNear(time: number, { start, values, step }: EvenTrace, { humpsPerSecond }: Rhythm, cylinders: number): boolean {
  const beyond = (FOLLOWED_CYCLES * cylinders) / humpsPerSecond
  return time >= start - beyond && time <= start + values.length * step + beyond
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
