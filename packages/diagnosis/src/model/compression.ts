import type { Knowledge } from '../knowledge/knowledge.ts'
import type { CompressionEvidence, CylinderEvidence, Evidence } from './evidence.ts'
import { expMinus } from './exponential.ts'
import type { EngineClass, GaugeEvidence, Grid } from './grid.ts'
import { combineReadings, densitiesThrough } from './mixture.ts'
import { bankLoss } from './one-bank.ts'
import type { StateSpace } from './states.ts'
import { notedUnder } from './swapped.ts'

/** Turns the gauge readings of a cylinder into what the grid needs. */
export function gaugeEvidence(cylinder: CylinderEvidence, evidence: Evidence, knowledge: Knowledge): GaugeEvidence {
  const dry = cylinder.dry.map(inLogs(knowledge))
  const wet = cylinder.wet.map(inLogs(knowledge))
  // what made one reading wrong seldom does it again: with oil the sum over a wrong dry reading stands in the rise and in states of its own
  const mixture = combineReadings(dry, wet.length === 0 ? 1 : knowledge.noise.wrongAgain.value, knowledge)
  // a bad seat only loses pressure: among repeats the higher ones speak of the cylinder
  const before = dry.length === 0 ? null : upper(dry)
  if (before === null || wet.length === 0) return { dry: mixture, before: before?.logPa ?? null, rise: null }
  const after = upper(wet)
  const fallen = knowledge.noise.dropped.value
  const loose = [cylinder.dry, cylinder.wet].filter((list) => list.every((r) => r.dropped === true)).length
  const variance = before.variance + after.variance + knowledge.oil.noise.value ** 2 + loose * (fallen.shift ** 2 + fallen.spread ** 2) + Math.min(...dry.map((r) => r.unreleased)) * knowledge.noise.unreleased.value.stoodHigher ** 2
  return { dry: mixture, before: before.logPa, rise: { log: after.logPa - before.logPa, variance, expected: evidence.oilRise(cylinder.wet[0]!.oilMl) } }
}

function inLogs(knowledge: Knowledge) {
  const floor = knowledge.noise.additivePa.value
  const { below, spread } = knowledge.noise.belowFirstMark.value
  return ({ pressurePa, sdPa, dropped, held = false, unreleased = 0, sag }: CompressionEvidence) => {
    // below the first mark a gauge says no more than "nearly nothing"
    if (pressurePa < floor) return { logPa: Math.log(floor) - below, variance: spread ** 2, dropped: false, held, unreleased: 0 }
    const pa = pressurePa
    const relative = Math.hypot(knowledge.noise.repeatability.value, Math.hypot(sdPa, floor / 4) / pa)
    return { logPa: Math.log(pa) + (sag?.shift ?? 0), variance: relative ** 2 + (sag?.variance ?? 0), dropped: dropped === true, held, unreleased }
  }
}

function upper(readings: readonly { logPa: number; variance: number }[]): { logPa: number; variance: number } {
  const top = Math.max(...readings.map((r) => r.logPa))
  const near = readings.filter((r) => r.logPa > top - 4 * Math.sqrt(r.variance))
  return {
    logPa: near.reduce((s, r) => s + r.logPa, 0) / near.length,
    variance: near.reduce((s, r) => s + r.variance, 0) / near.length ** 2,
  }
}

/** Likelihood of a cylinder's dry readings for each (loss row, level): index row * levels + level. */
export function dryTable(cylinder: number, gauge: readonly GaugeEvidence[], grid: Grid, states: StateSpace): Float64Array | null {
  if (gauge[cylinder]!.dry === null) return null
  const rows = states.lossRows.length, levels = grid.ladderFrom[grid.families.length]!
  const table = new Float64Array(rows * levels)
  for (let f = 0; f < grid.families.length; f++) {
    if (grid.ladders[f]!.count === 0) continue
    const kind = grid.classes[grid.families[f]![0]!]!, lower = bankLoss(kind, cylinder)
    const { dry } = gauge[notedUnder(kind, 'dry', cylinder)]!
    // what is not there cannot stand in the wrong place
    if (dry === null) continue
    for (let r = 0; r < rows; r++) {
      const { mean, sd } = states.lossRows[r]!
      densitiesThrough(dry, kind.sisterVariance + sd * sd, grid.ladders[f]!, mean + lower, table, r * levels + grid.ladderFrom[f]!)
    }
  }
  return table
}

/** Likelihood of the rise with oil for each (family of classes, seal row, rise): index (family * rows + row) * rises + v. */
export function wetTable(cylinder: number, gauge: readonly GaugeEvidence[], grid: Grid, states: StateSpace, knowledge: Knowledge): Float64Array | null {
  const { rise } = gauge[cylinder]!
  if (rise === null) return null
  const rises = grid.rises.length
  const rows = states.sealRows.length
  const table = new Float64Array(grid.families.length * rows * rises)
  for (let f = 0; f < grid.families.length; f++) {
    const kind = grid.classes[grid.families[f]![0]!]!
    const dry = gauge[notedUnder(kind, 'dry', cylinder)]!, wet = gauge[notedUnder(kind, 'wet', cylinder)]!
    if (dry.before === null || wet.before === null || wet.rise === null) continue
    const noted = { ...rise, log: wet.before + wet.rise.log - dry.before }
    for (let r = 0; r < rows; r++) weighRises(noted, grid, kind, states.sealRows[r]!, knowledge, table, (f * rows + r) * rises)
  }
  return table
}

/** Part of the chance of a bad seat at the dry reading that is left for faulty cylinders. */
const DRY_SEAT_LEFT = 0.3

function weighRises(
  rise: NonNullable<GaugeEvidence['rise']>, grid: Grid, kind: EngineClass, seal: { mean: number; sd: number }, knowledge: Knowledge, out: Float64Array, at: number,
): void {
  const low = knowledge.noise.seatedBadly.value
  const odd = knowledge.noise.anythingElse.value
  const { expected } = rise
  const variance = rise.variance + kind.sealedVariance + seal.sd ** 2 + expected.scatter ** 2
  const lowVariance = variance + low.spread ** 2, oddVariance = variance + odd.spread ** 2
  const half = 0.5 / variance, lowHalf = 0.5 / lowVariance, oddHalf = 0.5 / oddVariance
  // of a sound cylinder a bad seat at the dry reading is a state of its own, which makes that reading low as well: less is left here
  const good = (1 - (1 + DRY_SEAT_LEFT) * low.chance - 2 * odd.chance) / Math.sqrt(variance), bad = low.chance / Math.sqrt(lowVariance), any = 2 * odd.chance / Math.sqrt(oddVariance)
  for (let v = 0; v < grid.rises.length; v++) {
    const gap = rise.log - (expected.mean + grid.rises[v]! * expected.spread + kind.sealed + seal.mean)
    const down = gap - low.shift, up = gap + low.shift
    out[at + v] = good * expMinus(gap * gap * half) + any * expMinus(gap * gap * oddHalf) + bad * (DRY_SEAT_LEFT * expMinus(down * down * lowHalf) + expMinus(up * up * lowHalf))
  }
}
