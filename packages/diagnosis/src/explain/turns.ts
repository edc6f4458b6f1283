import type { Case, PressureUnit, Turns } from '@evenbore/contract'
import { fromPascal } from '../units/pressure.ts'
import type { CompressionEvidence } from '../model/evidence.ts'
import type { Inference } from '../model/posterior.ts'
import { leadingTargets, probabilityOf, type Target } from './targets.ts'
import { changed } from './what-if.ts'
import { FAULT_WORDS } from './words.ts'
import { FAULTS } from '../knowledge/faults.ts'

/** Changes of a dry reading that are tried, as parts of it, the smallest first: what a slip or a bad seat may make. */
const CHANGES = [0.05, 0.1, 0.18, 0.3]

/**
 * The smallest plausible change of one dry reading that changes what leads in the cylinder in question; undefined when nothing leads,
 * or none of the changes tried does it. The reading is one of that cylinder's own.
 */
export function turns(given: Case, inference: Inference): Turns | undefined {
  const target = leadingTargets(inference).find((t) => t.kind === 'cylinder')
  if (target === undefined || target.kind !== 'cylinder') return undefined
  const own = inference.own[target.cylinder]!
  const soundLeads = own[0]! > own[target.fault]!
  const list = inference.evidence.cylinders[target.cylinder]!.dry
  const reading = list[0]
  if (reading === undefined) return undefined
  for (const part of CHANGES) {
    for (const sign of soundLeads ? [-1] : [1]) {
      const leads = leaderWith(inference, target, reading, 1 + sign * part)
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
function leaderWith(inference: Inference, target: Extract<Target, { kind: 'cylinder' }>, reading: CompressionEvidence, factor: number): string | null {
  const ask = changed(inference, (c, i) => (i !== target.cylinder ? c : {
    ...c, dry: c.dry.map((r) => (r === reading ? { ...r, pressurePa: r.pressurePa * factor } : r)),
  }))
  const now = leaderOf((fault) => probabilityOf(inference, { ...target, fault }))
  const then = leaderOf((fault) => ask({ ...target, fault }))
  return now === then ? null : then
}

function leaderOf(probability: (own: number) => number): string {
  let best = 0, most = -1
  for (let own = 0; own <= FAULTS.length; own++) {
    const p = probability(own)
    if (p > most) {
      most = p
      best = own
    }
  }
  return best === 0 ? 'sound' : FAULTS[best - 1]!
}

function unitOf(given: Case, reading: number): PressureUnit {
  const r = given.readings[reading]!
  return r.test === 'compression' ? r.pressure.unit : 'psi'
}
