import type { CautionCode } from '@evenbore/contract'

/** Which cautions belong to which step. `conditions` is the step before anything is cranked. */
const at: Readonly<Record<string, readonly CautionCode[]>> = {
  conditions: ['cranking', 'petrol-mist'],
  compression: ['cranking', 'petrol-mist'],
  wet: ['wet-test-oil', 'cranking'],
  running: ['running-engine', 'high-tension'],
  snap: ['running-engine', 'high-tension'],
  leakage: ['compressed-air'],
  plug: ['petrol-mist'],
  'power-balance': ['running-engine', 'high-tension'],
  vacuum: ['running-engine'],
  'coolant-gas': ['coolant-cap', 'running-engine'],
  borescope: ['borescope'],
  clearance: ['cranking'],
  'valve-lift': ['cranking'],
  'cooling-pressure': ['coolant-cap'],
  observation: [],
  'cranking-current': ['current-clamp', 'cranking'],
}

/** Cautions of a test's step; a diesel gets its own instead of those about petrol and oil. */
export function cautionsAt(test: string, diesel: boolean): readonly CautionCode[] {
  const petrol = at[test] ?? ['cranking']
  if (!diesel) return petrol
  if (test === 'wet') return ['oil-in-diesel', 'cranking']
  const kept = petrol.filter((code) => code !== 'petrol-mist' && code !== 'high-tension')
  return test === 'compression' || test === 'conditions' ? [...kept, 'diesel-spray', 'diesel-gauge'] : kept
}
