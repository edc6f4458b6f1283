import type { Inference } from './posterior.ts'

/** Probability that a cylinder has an ignition or mixture fault; null when nothing was read that it could explain. */
export function ignitionOf(inference: Inference, cylinder: number): number | null {
  const { looks } = inference.emissions[cylinder]!
  if (looks === null || !looks.speaksOfIgnition) return null
  const probabilities = inference.states[cylinder]!
  let sum = 0
  for (let s = 0; s < probabilities.length; s++) {
    if (probabilities[s]! > 0 && looks.both[s]! > 0) sum += probabilities[s]! * looks.withIgnition[s]! / looks.both[s]!
  }
  return Math.min(1, Math.max(0, sum))
}
