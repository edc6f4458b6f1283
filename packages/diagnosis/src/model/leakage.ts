import { PLACES } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { CylinderEvidence, Evidence, LeakageEvidence } from './evidence.ts'
import type { Grid } from './grid.ts'
import { PLACE_INDEX, type Ears } from './listening.ts'
import type { LeakRow } from './states.ts'

const CURVE_POINTS = 128
const CURVE_FROM = Math.log(0.01)
const CURVE_TO = Math.log(60)

/** Percentage at the reference tester over the logarithm of leak area, as a table. */
export function tabulatePercent(evidence: Evidence): Float64Array {
  return Float64Array.from({ length: CURVE_POINTS }, (_, i) =>
    evidence.percentAtReference(Math.exp(CURVE_FROM + (CURVE_TO - CURVE_FROM) * i / (CURVE_POINTS - 1))))
}

function lookUp(curve: Float64Array, x: number): { percent: number; slope: number } {
  const scale = (CURVE_POINTS - 1) / (CURVE_TO - CURVE_FROM)
  const t = Math.min(CURVE_POINTS - 1.000001, Math.max(0, (x - CURVE_FROM) * scale))
  const i = Math.floor(t)
  const low = curve[i]!, high = curve[i + 1]!
  return { percent: low + (high - low) * (t - i), slope: (high - low) * scale }
}

/** Leakage readings of a cylinder, ready for the sum over states. */
export interface LeakSums {
  /** Fills `out` (by healthy leak) with the likelihood of all leakage readings for a state. */
  fill(row: LeakRow, out: Float64Array): void
}

/** Prepares the leakage evidence of cylinder `index`; null when there is none. */
export function leakSums(
  index: number, cylinder: CylinderEvidence, evidence: Evidence, grid: Grid, knowledge: Knowledge, ears: Ears, curve: Float64Array,
): LeakSums | null {
  if (cylinder.leakage.length === 0) return null
  const groups = groupRepeats(cylinder.leakage)
  const listen = listener(index, evidence, knowledge, ears)
  return {
    fill(row, out) {
      for (let l = 0; l < grid.leakCount; l++) {
        const healthy = grid.healthyAreas[l]!
        let product = 1
        for (const group of groups) {
          product *= percentLikelihood(group, row, healthy, knowledge, curve)
          for (const one of group.readings) {
            const heard = listen(one, row, healthy)
            product *= group.tempering === 1 ? heard : heard ** (1 / group.tempering)
          }
        }
        out[l] = product
      }
    },
  }
}

interface RepeatGroup {
  readonly readings: readonly LeakageEvidence[]
  readonly percent: number | null
  readonly count: number
  /** Listening again to the same hiss is only partly new. */
  readonly tempering: number
  readonly wet: boolean
  readonly slack: boolean
}

function groupRepeats(readings: readonly LeakageEvidence[]): RepeatGroup[] {
  const groups = new Map<string, LeakageEvidence[]>()
  for (const r of readings) {
    const key = `${r.wet}${r.rockersSlack}`
    groups.set(key, [...(groups.get(key) ?? []), r])
  }
  return [...groups.values()].map((list) => {
    const percents = list.map((r) => r.percentAtReference).filter((p): p is number => p !== null)
    const heard = list.filter((r) => Object.keys(r.heard).length > 0).length
    return {
      readings: list, count: percents.length, wet: list[0]!.wet, slack: list[0]!.rockersSlack,
      percent: percents.length === 0 ? null : percents.reduce((s, p) => s + p, 0) / percents.length,
      tempering: heard <= 1 ? 1 : heard / (1 + 0.3 * (heard - 1)),
    }
  })
}

function percentLikelihood(group: RepeatGroup, row: LeakRow, healthy: number, knowledge: Knowledge, curve: Float64Array): number {
  if (group.percent === null) return 1
  const { sisters, percentNoise, areaDispersion, anythingElse } = knowledge.leakageTest
  const own = Math.max(0, row.total - (group.slack ? row.stopsWithSlackRockers : 0) - (group.wet ? row.sealedByOil : 0))
  const ringsNow = group.wet ? 0.6 * healthy : healthy
  const total = own + ringsNow
  const sdLog = Math.hypot(sisters.value * ringsNow, areaDispersion.value * own) / total
  const { percent, slope } = lookUp(curve, Math.log(total))
  const noise = percentNoise.value ** 2 / group.count + 0.25
  const variance = noise + (slope * sdLog) ** 2
  const gap = group.percent - percent
  return (1 - anythingElse.value) * Math.exp(-0.5 * gap * gap / variance) / Math.sqrt(2 * Math.PI * variance) + anythingElse.value / 100
}

function listener(index: number, evidence: Evidence, knowledge: Knowledge, ears: Ears) {
  const { elsewhere, seepage, throughOpenValve } = knowledge.listening
  const crankcase = PLACE_INDEX.crankcase, neighbour = PLACE_INDEX.neighbour
  return (reading: LeakageEvidence, row: LeakRow, healthy: number): number => {
    let product = 1
    const stopped = reading.rockersSlack ? row.stopsWithSlackRockers : 0
    const seal = reading.wet ? row.sealedByOil : 0
    const total = Math.max(0, row.total - stopped - seal)
    for (let p = 0; p < PLACES.length; p++) {
      const level = reading.heard[PLACES[p]!]
      if (level === undefined) continue
      let area = row.at[p]!
      if (p === crankcase) area += (reading.wet ? 0.6 : 1) * healthy - (reading.wet ? Math.min(row.at[p]!, seal) : 0)
      else if (stopped > 0 && area > 0 && p !== neighbour) area = Math.max(0, area - stopped)
      if (p === neighbour && reading.neighbour !== null && evidence.openValves !== null) {
        if (evidence.openValves.intake[index]?.[reading.neighbour]) area += throughOpenValve.value * row.at[PLACE_INDEX.intake]!
        if (evidence.openValves.exhaust[index]?.[reading.neighbour]) area += throughOpenValve.value * row.at[PLACE_INDEX.exhaust]!
      }
      product *= ears.chance(level, area + seepage.value + elsewhere.value * Math.max(0, total - row.at[p]!))
    }
    return product
  }
}
