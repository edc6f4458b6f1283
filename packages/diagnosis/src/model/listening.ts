import { PLACES } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'

const POINTS = 512
/** Areas are tabulated over area / (area + HALF): no logarithm in the inner loop. */
const HALF = 0.4

/** Chance of hearing nothing, faint, clear, loud for a leak of a given area. */
export interface Ears {
  chance(level: number, areaMm2: number): number
}

/** Tabulates the ears of the knowledge tables; interpolation is good to a few parts in 10,000. */
export function tabulateEars(knowledge: Knowledge): Ears {
  const { steps, blur, mistaken, noted } = knowledge.listening
  const table = new Float64Array(4 * (POINTS + 1))
  const reach = (area: number, step: number): number => (area <= 0 ? 0 : 1 / (1 + (step / area) ** (1 / blur.value)))
  for (let i = 0; i <= POINTS; i++) {
    const t = i / POINTS
    const area = t < 1 ? HALF * t / (1 - t) : 1e9
    const above = [1, ...steps.value.map((s) => reach(area, s)), 0]
    for (let level = 0; level < 4; level++) table[level * (POINTS + 1) + i] = (1 - mistaken.value) * (above[level]! - above[level + 1]!) + mistaken.value * noted.value[level]!
  }
  return {
    chance(level, areaMm2) {
      const x = POINTS * areaMm2 / (areaMm2 + HALF)
      const i = x >= POINTS ? POINTS - 1 : Math.floor(x)
      const at = level * (POINTS + 1) + i
      return table[at]! + (table[at + 1]! - table[at]!) * (x - i)
    },
  }
}

/** Index of a listening point. */
export const PLACE_INDEX = Object.fromEntries(PLACES.map((p, i) => [p, i])) as Readonly<Record<(typeof PLACES)[number], number>>
