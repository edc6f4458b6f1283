import { gaugeEvidence } from '../model/compression.ts'
import { likelihoodOf, summed } from '../model/emission.ts'
import type { CylinderEvidence } from '../model/evidence.ts'
import { weighFlags, type Flags } from '../model/flags.ts'
import { weighLooks } from '../model/looks.ts'
import { plugsOf } from '../model/oily-plugs.ts'
import { ownProbabilities, type Inference } from '../model/posterior.ts'
import { Room, type Take } from '../model/room.ts'
import { somewhere } from '../model/somewhere.ts'
import { aroundOf, bridgesAt, causesOf, picks, resum, unreadSums, type EngineSums } from '../model/sums.ts'
import { OWN_COUNT } from '../model/states.ts'
import { mistakenFor } from '../model/swapped.ts'
import type { Likelihood } from '../model/workspace.ts'
import type { Target } from './targets.ts'

/** Answers the probability of a target in a changed world. */
export type Ask = (target: Target) => number

/** Asks of one inference what changed worlds would say; what they share is worked out once. */
export interface WhatIf {
  /** The same engine with some of its readings not taken, to be asked before the next is made. The grid stays, so that only the readings make the difference. */
  without(readings: ReadonlySet<number>): Ask
  /** Probabilities of the own states of a cylinder (0 sound, then faults), had it been read otherwise. Ends what `without` gave before. */
  ownWith(cylinder: number, evidence: CylinderEvidence): Float64Array
}

/** All cylinders as some were read otherwise, those that must be weighed anew, and their tables. */
interface Otherwise {
  readonly cylinders: readonly CylinderEvidence[]
  readonly touched: readonly number[]
  readonly tables: (i: number) => Likelihood
}

/** Prepares an inference to be asked. */
export function whatIf(inference: Inference): WhatIf {
  const { evidence, space, emissions, sums, flags, surroundings } = inference
  // one engine after the other: the arrays of the last one serve the next
  const ofOne: Float64Array[] = [], room = new Room(), ofChains = new Room()
  /** The engine with some cylinders read otherwise; a cylinder whose notes may be those of one of them is weighed anew as well. */
  const readOtherwise = (changed: ReadonlyMap<number, CylinderEvidence>): Otherwise => {
    const then = { ...evidence, cylinders: evidence.cylinders.map((before, i) => changed.get(i) ?? before) }
    const gauge = inference.gauge.map((before, i) => (changed.has(i) ? gaugeEvidence(then.cylinders[i]!, evidence, space.knowledge) : before))
    const others = [...changed].flatMap(([i, after]) => (sameNotes(evidence.cylinders[i]!, after) ? [] : mistakenFor(space.grid.classes, i)))
    return {
      cylinders: then.cylinders, touched: [...new Set([...changed.keys(), ...others])],
      tables: (i) => likelihoodOf(i, gauge, then, space, emissions[i]!.plain, { cylinders: evidence.cylinders, likelihood: emissions[i]! }),
    }
  }
  const sumsThen = (then: Otherwise, weighed: Flags): EngineSums =>
    resum(sums, new Map(then.touched.map((i) => [i, sumsOf(inference, i, then, ofOne, room.take)] as const)), weighed, space, room.take, ofChains)
  /** Own states of the one cylinder that was read otherwise: what is around it does not change with its readings. */
  const ownAlone = (i: number, then: Otherwise): Float64Array => {
    const changed = then.cylinders[i]!
    return (sameNotes(evidence.cylinders[i]!, changed) ? seenOtherwise(inference, i, changed) : null) ?? ownProbabilities(then.tables(i), surroundings[i]!, sums, space)
  }
  const ownWith = (i: number, changed: CylinderEvidence): Float64Array => {
    const then = readOtherwise(new Map([[i, changed]]))
    if (then.touched.length === 1) return ownAlone(i, then)
    room.takeBack()
    const world = sumsThen(then, flags)
    return ownProbabilities(then.tables(i), aroundOf(world, [i], space, room.take, ofChains)[0]!, world, space)
  }

  return {
    ownWith,
    without(readings) {
      room.takeBack()
      const engine = keep(evidence.engine, readings)
      const changed = new Map<number, CylinderEvidence>()
      evidence.cylinders.forEach((before, i) => {
        const after = { ...before, dry: keep(before.dry, readings), wet: keep(before.wet, readings), leakage: keep(before.leakage, readings), sights: keep(before.sights, readings) }
        if (!sameLists(before, after)) changed.set(i, after)
      })
      const then = readOtherwise(changed)
      let world: { sums: EngineSums; causes: Float64Array } | undefined
      const changedWorld = () => {
        if (world !== undefined) return world
        const weighed = engine === evidence.engine ? flags : weighFlags(engine, evidence, space.grid, space.knowledge, evidence.engine)
        const inAll = sumsThen(then, weighed)
        return (world = { sums: inAll, causes: causesOf(inAll, weighed) })
      }
      const owns = new Map<number, Float64Array>()
      const ownOf = (i: number): Float64Array => {
        if (changed.has(i) && then.touched.length === 1 && engine === evidence.engine) return ownAlone(i, then)
        const { sums: inAll } = changedWorld()
        return ownProbabilities(then.touched.includes(i) ? then.tables(i) : emissions[i]!, aroundOf(inAll, [i], space, room.take, ofChains)[0]!, inAll, space)
      }
      return (target) => {
        if (target.kind === 'cause') return changedWorld().causes[target.cause]!
        if (target.kind === 'bridge') return bridgesAt(changedWorld().sums, target.gasket, [target.pair], space, ofChains)[0]!
        const known = (i: number): Float64Array => {
          let own = owns.get(i)
          if (own === undefined) owns.set(i, (own = ownOf(i)))
          return own
        }
        return target.kind === 'coolant' ? somewhere(evidence.cylinders.map((_, i) => known(i)), 'coolant', space.knowledge).any : known(target.cylinder)[target.fault]!
      }
    },
  }
}

