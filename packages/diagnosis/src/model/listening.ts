import { PLACES, type Place } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'

const POINTS = 512
/** Areas are tabulated over area / (area + HALF): no logarithm in the inner loop. */
const HALF = 0.4

/** Chance of noting nothing, faint, clear, loud at a place (by its index) for a leak of a given area. */
export interface Ears {
  chance(place: number, level: number, areaMm2: number): number
}

/** Where a leak is seen as bubbles rather than heard. */
const SEEN: ReadonlySet<Place> = new Set(['coolant', 'outside'])

/** Tabulates the ears of the knowledge tables; interpolation is good to a few parts in 10,000. */
export function tabulateEars(knowledge: Knowledge): Ears {
  const heard = tabulate(knowledge, 'heard'), seen = tabulate(knowledge, 'seen')
  const tables = PLACES.map((place) => (SEEN.has(place) ? seen : heard))
  return {
    chance(place, level, areaMm2) {
      const table = tables[place]!
      const x = POINTS * areaMm2 / (areaMm2 + HALF)
      const i = x >= POINTS ? POINTS - 1 : Math.floor(x)
      const at = level * (POINTS + 1) + i
      return table[at]! + (table[at + 1]! - table[at]!) * (x - i)
    },
  }
}

function tabulate({ listening: { steps, blur, ...listening } }: Knowledge, sense: 'heard' | 'seen'): Float64Array {
  const mistaken = listening.mistaken.value[sense], noted = listening.noted.value[sense]
  const table = new Float64Array(4 * (POINTS + 1))
  const reach = (area: number, step: number): number => (area <= 0 ? 0 : 1 / (1 + (step / area) ** (1 / blur.value)))
  for (let i = 0; i <= POINTS; i++) {
    const t = i / POINTS
    const area = t < 1 ? HALF * t / (1 - t) : 1e9
    const above = [1, ...steps.value.map((s) => reach(area, s)), 0]
    for (let level = 0; level < 4; level++) table[level * (POINTS + 1) + i] = (1 - mistaken) * (above[level]! - above[level + 1]!) + mistaken * noted[level]!
  }
  return table
}

/** Index of a listening point. */
export const PLACE_INDEX = Object.fromEntries(PLACES.map((p, i) => [p, i])) as Readonly<Record<(typeof PLACES)[number], number>>
