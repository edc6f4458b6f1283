import type { EnteredReading, ListeningPoint, PlugAppearance, PressureUnit } from '@evenbore/contract'

/** One dry reading for each cylinder, in the order 1, 2, 3 …; null where it was not taken. */
export function dry(values: readonly (number | null)[], unit: PressureUnit = 'psi'): EnteredReading[] {
  return values.flatMap((value, i) => (value === null ? [] : [{ test: 'compression' as const, cylinder: i + 1, pressure: { value, unit }, seq: i + 1 }]))
}

/** Wet readings of the cylinders named: a low one and a good sister as control. */
export function wet(values: Readonly<Record<number, number>>, unit: PressureUnit = 'psi', oilMl = 5): EnteredReading[] {
  return Object.entries(values).map(([cylinder, value]) => ({ test: 'compression' as const, cylinder: Number(cylinder), wet: true, pressure: { value, unit }, oilMl }))
}

/** Leakage at the tester's supply: what was held, and what was heard where (0 none to 3 loud). */
export function leak(cylinder: number, held: number, heard: Partial<Record<ListeningPoint, 0 | 1 | 2 | 3>> = {}, unit: PressureUnit = 'psi'): EnteredReading {
  return { test: 'leakage', cylinder, held: { value: held, unit }, heard: { intake: 0, exhaust: 0, crankcase: 1, ...heard } }
}

/** Plugs as they came out, cylinder 1 first. */
export function plugs(seen: readonly PlugAppearance[], afterRunAtSpeed = false): EnteredReading[] {
  return seen.map((appearance, i) => ({ test: 'plug' as const, cylinder: i + 1, appearance, ...(afterRunAtSpeed ? { afterRunAtSpeed } : {}) }))
}
