import { gaugeEvidence } from '../model/compression.ts'
import { emit } from '../model/emission.ts'
import type { CylinderEvidence, Evidence } from '../model/evidence.ts'
import { weighFlags } from '../model/flags.ts'
import { ownWeights, type Inference } from '../model/posterior.ts'
import { aroundOf, bridgeOf, causesOf, sumEngine } from '../model/sums.ts'
import type { Target } from './targets.ts'

/** Answers the probability of a target in a changed world. */
export type Ask = (target: Target) => number

/** The same engine with some of its readings not taken. The grid stays, so that only the readings make the difference. */
export function without(inference: Inference, readings: ReadonlySet<number>): Ask {
  const keep = <T extends { readonly reading: number }>(list: readonly T[]): readonly T[] => (list.some((r) => readings.has(r.reading)) ? list.filter((r) => !readings.has(r.reading)) : list)
  return changed(inference, (c) => ({ ...c, dry: keep(c.dry), wet: keep(c.wet), leakage: keep(c.leakage), sights: keep(c.sights) }), keep(inference.evidence.engine))
}

/** The same engine with other readings on some cylinders; cylinders whose lists stay the same object are not summed again. */
export function changed(inference: Inference, change: (c: CylinderEvidence, i: number) => CylinderEvidence, engine: Evidence['engine'] = inference.evidence.engine): Ask {
  const { space } = inference
  const cylinders = inference.evidence.cylinders.map(change)
  const evidence: Evidence = { ...inference.evidence, cylinders, engine }
  const emissions = inference.emissions.map((emission, i) => {
    const before = inference.evidence.cylinders[i]!, after = cylinders[i]!
    const same = before.dry === after.dry && before.wet === after.wet && before.leakage === after.leakage && before.sights === after.sights
    return same ? emission : emit(i, after, gaugeEvidence(after, evidence, space.knowledge), evidence, space)
  })
  const flags = engine === inference.evidence.engine ? inference.flags : weighFlags(engine, space.knowledge, inference.evidence.engine)
  const sums = sumEngine(evidence.gaskets, emissions, flags, space)
  const owns = new Map<number, Float64Array>()
  return (target) => {
    if (target.kind === 'cause') return causesOf(sums, flags, space)[target.cause]!
    if (target.kind === 'bridge') return bridgeOf(sums, target.gasket, target.pair, space)
    let own = owns.get(target.cylinder)
    if (own === undefined) owns.set(target.cylinder, (own = ownWeights(emissions[target.cylinder]!, aroundOf(sums, target.cylinder, space), space)))
    return own[target.fault]! / own.reduce((sum, w) => sum + w, 0)
  }
}
