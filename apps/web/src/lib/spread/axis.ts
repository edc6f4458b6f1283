/** A straight axis over round numbers; a few lines here spare the bay tablet a library on its first screen. */
export interface Axis {
  readonly domain: readonly [number, number]
  readonly at: (value: number) => number
  /** Round values within the domain, about so many. */
  readonly ticks: (about: number) => number[]
}

/** The round step (1, 2 or 5 times a power of ten) that divides a length into about so many parts. */
function roundStep(length: number, about: number): number {
  const raw = length / Math.max(1, about)
  const power = 10 ** Math.floor(Math.log10(raw))
  const times = raw / power
  return power * (times < Math.SQRT2 ? 1 : times < Math.sqrt(12.5) ? 2 : times < Math.sqrt(50) ? 5 : 10)
}

/**
 * An axis from `low` to `high`, widened to round numbers, onto a range in px.
 *
 * @example roundAxis(121, 163, [0, 100]).domain // [120, 165]
 */
export function roundAxis(low: number, high: number, range: readonly [number, number]): Axis {
  if (!(high > low)) return roundAxis(low - Math.max(1, Math.abs(low) * 0.1), low + Math.max(1, Math.abs(low) * 0.1), range)
  const step = roundStep(high - low, 8)
  const domain: [number, number] = [Math.floor(low / step + 1e-9) * step, Math.ceil(high / step - 1e-9) * step]
  const length = domain[1] - domain[0]
  return {
    domain,
    at: (value) => range[0] + ((value - domain[0]) / length) * (range[1] - range[0]),
    ticks: (about) => {
      const width = roundStep(length, about)
      const first = Math.ceil(domain[0] / width - 1e-9)
      const last = Math.floor(domain[1] / width + 1e-9)
      // multiplied, not added up, so that 0.1 steps stay as short as they are written
      return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * width).toPrecision(12)))
    },
  }
}
