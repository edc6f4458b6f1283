import { findRhythm } from './rhythm.ts'
import { type EvenTrace, medianOf, part, swing, thin, withoutTrend } from './resample.ts'

/** Longest stretch analysed, s: speed drifts too far beyond. */
const LONGEST_S = 10
/** A stretch is judged in windows of this many seconds: a few strokes at any starter speed. */
const WINDOW_S = 0.4
/** A window belongs to the cranking while its level is within so many typical swings of the middle of the cranking. */
const LEVEL_SWINGS = 4
/** The first run of so many windows is the cranking. */
const LEAST_WINDOWS = 3
/** A window that swings less than this part of the liveliest ones is not cranking. */
const LEAST_SWING = 0.3
/** The inrush of the starter, s; from memory. */
const INRUSH_S = 0.35
/** The beat quickens by this factor when the engine fires, and the swing that is left when it runs away from the starter. */
const QUICKENS = 1.4
const STILL_SWINGS = 0.08

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
export function steadyCranking(trace: EvenTrace, cylinders: number, knownRpm: number | undefined): Steady {
  const windows = windowsOf(trace)
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
  const begin = windows[first]!.from + surgePoints(trace, windows[first]!, own)
  const stretch = part(trace, begin, Math.min(windows[last]!.to, begin + Math.floor(LONGEST_S / trace.step)))
  if (stretch.values.length < 16) return { flaw: 'too-short' }
  return quickens(stretch, cylinders, knownRpm) ? { flaw: 'engine-firing' } : { flaw: null, trace: stretch }
}

/** Runs of windows that swing as cranking does, without a jump of level between neighbours; `to` is past the last. */
function runsOf(windows: readonly Window[], liveliest: number): { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = []
  windows.forEach((window, index) => {
    if (window.swing < LEAST_SWING * liveliest) return
    const run = runs.at(-1)
    const before = windows[index - 1]
    const jumps = before && Math.abs(window.level - before.level) > LEVEL_SWINGS * liveliest
    if (run?.to === index && !jumps) run.to = index + 1
    else runs.push({ from: index, to: index + 1 })
  })
  return runs
}

function windowsOf(trace: EvenTrace): Window[] {
  const size = Math.max(8, Math.round(WINDOW_S / trace.step))
  const windows: Window[] = []
  for (let from = 0; from + size <= trace.values.length; from += size) {
    const to = from + 2 * size > trace.values.length ? trace.values.length : from + size
    const values = trace.values.subarray(from, to)
    windows.push({ from, to, level: medianOf(values), swing: swing(withoutTrend(values)) })
  }
  return windows
}

/** Points of the first window that still belong to the surge: up to where the current first comes down to the typical level. */
function surgePoints(trace: EvenTrace, { from, to, level }: Window, own: number): number {
  const high = level + 3 * own
  let cut = 0
  for (let i = from; i < to; i++) if (trace.values[i]! > high) cut = i - from + 1
  // a surge has a tail below what stands out
  return cut === 0 ? 0 : cut + Math.round((INRUSH_S / 2) / trace.step)
}

/** Whether the beat of the last third is much quicker than that of the first. */
function quickens(stretch: EvenTrace, cylinders: number, knownRpm: number | undefined): boolean {
  const third = Math.floor(stretch.values.length / 3)
  const [before, after] = [part(stretch, 0, third), part(stretch, 2 * third, stretch.values.length)].map((piece) => findRhythm(thin(piece, 512), cylinders, undefined, 1))
  if (!before || !after || before.explained < 0.35 || after.explained < 0.35 || knownRpm !== undefined) return false
  return after.humpsPerSecond > QUICKENS * before.humpsPerSecond
}
