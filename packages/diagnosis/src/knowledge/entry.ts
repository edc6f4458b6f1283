/** Where a number comes from: a named source, or one of the two honest answers below. */
export type Basis = string

/** A fact every mechanic would tell you and that no document at hand states. */
export const COMMON_PRACTICE: Basis = 'common practice, no source'

/** A value recalled by whoever wrote the table, open to argument. */
export const FROM_MEMORY: Basis = 'from memory'

/** Worked out with a rough one-zone model of cranking (402 cc, ratio 9, 200 rpm): a trend, not a measurement. */
export const ROUGH_CALCULATION: Basis = 'from memory: rough one-zone cranking calculation (402 cc, ratio 9, 200 rpm)'

/** One piece of knowledge: the value the model uses, why we believe it, and what it means in words. */
export interface Entry<T> {
  readonly value: T
  readonly basis: Basis
  readonly about: string
}

/** Writes one entry of a table. `about` is what the knowledge page shows to a mechanic. */
export function entry<T>(value: T, basis: Basis, about: string): Entry<T> {
  return { value, basis, about }
}