/** Own states of a cylinder of which only what was seen changes: each state's probability by the ratio of its chances to look so; null where there is none. */
function seenOtherwise({ evidence, emissions, space, states }: Inference, i: number, changed: CylinderEvidence): Float64Array | null {
  // plugs speak of the class of engine as well
  if (JSON.stringify(plugsOf(evidence.cylinders[i]!)) !== JSON.stringify(plugsOf(changed))) return null
  const before = emissions[i]!.looks, then = weighLooks(changed, space.states, space.knowledge)
  const out = new Float64Array(OWN_COUNT)
  let sum = 0
  for (let s = 0; s < space.states.count; s++) {
    const was = before === null ? 1 : before.both[s]!
    if (!(was > 0)) return null
    const p = states[i]![s]! * (then === null ? 1 : then.both[s]!) / was
    out[space.states.own[s]!]! += p
    sum += p
  }
  return sum > 0 ? out.map((p) => p / sum) : null
}

/** Sums of a changed cylinder over its own states for each subset of forbidden groups, in what `take` gives; `room` is free again afterwards. */
function sumsOf({ emissions, sums, flags, space }: Inference, i: number, { cylinders, tables }: Otherwise, room: Float64Array[], take: Take): Float64Array[] {
  const levelsOf = (k: number): number => sums.picked[k]![i]!.length / sums.kept.cells.length
  const { dry, wet, leakage, sights } = cylinders[i]!
  if (dry.length + wet.length + leakage.length + sights.length === 0) {
    return flags.subsets.map((subset, k) => unreadSums(emissions[i]!.plain.prior, subset, levelsOf(k), sums.kept, space, take))
  }
  const emission = summed(tables(i), sums.kept, space, room)
  return picks(emission, flags.subsets, sums.kept.cells.map((_, at) => at), space, take)
}

/** Are the notes that may stand under another cylinder the same? */
function sameNotes(before: CylinderEvidence, after: CylinderEvidence): boolean {
  return before.dry === after.dry && before.wet === after.wet && before.leakage === after.leakage
}

function keep<T extends { readonly reading: number }>(list: readonly T[], left: ReadonlySet<number>): readonly T[] {
  return list.some((r) => left.has(r.reading)) ? list.filter((r) => !left.has(r.reading)) : list
}

function sameLists(before: CylinderEvidence, after: CylinderEvidence): boolean {
  return sameNotes(before, after) && before.sights === after.sights
}
