import type { ObjectionCode } from '@evenbore/contract'

/**
 * Sentences for what the model says, made from its codes and numbers. English has none of its own: there the model's sentences stand as
 * they are, which name more than a code can.
 */
export interface ReasonWords {
  /** What is believed before any reading. */
  readonly prior: (about: string) => string
  /** What only all readings together say: more than each alone, or partly the same. */
  readonly together: (more: boolean) => string
  /** What one reading, or repeats of one, says for or against something. */
  readonly speaks: (what: string, about: string, strength: 'strongly' | 'plainly' | 'a-little', against: boolean) => string
  readonly turns: (cylinder: number | undefined, value: string, leads: string) => string
  /** Why numbers must not be compared or believed, and what to do about it. */
  readonly objections: Readonly<Record<ObjectionCode, { readonly says: string; readonly do: string }>>
  /** Readings that an objection is about. */
  readonly concerns: (cylinders: string) => string
}
