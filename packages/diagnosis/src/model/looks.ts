import { FAULTS } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { CylinderEvidence, SightEvidence } from './evidence.ts'
import { GROUPS } from '../knowledge/signs.ts'
import { noisyOr } from './flags.ts'
import { PLACE_INDEX } from './listening.ts'
import type { StateSpace } from './states.ts'
import { deadChance, isDead, liftChance, pullOf, runningWhenDead } from './valve-train.ts'

/** Likelihood of all that was seen on a cylinder, for each state, with and without an ignition or mixture fault. */
export interface Looks {
  /** For each state: the sum over ignition sound and faulty, weighted by its prior. */
  readonly both: Float64Array
  /** The part of it with an ignition or mixture fault. */
  readonly withIgnition: Float64Array
  /** True when something was seen that ignition could explain. */
  readonly speaksOfIgnition: boolean
}

const weighed = new WeakMap<CylinderEvidence['sights'], { readonly states: StateSpace; readonly knowledge: Knowledge; readonly looks: Looks }>()

/** Weighs plugs, borescope, clearances, lift, signs, power balance and relative pressures of one cylinder; the same list of them once. */
export function weighLooks({ sights }: CylinderEvidence, states: StateSpace, knowledge: Knowledge): Looks | null {
  if (sights.length === 0) return null
  const known = weighed.get(sights)
  if (known !== undefined && known.states === states && known.knowledge === knowledge) return known.looks
  const looks = makeLooks(sights, states, knowledge)
  weighed.set(sights, { states, knowledge, looks })
  return looks
}

/** So many factors are multiplied before their logarithm is taken: hundreds of looks would leave nothing. */
const AT_ONCE = 16
/** However much speaks against a state: not less than this many nats below the best, so that something is always left to believe. */
const MOST_AGAINST = 60

function makeLooks(sights: CylinderEvidence['sights'], states: StateSpace, knowledge: Knowledge): Looks {
  const prior = knowledge.ignition.prior.value
  const logs = [false, true].map((ignition) => Float64Array.from({ length: states.count }, (_, s) => {
    let log = 0, product = ignition ? prior : 1 - prior
    sights.forEach((sight, i) => {
      product *= chanceOf(sight, s, ignition, states, knowledge)
      if (i % AT_ONCE < AT_ONCE - 1) return
      log += Math.log(product)
      product = 1
    })
    return log + Math.log(product)
  }))
  const best = logs.reduce((most, list) => list.reduce((a, b) => Math.max(a, b), most), -Infinity)
  const [sound, withIgnition] = logs.map((list) => list.map((x) => Math.exp(Math.max(-MOST_AGAINST, x - best)))) as [Float64Array, Float64Array]
  const both = sound.map((x, s) => x + withIgnition[s]!)
  const speaksOfIgnition = sights.some((x) => x.kind === 'plug' || x.kind === 'power-balance' || (x.kind === 'sign' && x.code === 'better-with-other-plug-and-lead'))
  return { both, withIgnition, speaksOfIgnition }
}

function chanceOf(sight: SightEvidence, s: number, ignition: boolean, states: StateSpace, knowledge: Knowledge): number {
  switch (sight.kind) {
    case 'plug': return plugChance(sight.appearance, sight.afterRunAtSpeed, s, ignition, states, knowledge)
    case 'borescope': return eachFault(s, states, (own) => borescopeChance(sight.seen, own, knowledge))
    case 'clearance': return eachFault(s, states, (own) => clearanceChance(sight.valve, sight.state, own, states.valve[s]!, knowledge))
    case 'valve-lift': return eachFault(s, states, (own) => {
      const dead = isDead(own) ? deadChance(sight.valve, s, states, knowledge) : 0
      return sight.found.reduce((sum, found) => sum + dead * liftChance(found, true, knowledge) + (1 - dead) * liftChance(found, false, knowledge), 0)
    })
    case 'sign': return signChance(sight.code, sight.present, s, ignition, states, knowledge)
    case 'power-balance': {
      const { deadDrop, dropSpread, dropSaysNothing } = knowledge.ignition
      const pull = ignition ? deadDrop.value : pullOf(s, states, knowledge)
      const sd = ignition ? 1.5 * dropSpread.value : Math.hypot(dropSpread.value, 0.3 * (1 - pull))
      const z = (sight.dropShare - pull) / sd
      return 0.95 * Math.exp(-0.5 * z * z) / sd + dropSaysNothing.value
    }
    case 'first-stroke': {
      // what leaks stands still after fewer strokes; what draws no charge builds up as ever
      const { perLoss, spread, perLossSpread, saysNothing } = knowledge.noise.firstStroke.value
      const leaking = isDead(states.own[s]!) ? 0 : states.loss[s]!
      const variance = sight.sd ** 2 + spread ** 2 + (perLossSpread * states.loss[s]!) ** 2
      const gap = sight.logRatio - perLoss * leaking
      return 0.9 * Math.exp(-0.5 * gap * gap / variance) / Math.sqrt(variance) + saysNothing
    }
    case 'relative': {
      // against sisters: a leak costs less when the engine turns fast
      const { leakPart, leakPartSpread, sistersSayNothing, sessionSaysNothing } = knowledge.running
      const turning = sight.of === 'running' || sight.of === 'snap'
      const part = turning ? leakPart.value : 1
      const scatter = part * states.scatter[s]! + (turning ? leakPartSpread.value * states.loss[s]! : 0)
      const variance = sight.sd ** 2 + knowledge.noise.sisters.value ** 2 + scatter ** 2
      const saysNothing = (turning ? sistersSayNothing : sessionSaysNothing).value
      if (turning && isDead(states.own[s]!)) {
        return runningWhenDead(s, states, knowledge).reduce((sum, [weight, mean, sd]) => sum + 0.95 * weight * normal(sight.logRatio - mean, sight.sd ** 2 + sd ** 2), saysNothing)
      }
      return 0.95 * normal(sight.logRatio + part * states.loss[s]!, variance) + saysNothing
    }
    case 'trace': {
      // in parts of the usual, not in logarithms: of a cylinder that hardly compresses a trace says no more than that
      const { misread: { value: { chance, spread } }, misnamed } = knowledge.trace
      const left = Math.exp(-states.loss[s]!)
      const variance = sight.sd ** 2 + left ** 2 * (knowledge.noise.sisters.value ** 2 + states.scatter[s]! ** 2)
      return (1 - chance) * normal(sight.relative - left, variance) + chance * normal(sight.relative - left, variance + spread ** 2) + misnamed.value
    }
  }
}

