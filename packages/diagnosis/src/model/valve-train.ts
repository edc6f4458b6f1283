import { FAULTS } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { StateSpace } from './states.ts'

const DEAD = FAULTS.indexOf('valve-not-opening') + 1
/** A cylinder that loses less (logarithm) fills as its sisters do. */
const STARVED = 0.02

/** Is this own state that of a valve that hardly opens? */
export const isDead = (own: number): boolean => own === DEAD

/** Chance that the valve that hardly opens is this one: what is starved has a dead intake, what reads normal a dead exhaust or a lobe that still fills. */
export function deadChance(valve: 'intake' | 'exhaust', s: number, { loss }: StateSpace, { valveTrain }: Knowledge): number {
  const intake = loss[s]! > STARVED ? 1 : valveTrain.deadWithoutLoss.value.intake
  return valve === 'intake' ? intake : 1 - intake
}

/** Lift as its sisters have it, short by more than is allowed, or short by a good part of it. */
export type LiftFound = 'right' | 'short' | 'far'

/** Chance of a lift so found at a valve that hardly opens for sure, or at any other. */
export function liftChance(found: LiftFound, dead: boolean, { valveTrain }: Knowledge): number {
  const { liftShort, liftFar } = valveTrain
  const short = dead ? liftShort.value.fault : liftShort.value.sound, far = dead ? liftFar.value.fault : liftFar.value.sound
  return found === 'right' ? 1 - short - far : found === 'short' ? short : far
}

/** Normal parts (weight, mean and sd of the logarithm against the sisters) of the running pressure of a cylinder with a valve that hardly opens. */
export function runningWhenDead(s: number, states: StateSpace, knowledge: Knowledge): readonly (readonly [weight: number, mean: number, sd: number])[] {
  const { intake, exhaust } = knowledge.valveTrain.runningDead.value
  const starved = deadChance('intake', s, states, knowledge)
  return [[starved, -Math.max(states.loss[s]!, intake.loss), intake.spread], [1 - starved, exhaust.gain, exhaust.spread]]
}

/** What a cylinder pulls in a power balance, as part of its good sisters: a valve that hardly opens leaves it without power, whatever it shows while cranking. */
export function pullOf(s: number, { own, loss }: StateSpace, knowledge: Knowledge): number {
  return isDead(own[s]!) ? knowledge.ignition.deadDrop.value : pullLosing(loss[s]!, knowledge)
}

/** What a cylinder pulls that loses so much while cranking (natural logarithm), as part of a good one. */
export function pullLosing(loss: number, { ignition }: Knowledge): number {
  return Math.max(ignition.deadDrop.value, 1 - 1.2 * (1 - Math.exp(-Math.max(0, loss))))
}
