import { FAULTS } from '../knowledge/faults.ts'
import { PLACE_INDEX } from '../model/listening.ts'
import { deadPlugPart, risingWithLoss } from '../model/looks.ts'
import type { Inference } from '../model/posterior.ts'
import type { Outcomes } from './information.ts'
import { deadChance, isDead, liftChance, type LiftFound } from '../model/valve-train.ts'
import { OWN_INDEX, byFault, yesNo } from './outcomes.ts'

/** Noted or not: a sign of one cylinder. */
export function signOutcomes(inference: Inference, code: string): Outcomes {
  const sign = inference.space.knowledge.cylinderSigns[code]!.value
  if (sign.withLoss !== undefined) {
    const { halfAt, most } = sign.withLoss
    const { loss } = inference.space.states
    return yesNo((s) => sign.sound + (most - sign.sound) * risingWithLoss(loss[s]!, halfAt))
  }
  return byFault(inference, [sign.sound, ...FAULTS.map((f) => Math.max(sign.sound, sign.faults[f] ?? 0))].map((p) => [p, 1 - p]))
}

/** The plug's appearance; ignition and mixture colour plugs too. */
export function plugOutcomes(inference: Inference): Outcomes {
  const { states, knowledge } = inference.space
  const { plugs: { appearance, ignition, dead }, ignition: { prior }, wornEvenly: { plugOil } } = knowledge
  const looks = Object.keys(appearance.value.sound)
  const usual = byFault(inference, [appearance.value.sound, ...FAULTS.map((f) => appearance.value.faults[f] ?? appearance.value.sound)].map((chances) =>
    looks.map((look) => (1 - prior.value) * chances[look]! + prior.value * ignition.value[look]!)))
  const oily = looks.indexOf('wet-oil')
  return {
    count: looks.length,
    table: (s, worn, out) => {
      usual.table(s, worn, out)
      const hardlyFires = (1 - prior.value) * deadPlugPart(states.loss[s]!, knowledge)
      looks.forEach((look, o) => { out[o] = (1 - hardlyFires) * out[o]! + hardlyFires * (dead.value.looks[look] ?? 0.01) })
      if (worn === 0) return
      for (let o = 0; o < looks.length; o++) out[o] = (1 - plugOil.value) * out[o]! + (o === oily ? plugOil.value : 0)
    },
  }
}

/** What leads the picture of the borescope: the first of the sights, or nothing. */
export function borescopeOutcomes(inference: Inference): Outcomes {
  const { sound, faults } = inference.space.knowledge.borescope
  const sights = Object.keys(sound.value)
  return byFault(inference, [{}, ...FAULTS.map((f) => faults.value[f] ?? {})].map((there: Readonly<Record<string, number>>) => {
    let rest = 1
    const chances = sights.map((sight) => {
      const p = Math.max(sound.value[sight]!, there[sight] ?? 0)
      const out = rest * p
      rest -= out
      return out
    })
    return [...chances, rest]
  }))
}

/** Clearances of both valves: exhaust tight, intake tight, one loose, right. */
export function clearanceOutcomes(inference: Inference): Outcomes {
  const { states, knowledge } = inference.space
  const { tightFound, looseFound } = knowledge.valveTrain
  return {
    count: 4,
    table: (s, _worn, out) => {
      const tightHere = states.own[s] === OWN_INDEX['clearance-tight'] || states.second[s] === OWN_INDEX['clearance-tight']
      const place = states.valve[s]!
      const exhaust = tightHere && place === PLACE_INDEX.exhaust ? tightFound.value.fault : tightFound.value.sound
      const intake = tightHere && place === PLACE_INDEX.intake ? tightFound.value.fault : tightFound.value.sound
      const loose = isDead(states.own[s]!) ? looseFound.value.fault : 2 * looseFound.value.sound
      out[0] = exhaust
      out[1] = (1 - exhaust) * intake
      out[2] = (1 - exhaust) * (1 - intake) * loose
      out[3] = (1 - exhaust) * (1 - intake) * (1 - loose)
    },
  }
}

/** Lift of both valves: right, or one of them short by a good part, or, where a sister was measured, by more than allowed. */
export function liftOutcomes(inference: Inference, sister: boolean): Outcomes {
  const { states, knowledge } = inference.space
  const one = (found: LiftFound, dead: number): number => dead * liftChance(found, true, knowledge) + (1 - dead) * liftChance(found, false, knowledge)
  return {
    count: 5,
    table: (s, _worn, out) => {
      const fault = isDead(states.own[s]!)
      const intake = fault ? deadChance('intake', s, states, knowledge) : 0, exhaust = fault ? 1 - intake : 0
      let right = 1
      ;[sister ? one('short', intake) : 0, one('far', intake), sister ? one('short', exhaust) : 0, one('far', exhaust)].forEach((chance, o) => {
        out[o] = chance
        right -= chance
      })
      out[4] = right
    },
  }
}

/** After a run: what sticks may come free. */
export function runOutcomes(inference: Inference): Outcomes {
  const { passes, seems } = inference.space.knowledge.afterRun
  return byFault(inference, [seems.value.sound, ...FAULTS.map((f) => passes.value[f] ?? seems.value.faulty)].map((p) => [p, 1 - p]))
}
