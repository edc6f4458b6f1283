import type { Case, PressureUnit, Turns } from '@evenbore/contract'
import { fromPascal } from '../units/pressure.ts'
import type { CompressionEvidence } from '../model/evidence.ts'
import type { Inference } from '../model/posterior.ts'
import { leadingTargets, type Target } from './targets.ts'
import type { WhatIf } from './what-if.ts'
import { FAULT_WORDS } from './words.ts'
import { FAULTS } from '../knowledge/faults.ts'

/** Changes of a dry reading that are tried, as parts of it, the smallest first: what a slip or a bad seat may make. */
const CHANGES = [0.05, 0.1, 0.18, 0.3]

/**
 * The smallest plausible change of one dry reading that changes what leads in the cylinder in question; undefined when nothing leads,
 * or none of the changes tried does it. The reading is one of that cylinder's own.
 */
export function turns(given: Case, inference: Inference, ask: WhatIf): Turns | undefined {
  const target = leadingTargets(inference).find((t) => t.kind === 'cylinder')
  if (target === undefined || target.kind !== 'cylinder') return undefined
  const own = inference.own[target.cylinder]!
  const soundLeads = own[0]! > own[target.fault]!
  const list = inference.evidence.cylinders[target.cylinder]!.dry
  const reading = list[0]
  if (reading === undefined) return undefined
  for (const part of CHANGES) {
    for (const sign of soundLeads ? [-1] : [1]) {
      const leads = leaderWith(inference, target, reading, 1 + sign * part, ask)
      if (leads === null) continue
      const unit = unitOf(given, reading.reading)
      const to = fromPascal(reading.pressurePa * (1 + sign * part), unit)
      const rounded = { value: Math.round(to.value * 10) / 10, unit }
      return {
        reading: reading.reading, cylinder: target.cylinder + 1, to: rounded, leads,
        says: `If cylinder ${target.cylinder + 1} had read ${rounded.value} ${unit}, ${FAULT_WORDS[leads as keyof typeof FAULT_WORDS]} would lead.`,
      }
    }
  }
  return undefined
}

/** What leads in the cylinder with the reading changed; null when that is what leads now. */
function leaderWith(inference: Inference, { cylinder }: Extract<Target, { kind: 'cylinder' }>, reading: CompressionEvidence, factor: number, ask: WhatIf): string | null {
  const before = inference.evidence.cylinders[cylinder]!
  const changed = ask.ownWith(cylinder, { ...before, dry: before.dry.map((r) => (r === reading ? { ...r, pressurePa: r.pressurePa * factor } : r)) })
  const now = leaderOf(inference.own[cylinder]!)
  const then = leaderOf(changed)
  return now === then ? null : then
}

function leaderOf(probabilities: Float64Array): string {
  let best = 0
  for (let own = 1; own < probabilities.length; own++) if (probabilities[own]! > probabilities[best]!) best = own
  return best === 0 ? 'sound' : FAULTS[best - 1]!
}

function unitOf(given: Case, reading: number): PressureUnit {
  const r = given.readings[reading]!
  return r.test === 'compression' ? r.pressure.unit : 'psi'
}
