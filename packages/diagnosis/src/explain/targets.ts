import type { Because } from '@evenbore/contract'
import { CAUSES } from '../knowledge/causes.ts'
import { FAULTS } from '../knowledge/faults.ts'
import type { Inference } from '../model/posterior.ts'
import { somewhere } from '../model/somewhere.ts'

/** What is explained: a fault of a cylinder, a bridge between two, coolant that leaks at any cylinder, or an engine-wide cause. */
export type Target =
  | { readonly kind: 'cylinder'; readonly cylinder: number; readonly fault: number }
  | { readonly kind: 'bridge'; readonly gasket: number; readonly pair: number; readonly cylinders: readonly [number, number] }
  | { readonly kind: 'coolant' }
  | { readonly kind: 'cause'; readonly cause: number }

/** How a target is named in the answer. */
export type About = Pick<Because, 'cylinder' | 'cylinders' | 'fault' | 'cause'>

const LEAST_PROBABILITY = 0.15
const MOST_TARGETS = 3

/** Leading faults, bridges and causes that need a reason, the likeliest first: one fault for each cylinder. */
export function leadingTargets(inference: Inference): Target[] {
  const found: { target: Target; probability: number }[] = []
  const offer = (target: Target, probability: number): void => {
    if (probability >= LEAST_PROBABILITY) found.push({ target, probability })
  }
  inference.own.forEach((own, cylinder) => {
    let fault = 1
    for (let f = 2; f < own.length; f++) if (own[f]! > own[fault]!) fault = f
    offer({ kind: 'cylinder', cylinder, fault }, own[fault]!)
  })
  const { own, space: { knowledge } } = inference
  // where it leaks nobody knows, and yet the head comes off for it
  const named = found.some(({ target }) => target.kind === 'cylinder' && knowledge.groups.coolant.value.includes(FAULTS[target.fault - 1]!))
  if (!named) offer({ kind: 'coolant' }, somewhere(own, 'coolant', knowledge).any)
  inference.evidence.gaskets.forEach((list, gasket) => {
    inference.bridges[gasket]!.forEach((probability, pair) => offer({ kind: 'bridge', gasket, pair, cylinders: [list[pair]!, list[pair + 1]!] }, probability))
  })
  CAUSES.forEach((name, cause) => { if (name !== 'none') offer({ kind: 'cause', cause }, inference.causes[cause]!) })
  return found.sort((a, b) => b.probability - a.probability).slice(0, MOST_TARGETS).map((f) => f.target)
}

/** Probability of a target as things stand. */
export function probabilityOf(inference: Inference, target: Target): number {
  if (target.kind === 'cylinder') return inference.own[target.cylinder]![target.fault]!
  if (target.kind === 'coolant') return somewhere(inference.own, 'coolant', inference.space.knowledge).any
  return target.kind === 'bridge' ? inference.bridges[target.gasket]![target.pair]! : inference.causes[target.cause]!
}

/** The target as the contract names it. */
export function aboutOf(target: Target): About {
  if (target.kind === 'cylinder') return { cylinder: target.cylinder + 1, fault: FAULTS[target.fault - 1]! }
  if (target.kind === 'bridge') return { cylinders: [target.cylinders[0] + 1, target.cylinders[1] + 1], fault: 'gasket-between' }
  if (target.kind === 'coolant') return { fault: 'gasket-to-coolant' }
  return { cause: CAUSES[target.cause]! }
}
