import { BRIDGE, type Evaluation, type FindingCode } from '@evenbore/contract'

/** What was found, where. No cylinders: of the whole engine. */
export type Found = { readonly fault: FindingCode; readonly cylinders: readonly number[] }

/**
 * The probability that a stored evaluation gave to what was then found; null where it says nothing about it.
 * A fault in several cylinders: the least of theirs, which the joint probability is at most. `nothing`: that the cylinders were sound,
 * and without cylinders that no cause of the whole engine was at work.
 *
 * @example believedIn(evaluation, { fault: 'exhaust-valve-leak', cylinders: [3] }) // 0.55
 */
export function believedIn(evaluation: Evaluation, { fault, cylinders }: Found): number | null {
  if (fault === BRIDGE) {
    const pair = evaluation.neighbours.find((neighbours) => cylinders.length === 2 && cylinders.every((cylinder) => neighbours.cylinders.includes(cylinder)))
    return pair?.probability ?? null
  }
  if (cylinders.length === 0) return evaluation.engine.find(({ cause }) => cause === (fault === 'nothing' ? 'none' : fault))?.probability ?? null
  const each = cylinders.map((number) => {
    const cylinder = evaluation.cylinders.find((belief) => belief.cylinder === number)
    return fault === 'nothing' ? cylinder?.sound : cylinder?.faults.find((belief) => belief.fault === fault)?.probability
  })
  return each.some((probability) => probability === undefined) ? null : Math.min(...(each as number[]))
}
