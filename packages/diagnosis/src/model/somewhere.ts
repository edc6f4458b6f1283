import { FAULTS } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Group } from '../knowledge/signs.ts'

/**
 * Chance that a group of faults is in each cylinder, and in any: each of many may be all but sound, and the engine is not. Cylinders are taken as
 * independent of each other, which a sign of the whole engine makes them not quite: the chance of any is then a little higher.
 *
 * @param own probabilities of the own states (0 sound, then faults), by cylinder
 */
export function somewhere(own: readonly Float64Array[], group: Group, { groups }: Knowledge): { readonly each: readonly number[]; readonly any: number } {
  const states = groups[group].value.map((fault) => FAULTS.indexOf(fault) + 1)
  const each = own.map((p) => states.reduce((sum, s) => sum + p[s]!, 0))
  return { each, any: 1 - each.reduce((nowhere, p) => nowhere * (1 - p), 1) }
}
