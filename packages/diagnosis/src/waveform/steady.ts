import { findRhythm, type Rhythm } from './rhythm.ts'
import { type EvenTrace, medianOf, part, swing, thin, withoutTrend } from './resample.ts'

/** Longest stretch analysed, s: speed drifts too far beyond. */
const LONGEST_S = 10
/** A stretch is judged in windows of a few strokes at any starter speed, s: longer where strokes are few. */
const WINDOW_S = 0.4
const WINDOW_S_CYLINDERS = 1.6
/** A window belongs to the cranking while its level is within so many typical swings of the middle of the cranking. */
const LEVEL_SWINGS = 4
/** The first run of so many windows is the cranking. */
const LEAST_WINDOWS = 3
/** A window that swings less than this part of the liveliest ones is not cranking. */
const LEAST_SWING = 0.3
/** The inrush of a starter is over within a second (from memory); it stands out by so many swings, and has a tail. */
const SURGE_S = 1
const SURGE_SWINGS = 3
const SURGE_TAIL_S = 0.1
/** After the key is let go the current stays within this part of its range, for so long at least. */
const DEAD_BAND = 0.02
const DEAD_S = 1
/** The beat quickens by this factor when the engine fires, and the swing that is left when it runs away from the starter. */
const QUICKENS = 1.4
const STILL_SWINGS = 0.08
/** The level falls by so many swings at least. */
const RELIEVED_SWINGS = 0.4

/** The stretch of steady cranking, or what is wrong with the trace. */
export type Steady = { readonly trace: EvenTrace; readonly flaw: null } | { readonly flaw: 'too-short' | 'engine-firing' }

interface Window {
  readonly from: number
  readonly to: number
  readonly level: number
  readonly swing: number
}

/**
 * Finds the stretch in which the starter cranks. Judged by levels against the swing of the humps only, so that an offset of the
 * clamp does not matter: a surge before it is cut off, and so is dead current after the key is let go. A level that falls away
 * while the trace goes on swinging, or a beat that quickens, means that the engine fired.
 */
export function steadyCranking(whole: EvenTrace, cylinders: number, knownRpm: number | undefined): Steady {
  const found = cranking(whole, cylinders, knownRpm), ended = withoutDeadEnd(whole)
  return ended === whole || found.flaw === 'engine-firing' ? found : cranking(ended, cylinders, knownRpm)
}

function cranking(whole: EvenTrace, cylinders: number, knownRpm: number | undefined): Steady {
  const trace = withoutSurge(whole)
  const windows = windowsOf(trace, Math.max(WINDOW_S, WINDOW_S_CYLINDERS / cylinders))
  if (windows.length < 2) return { flaw: 'too-short' }
  const liveliest = medianOf(Float64Array.from(windows.map((window) => window.swing).sort((a, b) => b - a).slice(0, Math.ceil(windows.length / 2))))
  if (!(liveliest > 0)) return { flaw: null, trace }
  const runs = runsOf(windows, liveliest)
  const run = runs.find(({ from, to }) => to - from >= LEAST_WINDOWS) ?? runs.toSorted((one, other) => other.to - other.from - (one.to - one.from))[0]
  if (!run) return { flaw: 'too-short' }
  let first = run.from
  let last = run.to - 1
  const level = windows[first]!.level
  const own = medianOf(Float64Array.from(windows.slice(first, last + 1), (window) => window.swing))
  const after = windows.slice(last + 1)
  const fell = after.some((window) => level - window.level > 1.5 * own && window.swing > STILL_SWINGS * own)
  if (fell && after.length >= 2) return { flaw: 'engine-firing' }
  // a window that holds the turn of the key swings more than the cranking beside it
  while (first < last && windows[first]!.swing > 1.6 * own) first++
  while (last > first && windows[last]!.swing > 1.6 * own) last--
  const begin = windows[first]!.from
  const stretch = part(trace, begin, Math.min(windows[last]!.to, begin + Math.floor(LONGEST_S / trace.step)))
  if (stretch.values.length < 16) return { flaw: 'too-short' }
  return quickens(stretch, cylinders, knownRpm) ? { flaw: 'engine-firing' } : { flaw: null, trace: stretch }
}

