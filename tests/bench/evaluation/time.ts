const WARM_UP_MS = 700
const RUN_MS = 1500
const MOST_RUNS = 60

/** Median and least wall time of a call in milliseconds, after warm-up. */
export function time(call: () => unknown): { p50: number; least: number } {
  for (let end = performance.now() + WARM_UP_MS; performance.now() < end;) call()
  const times: number[] = []
  for (let end = performance.now() + RUN_MS; times.length < 5 || (performance.now() < end && times.length < MOST_RUNS);) {
    const start = performance.now()
    call()
    times.push(performance.now() - start)
  }
  times.sort((a, b) => a - b)
  return { p50: times[times.length >> 1]!, least: times[0]! }
}
