import { FAULTS } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { OWN_COUNT } from '../model/states.ts'
import { operationMinutes, type EngineSize } from '../repairs/minutes.ts'

/** What a cylinder may be called: sound, each fault, or bridged to a neighbour. */
export const LABELS = OWN_COUNT + 1
export const BRIDGED = OWN_COUNT

/** Minutes of labour that each decision costs for each truth: [decision * LABELS + label]. The first decision is to leave it. */
export interface Stakes {
  readonly decisions: number
  readonly minutes: Float64Array
}

/**
 * What is at stake in one cylinder: to leave it (a fault comes back and is then repaired), or any repair first (what it does not cure
 * is repaired after it). Putting a fault right costs the least of minutes over probability of cure among the repairs.
 */
export function stakesOf(size: EngineSize, knowledge: Knowledge): Stakes {
  const repairs = Object.values(knowledge.operations).map(({ value }) => value).filter((operation) => operation.look !== true && Object.keys(operation.cures).length > 0)
  const cost = repairs.map((operation) => operationMinutes(operation, size, [1], knowledge))
  const names = ['', ...FAULTS, 'gasket-between'] as const
  const cures = repairs.map((operation) => names.map((name) => (operation.cures as Readonly<Record<string, number>>)[name] ?? 0))
  const putRight = names.map((_, label) => (label === 0 ? 0 : repairs.reduce((least, _r, a) => (cures[a]![label]! > 0 ? Math.min(least, cost[a]! / cures[a]![label]!) : least), Infinity)))
  const { comeback, boiled } = knowledge.stopping, coolant = new Set<string>(knowledge.groups.coolant.value)
  const minutes = new Float64Array((repairs.length + 1) * LABELS)
  for (let label = 0; label < LABELS; label++) {
    const right = Number.isFinite(putRight[label]!) ? putRight[label]! : 0
    minutes[label] = label === 0 ? 0 : right + comeback.value + (coolant.has(names[label]!) ? boiled.value : 0)
    repairs.forEach((_, a) => { minutes[(a + 1) * LABELS + label] = cost[a]! + (1 - cures[a]![label]!) * right })
  }
  return { decisions: repairs.length + 1, minutes }
}

/** Expected minutes of the best decision, times the sum of the weights (`labels` from `at` on need not sum to one). */
export function leastCost({ decisions, minutes }: Stakes, labels: Float64Array, at: number): number {
  let least = Infinity
  for (let a = 0; a < decisions; a++) {
    let sum = 0
    for (let label = 0; label < LABELS; label++) sum += minutes[a * LABELS + label]! * labels[at + label]!
    if (sum < least) least = sum
  }
  return least
}