function normal(gap: number, variance: number): number {
  return Math.exp(-0.5 * gap * gap / variance) / Math.sqrt(variance)
}

function yes(present: boolean, chance: number): number {
  return present ? chance : 1 - chance
}

/** A cylinder with two faults shows now the signs of the one, now of the other. */
function eachFault(s: number, states: StateSpace, chance: (own: number) => number): number {
  const first = chance(states.own[s]!)
  const second = states.second[s]!
  return second === 0 ? first : (first + chance(second)) / 2
}

function plugChance(appearance: string, afterRun: boolean, s: number, ignition: boolean, states: StateSpace, knowledge: Knowledge): number {
  const weight = afterRun ? 1 : knowledge.plugs.contrast.value
  const { sound, faults } = knowledge.plugs.appearance.value
  if (ignition) return (knowledge.plugs.ignition.value[appearance] ?? 0.01) ** weight
  const dead = deadPlugPart(states.loss[s]!, knowledge), whenDead = knowledge.plugs.dead.value.looks[appearance] ?? 0.01
  return eachFault(s, states, (own) => ((1 - dead) * ((own === 0 ? sound : faults[FAULTS[own - 1]!] ?? sound)[appearance] ?? 0.01) + dead * whenDead) ** weight)
}

/** How often the plug of a cylinder that lost so much pressure (natural logarithm) looks as if it did not fire. */
export function deadPlugPart(loss: number, { plugs }: Knowledge): number {
  const { halfAt, most } = plugs.dead.value
  return most * risingWithLoss(loss, halfAt)
}

/** From 0 to 1 with lost pressure, half at `halfAt` (natural logarithms). */
export function risingWithLoss(loss: number, halfAt: number): number {
  return 1 / (1 + Math.exp(-(loss - halfAt) / (0.3 * halfAt)))
}

function borescopeChance(seen: readonly string[], own: number, knowledge: Knowledge): number {
  const sound = knowledge.borescope.sound.value
  const there = own === 0 ? {} : knowledge.borescope.faults.value[FAULTS[own - 1]!] ?? {}
  let product = 1
  for (const sight of Object.keys(sound)) product *= yes(seen.includes(sight), Math.max(sound[sight]!, there[sight] ?? 0))
  return product
}

function clearanceChance(valve: 'intake' | 'exhaust', state: string, own: number, place: number, knowledge: Knowledge): number {
  const { tightFound, looseFound } = knowledge.valveTrain
  const held = FAULTS[own - 1] === 'clearance-tight' && place === PLACE_INDEX[valve]
  const dead = isDead(own)
  const tight = held ? tightFound.value.fault : tightFound.value.sound
  const loose = dead ? 0.5 * looseFound.value.fault + 0.5 * looseFound.value.sound : looseFound.value.sound
  if (state === 'tight') return tight
  return state === 'loose' ? (1 - tight) * loose : (1 - tight) * (1 - loose)
}

/** What a sign of the whole engine says where only this cylinder could be behind it. */
function engineSignHere(code: string, present: boolean, s: number, states: StateSpace, knowledge: Knowledge): number {
  const sign = knowledge.engineSigns[code]?.value
  if (sign === undefined) return 1
  const here = GROUPS.filter((group) => [states.own[s]!, states.second[s]!].some((own) => own > 0 && knowledge.groups[group].value.includes(FAULTS[own - 1]!)))
  return yes(present, noisyOr(sign.alone, here.map((group) => sign.groups[group] ?? 0)))
}

function signChance(code: string, present: boolean, s: number, ignition: boolean, states: StateSpace, knowledge: Knowledge): number {
  const sign = knowledge.cylinderSigns[code]?.value
  if (sign === undefined) return engineSignHere(code, present, s, states, knowledge)
  if (sign.ignition !== undefined) return yes(present, ignition ? sign.ignition : sign.sound)
  if (sign.withLoss !== undefined) {
    const { halfAt, most } = sign.withLoss
    return yes(present, sign.sound + (most - sign.sound) * risingWithLoss(states.loss[s]!, halfAt))
  }
  return eachFault(s, states, (own) => yes(present, own === 0 ? sign.sound : Math.max(sign.sound, sign.faults[FAULTS[own - 1]!] ?? 0)))
}
