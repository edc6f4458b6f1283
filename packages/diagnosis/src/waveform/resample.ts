/** A trace on an even grid, averaged into bins so that fast ripple cancels. */
export interface EvenTrace {
  /** seconds between points, and the time of the first */
  readonly step: number
  readonly start: number
  readonly values: Float64Array
}

/** Samples a second, on average. */
export function sampleRate(seconds: readonly number[]): number {
  return (seconds.length - 1) / (seconds.at(-1)! - seconds[0]!)
}

/** A trace on at most so many even points. Bins without a sample lie on the line between those that have one. */
export function evenTrace(seconds: readonly number[], amps: readonly number[], mostPoints: number): EvenTrace {
  const start = seconds[0]!
  const points = Math.min(mostPoints, seconds.length)
  const step = (seconds.at(-1)! - start) / (points - 1)
  const values = new Float64Array(points)
  const counts = new Uint32Array(points)
  for (let i = 0; i < seconds.length; i++) {
    const place = Math.min(points - 1, Math.max(0, Math.round((seconds[i]! - start) / step)))
    values[place]! += amps[i]!
    counts[place]!++
  }
  let last = -1
  for (let place = 0; place < points; place++) {
    if (counts[place] === 0) continue
    values[place]! /= counts[place]!
    for (let gap = last + 1; gap < place; gap++) {
      values[gap] = last < 0 ? values[place]! : values[last]! + ((values[place]! - values[last]!) * (gap - last)) / (place - last)
    }
    last = place
  }
  return { step, start, values }
}

/** Part of an even trace, by index. */
export function part(trace: EvenTrace, from: number, to: number): EvenTrace {
  return { step: trace.step, start: trace.start + from * trace.step, values: trace.values.subarray(from, to) }
}

/** Averages neighbouring points until at most so many are left. */
export function thin(trace: EvenTrace, mostPoints: number): EvenTrace {
  const by = Math.ceil(trace.values.length / mostPoints)
  if (by <= 1) return trace
  const points = Math.floor(trace.values.length / by)
  const values = new Float64Array(points)
  for (let i = 0; i < points * by; i++) values[Math.floor(i / by)]! += trace.values[i]! / by
  return { step: trace.step * by, start: trace.start + ((by - 1) / 2) * trace.step, values }
}

/** Takes a parabola out of a trace: offset, drift and the sag of a battery. */
export function withoutTrend(values: Float64Array): Float64Array {
  const count = values.length
  const at = (i: number): number => (2 * i) / Math.max(1, count - 1) - 1
  let squareMean = 0
  for (let i = 0; i < count; i++) squareMean += at(i) ** 2 / count
  // orthogonal polynomials of degree 0 to 2
  const shapes = [(): number => 1, (x: number): number => x, (x: number): number => x * x - squareMean]
  const flat = Float64Array.from(values)
  for (const shape of shapes) {
    let top = 0
    let bottom = 0
    for (let i = 0; i < count; i++) {
      top += shape(at(i)) * flat[i]!
      bottom += shape(at(i)) ** 2
    }
    if (bottom > 0) for (let i = 0; i < count; i++) flat[i]! -= (top / bottom) * shape(at(i))
  }
  return flat
}

/** Root mean square. */
export function swing(values: Float64Array): number {
  let sum = 0
  for (const value of values) sum += value * value
  return Math.sqrt(sum / Math.max(1, values.length))
}

/** Median of a typed array. */
export function medianOf(values: Float64Array): number {
  const sorted = Float64Array.from(values).sort()
  const half = sorted.length >> 1
  return sorted.length === 0 ? 0 : sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2
}
