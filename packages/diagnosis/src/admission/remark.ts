import type { Objection, ObjectionCode } from '@evenbore/contract'

/** An objection in the making. */
export type Remark = Objection

interface Read {
  readonly reading: number
}

/** An objection to some readings; their numbers are given once each, in order. */
export function objection(code: ObjectionCode, about: readonly Read[], says: string, todo: string): Remark {
  return { code, readings: [...new Set(about.map((entry) => entry.reading))].sort((a, b) => a - b), says, do: todo }
}

/** Readings with oil in a diesel, whatever the test: none where there are no such readings. */
export function oilInDiesel(fuel: string, wet: readonly Read[]): Remark[] {
  if (fuel !== 'diesel' || wet.length === 0) return []
  return [objection('oil-in-diesel', wet, 'Oil must not be put into a diesel cylinder: it can fire or lock the engine. The wet reading is kept but not used.', 'Do not crank or start. Drain the oil first, then turn the engine by hand.')]
}

/** "cylinder 2", "cylinders 1 and 3", "cylinders 1, 2 and 4". */
export function cylinderWords(about: readonly { readonly cylinder: number }[]): string {
  const numbers = [...new Set(about.map((entry) => entry.cylinder))].sort((a, b) => a - b)
  if (numbers.length === 1) return `cylinder ${numbers[0]}`
  return `cylinders ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`
}
