import type { PressureUnit } from '@evenbore/contract'
import { inUnit } from '@evenbore/words/format/pressure.ts'

/** Repeatability of one reading without better knowledge: 1 percent (from memory), as the diagnosis takes it. */
const REPEATABILITY = 0.01
/** Without a stated resolution a gauge is read to at least 1 psi. */
const LEAST_RESOLUTION = { value: 1, unit: 'psi' } as const
/** Coverage of 95 in 100. */
const COVERAGE = 1.96

/**
 * Half width of a reading, in its own unit: repeatability and rounding together, 95 in 100. What is common to all cylinders (gain, zero) cancels in a
 * comparison and is left out, so that two ticks that do not touch really differ.
 *
 * @param finestDecimals decimals of the most finely read of the compared readings
 * @example readingHalfWidth({ value: 150, unit: 'psi' }, 0, undefined) // 2.99…
 */
export function readingHalfWidth(pressure: { readonly value: number; readonly unit: PressureUnit }, finestDecimals: number, resolution: { readonly value: number; readonly unit: PressureUnit } | undefined): number {
  const stated = resolution && inUnit(resolution, pressure.unit)
  const step = stated ?? Math.max(10 ** -finestDecimals, inUnit(LEAST_RESOLUTION, pressure.unit))
  return COVERAGE * Math.hypot(REPEATABILITY * pressure.value, step / Math.sqrt(12))
}