/** So many quiet windows between lively ones are strokes of a cylinder that hardly compresses, while the level stays. */
const MOST_QUIET = 3

/** Runs of windows that swing as cranking does, without a jump of level between neighbours; `to` is past the last. */
function runsOf(windows: readonly Window[], liveliest: number): { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = []
  windows.forEach((window, index) => {
    if (window.swing < LEAST_SWING * liveliest) return
    const run = runs.at(-1)
    const since = run === undefined ? [] : windows.slice(run.to - 1, index + 1)
    const jumps = since.some((each, k) => k > 0 && Math.abs(each.level - since[k - 1]!.level) > LEVEL_SWINGS * liveliest)
    if (run !== undefined && index - run.to <= MOST_QUIET && !jumps) run.to = index + 1
    else runs.push({ from: index, to: index + 1 })
  })
  return runs
}

function windowsOf(trace: EvenTrace, seconds: number): Window[] {
  const size = Math.max(8, Math.round(seconds / trace.step))
  const windows: Window[] = []
  for (let from = 0; from + size <= trace.values.length; from += size) {
    const to = from + 2 * size > trace.values.length ? trace.values.length : from + size
    const values = trace.values.subarray(from, to)
    windows.push({ from, to, level: medianOf(values), swing: swing(withoutTrend(values)) })
  }
  return windows
}

/** Cuts off what is recorded after the key was let go: it stays within a small part of the whole range about where it ends. */
function withoutDeadEnd(trace: EvenTrace): EvenTrace {
  const { values } = trace, count = values.length
  const end = medianOf(values.subarray(Math.floor(0.95 * count)))
  const band = DEAD_BAND * (Math.max(...values) - Math.min(...values))
  let last = count
  while (last > 0 && Math.abs(values[last - 1]! - end) <= band) last--
  return count - last > DEAD_S / trace.step ? part(trace, 0, last) : trace
}

/**
 * Cuts off the surge with which a starter begins: what stands out of the later part of the trace within the first second, and a
 * tenth of a second more for its tail.
 */
function withoutSurge(trace: EvenTrace): EvenTrace {
  const count = trace.values.length
  const later = trace.values.subarray(Math.floor(0.4 * count))
  const usual = swing(withoutTrend(later))
  const high = medianOf(later) + SURGE_SWINGS * usual
  const first = Math.min(Math.floor(0.35 * count), Math.floor(SURGE_S / trace.step))
  let cut = 0
  for (let i = 0; i < first; i++) if (trace.values[i]! > high) cut = i + 1
  return cut === 0 ? trace : part(trace, cut + Math.round(SURGE_TAIL_S / trace.step), count)
}

/** Whether the beat of the last third is much quicker than that of the first, and the starter has less to do there. */
function quickens(stretch: EvenTrace, cylinders: number, knownRpm: number | undefined): boolean {
  const third = Math.floor(stretch.values.length / 3)
  const pieces = [part(stretch, 0, third), part(stretch, 2 * third, stretch.values.length)]
  const [level, levelAfter] = pieces.map(({ values }) => medianOf(values))
  if (level! - levelAfter! < RELIEVED_SWINGS * swing(withoutTrend(stretch.values))) return false
  const [before, after] = pieces.map((piece) => findRhythm(thin(piece, 512), cylinders, undefined, 1))
  if (!before || !after || before.explained < 0.35 || after.explained < 0.35 || knownRpm !== undefined) return false
  // the beat in the middle of each third; a third that does not hold two engine cycles has no beat to speak of
  const seconds = third * stretch.step
  const beat = ({ humpsPerSecond, drift: change }: Rhythm): number => humpsPerSecond + (change * seconds) / 2
  return beat(before) * seconds >= 2 * cylinders && beat(after) > QUICKENS * beat(before)
}
