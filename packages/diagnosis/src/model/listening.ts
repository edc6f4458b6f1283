import { PLACES } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'

const POINTS = 96
const FROM = Math.log(0.002)
const TO = Math.log(60)

/** Chance of hearing nothing, faint, clear, loud for a leak of a given area; tabulated over the logarithm of the area. */
export interface Ears {
  chance(level: number, areaMm2: number): number
}

/** Tabulates the ears of the knowledge tables. */
export function tabulateEars(knowledge: Knowledge): Ears {
  const { steps, blur, mistaken } = knowledge.listening
  const table = new Float64Array(4 * POINTS)
  const reach = (area: number, step: number): number => 1 / (1 + (step / area) ** (1 / blur.value))
  for (let i = 0; i < POINTS; i++) {
    const area = Math.exp(FROM + (TO - FROM) * i / (POINTS - 1))
    const above = [1, ...steps.value.map((s) => reach(area, s)), 0]
    for (let level = 0; level < 4; level++) table[level * POINTS + i] = (1 - mistaken.value) * (above[level]! - above[level + 1]!) + mistaken.value / 4
  }
  return {
    chance(level: number, areaMm2: number): number {
      const x = (Math.log(areaMm2) - FROM) / (TO - FROM) * (POINTS - 1)
      const i = x <= 0 ? 0 : x >= POINTS - 1.000001 ? POINTS - 2 : Math.floor(x)
      const f = Math.min(1, Math.max(0, x - i))
      const at = level * POINTS + i
      return table[at]! * (1 - f) + table[at + 1]! * f
    },
  }
}

/** Index of a listening point. */
export const PLACE_INDEX = Object.fromEntries(PLACES.map((p, i) => [p, i])) as Readonly<Record<(typeof PLACES)[number], number>>
