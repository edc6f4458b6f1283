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

/** "cylinder 2", "cylinders 1 and 3", "cylinders 1, 2 and 4". */
export function cylinderWords(about: readonly { readonly cylinder: number }[]): string {
  const numbers = [...new Set(about.map((entry) => entry.cylinder))].sort((a, b) => a - b)
  if (numbers.length === 1) return `cylinder ${numbers[0]}`
  return `cylinders ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`
}
