/**
 * Odds of a probability in decibans: ten times their base-10 logarithm, clamped to 99 either way (Good's unit, from memory).
 * @example decibans(2 / 3) // 3.0103
 */
export function decibans(probability: number): number {
  if (probability <= 0) return -99
  if (probability >= 1) return 99
  return Math.max(-99, Math.min(99, 10 * Math.log10(probability / (1 - probability))))
}
