import { FAULTS } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { CylinderEvidence, SightEvidence } from './evidence.ts'
import type { Grid } from './grid.ts'
import { kindsOf } from './kinds.ts'
import { OWN_COUNT } from './states.ts'
import type { Priors } from './workspace.ts'

type Plug = Extract<SightEvidence, { kind: 'plug' }>

/** Plugs that were read on a cylinder. */
export function plugsOf({ sights }: Pick<CylinderEvidence, 'sights'>): readonly Plug[] {
  return sights.filter((sight) => sight.kind === 'plug')
}

/** Are enough plugs oily that the whole engine may be why? One says no more than its own cylinder does. */
export function oilyTogether(cylinders: readonly CylinderEvidence[]): boolean {
  return cylinders.filter((c) => plugsOf(c).some(({ appearance }) => appearance === 'wet-oil')).length > 1
}

/** What a plug says of an engine that makes any of them oily, against what it says by itself of a cylinder that has this (0 sound, then faults). */
function plugRatio(plug: Plug, own: number, oilyPlug: number, { plugs: { appearance, contrast } }: Knowledge): number {
  const { sound, faults } = appearance.value
  const usual = (own === 0 ? sound : faults[FAULTS[own - 1]!] ?? sound)[plug.appearance] ?? 0.01
  const then = (1 - oilyPlug) * usual + (plug.appearance === 'wet-oil' ? oilyPlug : 0)
  return (then / usual) ** (plug.afterRunAtSpeed ? 1 : contrast.value)
}

/** What all plugs speak for a class of engine whose cylinders are sound (natural logarithm). */
export function plugsSpeak(cylinders: readonly CylinderEvidence[], oilyPlug: number, knowledge: Knowledge): number {
  return oilyPlug === 0 ? 0 : cylinders.flatMap(plugsOf).reduce((sum, plug) => sum + Math.log(plugRatio(plug, 0, oilyPlug, knowledge)), 0)
}

/**
 * The prior of a cylinder's own states by class of engine, with what its plugs say of the class: where the whole engine burns oil any plug may be oily,
 * whatever its cylinder has. Chances against those that the looks of the cylinder are weighed by.
 */
export function withPlugs(priors: Priors, cylinder: CylinderEvidence, grid: Grid, knowledge: Knowledge): Priors {
  const plugs = plugsOf(cylinder)
  if (plugs.length === 0) return priors
  const prior = Float64Array.from(priors.prior), likeliest = new Float64Array(OWN_COUNT)
  grid.classes.forEach(({ oilyPlug }, c) => {
    for (let own = 0; own < OWN_COUNT; own++) {
      if (oilyPlug > 0) for (const plug of plugs) prior[c * OWN_COUNT + own]! *= plugRatio(plug, own, oilyPlug, knowledge)
      if (prior[c * OWN_COUNT + own]! > likeliest[own]!) likeliest[own] = prior[c * OWN_COUNT + own]!
    }
  })
  return { ...priors, prior, likeliest, kinds: kindsOf(prior, grid) }
}
