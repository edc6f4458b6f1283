import { gaugeEvidence } from '../model/compression.ts'
import { emit } from '../model/emission.ts'
import type { CylinderEvidence, Evidence } from '../model/evidence.ts'
import { weighFlags } from '../model/flags.ts'
import { conclude, type Inference } from '../model/posterior.ts'

/** The same engine with some of its readings not taken. The grid stays, so that only the readings make the difference. */
export function without(inference: Inference, readings: ReadonlySet<number>): Inference {
  const keep = <T extends { readonly reading: number }>(list: readonly T[]): T[] => list.filter((r) => !readings.has(r.reading))
  return replaced(inference, (c) => ({ ...c, dry: keep(c.dry), wet: keep(c.wet), leakage: keep(c.leakage), sights: keep(c.sights) }), keep)
}

function replaced(inference: Inference, change: (c: CylinderEvidence) => CylinderEvidence, keep: (list: Evidence['engine']) => Evidence['engine']): Inference {
  const { space } = inference
  const cylinders = inference.evidence.cylinders.map(change)
  const evidence: Evidence = { ...inference.evidence, cylinders, engine: keep(inference.evidence.engine) }
  const gauge = [...inference.gauge]
  const emissions = inference.emissions.map((emission, i) => {
    const before = inference.evidence.cylinders[i]!, after = cylinders[i]!
    const same = before.dry.length === after.dry.length && before.wet.length === after.wet.length &&
      before.leakage.length === after.leakage.length && before.sights.length === after.sights.length
    if (same) return emission
    gauge[i] = gaugeEvidence(after, evidence, space.knowledge)
    return emit(i, after, gauge[i]!, evidence, space)
  })
  const flags = evidence.engine.length === inference.evidence.engine.length ? inference.flags : weighFlags(evidence.engine, space.knowledge, inference.evidence.engine)
  return conclude(evidence, space, gauge, flags, emissions)
}
