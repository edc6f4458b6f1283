import { humpHeights, WELL_EXPLAINED, type Heights } from './heights.ts'
import { type EvenTrace, part, thin } from './resample.ts'
import { findRhythm, rpmAt, type Rhythm } from './rhythm.ts'

/** Whole engine cycles (two turns) needed. */
const LEAST_CYCLES = 2
/** Of so many cycles the first is left out. */
const RUN_UP_CYCLES = 4
/** Part of the variance that a repeated engine cycle must explain. */
const LEAST_EXPLAINED = 0.35
/** A typical height less certain than this part is no evidence. */
const MOST_SCATTER = 0.35
/** What is less explained than this does not fire evenly, or does not crank. */
const MOST_MISFIT = 0.3
/** Half the speed is believed where it leaves less than this part of the misfit. */
const HALF_FITS = 0.6
/** Where at the full speed every other hump is missing, it is believed if it leaves no more than so many times the misfit. */
const ALTERNATE_FITS = 1.6
const MISSING = 0.15
/** The beat is followed so many engine cycles beyond the stretch that was read. */
const FOLLOWED_CYCLES = 3
/** Points of a stretch in which the beat is looked for first, and for each hump when it is known: ripple and noise go, humps stay. */
const STRETCH_POINTS = 1024
const POINTS_PER_HUMP = 20

/** A stretch of cranking, its beat, and how much each cylinder compresses. */
export interface Read {
  readonly steady: EvenTrace
  readonly rhythm: Rhythm
  readonly found: Heights
}

/** The whole trace, or where its speed changes too much for that, the half or quarter that is explained best: with cylinder one's time in it or near it if there is any such. */
export function readBest(trace: EvenTrace, cylinders: number, knownRpm: number | undefined, cylinderOneAt: number | undefined): Read | 'too-short' | 'no-humps' {
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

/** Length of a trace. */
export const secondsOf = ({ values, step }: EvenTrace): number => values.length * step

/** Whether a time lies in a stretch or so near that the beat can be followed to it. */
export function isNear(time: number, { start, values, step }: EvenTrace, { humpsPerSecond }: Rhythm, cylinders: number): boolean {
  const beyond = (FOLLOWED_CYCLES * cylinders) / humpsPerSecond
  return time >= start - beyond && time <= start + values.length * step + beyond
}

/** The first engine cycle left out where enough remain: the starter still gathers speed. */
function withoutRunUp(trace: EvenTrace, cycleSeconds: number): EvenTrace {
  const cycle = Math.round(cycleSeconds / trace.step), count = trace.values.length
  return count >= RUN_UP_CYCLES * cycle ? part(trace, cycle, count) : trace
}

/** Mean of the better half: a weak pair among four must not become the measure. */
export function betterHalf(heights: readonly number[]): number {
  const best = heights.toSorted((a, b) => b - a).slice(0, Math.ceil(heights.length / 2))
  return best.reduce((sum, height) => sum + height, 0) / best.length
}
