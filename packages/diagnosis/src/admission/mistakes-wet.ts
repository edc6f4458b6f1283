import { cylinderWords, objection, type Remark } from './remark.ts'
import { readingSdPa } from './repeats.ts'
import { THRESHOLDS } from './thresholds.ts'
import type { CombinedCylinder, CompressionEvidence, Judged } from './types.ts'

interface Rise {
  readonly wet: CompressionEvidence
  readonly dry: CombinedCylinder
  /** part of the dry reading by which oil raised it */
  readonly rise: number
}

/** Mistakes that a wet test betrays against its dry readings: below dry, far too high, or a good control that rises as much. */
export function wetMistakes(all: readonly CompressionEvidence[], judged: Judged | null): Remark[] {
  if (judged?.kind !== 'dry') return []
  const rises = all.filter(({ kind, usable, session }) => kind === 'wet' && usable && session === judged.session).flatMap((wet): Rise[] => {
    const dry = judged.cylinders.find(({ cylinder }) => cylinder === wet.cylinder)
    return dry && dry.pa > 0 ? [{ wet, dry, rise: wet.pa / dry.pa - 1 }] : []
  })
  const remarks: Remark[] = []
  const below = rises.filter(({ wet, dry }) => dry.pa - wet.pa > THRESHOLDS.repeatSds.value * Math.hypot(readingSdPa(wet), readingSdPa(dry.evidence[0]!)))
  if (below.length > 0) remarks.push(objection('wet-below-dry', both(below), `With oil ${words(below)} read lower than dry, which oil cannot do.`, 'Check adaptor, strokes and battery, and repeat dry and wet.'))
  const high = rises.filter(({ rise }) => rise > THRESHOLDS.wetTooHigh.value)
  if (high.length > 0) remarks.push(objection('wet-too-high', both(high), `Oil raised ${words(high)} by more than two fifths: too much oil takes up room and lifts any cylinder.`, 'Drain it, use a measured small amount, and oil a good cylinder as control.'))
  const highest = Math.max(...judged.cylinders.map(({ pa }) => pa))
  const suspects = rises.filter(({ dry }) => dry.pa < highest * (1 - THRESHOLDS.low.value / 1.5))
  const controls = rises.filter(({ dry }) => dry.pa >= highest * (1 - THRESHOLDS.normal.value))
  const tied = suspects.filter(({ rise }) => controls.some((control) => control.rise >= THRESHOLDS.controlRise.value && control.rise >= rise - THRESHOLDS.controlMargin.value))
  if (tied.length > 0) remarks.push(objection('control-rises', both([...tied, ...controls]), `The good cylinder rose with oil as much as ${words(tied)}: the oil took up room, and the rise does not point at rings.`, 'Go by the leakage test, or repeat with less oil.'))
  return remarks
}

const both = (rises: readonly Rise[]): CompressionEvidence[] => rises.flatMap(({ wet, dry }) => [wet, ...dry.evidence])
const words = (rises: readonly Rise[]): string => cylinderWords(rises.map(({ wet }) => wet))
