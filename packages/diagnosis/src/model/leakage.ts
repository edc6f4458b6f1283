import { PLACES, type Place } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { flowShare } from '../physics/leakage.ts'
import type { CylinderEvidence, Evidence, LeakageEvidence } from './evidence.ts'
import { expMinus } from './exponential.ts'
import type { Grid, WhenWet } from './grid.ts'
import { PLACE_INDEX, type Ears } from './listening.ts'
import type { LeakRow } from './states.ts'

const CURVE_POINTS = 512
/** The curve is tabulated over area / (area + HALF). */
const HALF = 0.8

/** Percentage at the reference tester, and its rise for a relative change of area, tabulated over the leak area. */
export interface PercentCurve {
  readonly percent: Float64Array
  readonly slope: Float64Array
}

const curves = new Map<string, PercentCurve>()

/** Tabulates the reference tester; `key` names the tester so that the table is made once. */
export function tabulatePercent(evidence: Evidence): PercentCurve {
  const key = String(evidence.percentAtReference(1))
  let curve = curves.get(key)
  if (curve === undefined) {
    const area = (i: number): number => HALF * i / (CURVE_POINTS - i)
    const at = (a: number): number => (Number.isFinite(a) ? evidence.percentAtReference(a) : 100)
    curve = {
      percent: Float64Array.from({ length: CURVE_POINTS + 1 }, (_, i) => at(area(i))),
      slope: Float64Array.from({ length: CURVE_POINTS + 1 }, (_, i) => (i === 0 || i === CURVE_POINTS ? 0 : (at(area(i) * 1.01) - at(area(i) * 0.99)) / 0.02)),
    }
    if (curves.size > 8) curves.clear()
    curves.set(key, curve)
  }
  return curve
}

/** Percentage for a leak area in mm2, from the table. */
export function percentOf({ percent }: PercentCurve, areaMm2: number): number {
  const x = CURVE_POINTS * areaMm2 / (areaMm2 + HALF)
  const i = x >= CURVE_POINTS ? CURVE_POINTS - 1 : Math.floor(x)
  return percent[i]! + (percent[i + 1]! - percent[i]!) * (x - i)
}

/** Nothing held is less than the gauge can show: a hole's hiss is then that of this percentage. */
const MOST_PERCENT_HEARD = 98

/** Part of each leak's area that is heard where so much of the supply is lost: what flows, not the hole, makes the noise. */
export function heardPart(percent: number): number {
  return flowShare(Math.max(0, Math.min(MOST_PERCENT_HEARD, percent)))
}

/** Leakage readings of a cylinder, ready for the sum over states. */
export interface LeakSums {
  /** Fills `out` (by healthy leak) with the likelihood of all leakage readings for a state. */
  fill(row: LeakRow, out: Float64Array, at: number): void
  /** No state can make the readings likelier than this. */
  readonly atMost: number
}

/** Prepares the leakage evidence of cylinder `index`; null when there is none. */
export function leakSums(
  index: number, cylinder: CylinderEvidence, evidence: Evidence, grid: Grid, knowledge: Knowledge, ears: Ears, curve: PercentCurve, whenWet: WhenWet,
): LeakSums | null {
  if (cylinder.leakage.length === 0) return null
  const groups = groupRepeats(cylinder.leakage, knowledge)
  const listeners = groups.map((g) => g.readings.map((r) => listener(index, r, g, evidence, knowledge, ears, curve, whenWet)))
  const offTop = groups.map((g) => offTopChance(g, knowledge, ears))
  const [before, there, gone] = [1, 2, 3].map(() => new Float64Array(grid.leakCount)) as [Float64Array, Float64Array, Float64Array]
  const weigh = (group: RepeatGroup, g: number, row: LeakRow, out: Float64Array, at: number): void => {
    before.set(out.subarray(at, at + grid.leakCount))
    if (group.percent !== null) weighPercent(group, row, grid.healthyAreas, knowledge, curve, whenWet, out, at)
    for (const listen of listeners[g]!) listen(row, grid.healthyAreas, out, at)
    if (offTop[g]! > 0) for (let l = 0; l < grid.leakCount; l++) out[at + l] = out[at + l]! + before[l]! * offTop[g]!
  }
  return {
    atMost: groups.reduce((product, g) => product * (g.percent === null ? 1 : 1 / Math.sqrt(2 * Math.PI * g.noise) + 1), 1),
    fill(row, out, at) {
      for (let l = 0; l < grid.leakCount; l++) out[at + l] = 1
      groups.forEach((group, g) => {
        if (group.apart === 0) return weigh(group, g, row, out, at)
        weigh(group, g, row, there.fill(1), 0)
        // what comes and goes was there at this reading, or was not
        if (row.shows < 1) weigh(group, g, NO_LEAK, gone.fill(1), 0)
        const power = group.readings[0]!.times * Math.min(1, MOST_APART / group.apart)
        for (let l = 0; l < grid.leakCount; l++) out[at + l]! *= (row.shows < 1 ? row.shows * there[l]! + (1 - row.shows) * gone[l]! : there[l]!) ** power
      })
    },
  }
}

/** Tests that contradict each other, however many, count as so many: hundreds would leave nothing to believe. */
const MOST_APART = 8
const NO_LEAK: LeakRow = { total: 0, at: new Float64Array(PLACES.length), stopsWithSlackRockers: 0, sealedByOil: 0, shows: 1 }

/** A reading, and how often the same was noted. */
type Noted = LeakageEvidence & { readonly times: number }

interface RepeatGroup {
  /** One of so many that cannot be the same leak; 0 where they can. */
  readonly apart: number
  readonly readings: readonly Noted[]
  readonly percent: number | null
  /** Variance of the mean percentage by the gauges. */
  readonly noise: number
  /** Listening again to the same hiss is only partly new. */
  readonly tempering: number
  readonly wet: boolean
  readonly slack: boolean
  /** What was noted at each place in the plain test of this cylinder, where this one was done with rockers slack or oil in; -1 not listened. */
  readonly plain: readonly number[] | null
}

/** The same ears at the same hiss, however often, are worth so many that are independent. */
const MOST_HEARINGS = 4

function groupRepeats(readings: readonly LeakageEvidence[], knowledge: Knowledge): RepeatGroup[] {
  const groups = new Map<string, LeakageEvidence[]>()
  for (const r of readings) {
    const key = `${r.wet}${r.rockersSlack}`
    groups.set(key, [...(groups.get(key) ?? []), r])
  }
  const plain = readings.filter((r) => !r.wet && !r.rockersSlack)
  return [...groups.values()].flatMap((list) => {
    const heard = list.filter((r) => Object.keys(r.heard).length > 0).length
    const tempering = heard <= 1 ? 1 : Math.min(MOST_HEARINGS, 1 + 0.3 * (heard - 1)) / heard
    const apart = repeatsApart(list, knowledge)
    const noted = countSame(list)
    return (apart ? noted.map((reading) => [reading]) : [noted]).map((readings): RepeatGroup => {
      const percents = percentsOf(apart ? readings : list)
      return {
        apart: apart ? list.length : 0, readings, tempering, wet: list[0]!.wet, slack: list[0]!.rockersSlack,
        plain: (list[0]!.wet || list[0]!.rockersSlack) && plain.length > 0 ? levelsOf(plain[0]!) : null,
        noise: knowledge.leakageTest.percentNoise.value ** 2 / Math.max(1, percents.length) + 0.25,
        percent: percents.length === 0 ? null : percents.reduce((s, p) => s + p, 0) / percents.length,
      }
    })
  })
}

/** Readings that say the same, once: hundreds of them are no more work than one. */
function countSame(readings: readonly LeakageEvidence[]): Noted[] {
  const same = Map.groupBy(readings, ({ reading: _, ...said }) => JSON.stringify(said))
  return [...same.values()].map((list) => ({ ...list[0]!, times: list.length }))
}

/** What was noted at each place, -1 where nobody listened. */
function levelsOf({ heard }: LeakageEvidence): number[] {
  return PLACES.map((place) => heard[place] ?? -1)
}

function percentsOf(readings: readonly LeakageEvidence[]): number[] {
  return readings.map((r) => r.percentAtReference).filter((p) => p !== null)
}

/** Whether repeats of one leakage test differ by more than reading a leak twice explains. */
function repeatsApart(readings: readonly LeakageEvidence[], { leakageTest }: Knowledge): boolean {
  const percents = percentsOf(readings)
  return percents.length > 1 && Math.max(...percents) - Math.min(...percents) > leakageTest.repeatsApart.value
}

/** Whether any test of a cylinder's leakage was done twice and gave something else. */
export function comesAndGoes({ leakage }: Pick<CylinderEvidence, 'leakage'>, knowledge: Knowledge): boolean {
  return leakage.length > 1 && groupRepeats(leakage, knowledge).some(({ apart }) => apart > 0)
}

/** Likelihood of a group of readings with the piston off the top, times the chance of that: the same for every state. */
function offTopChance(group: RepeatGroup, knowledge: Knowledge, ears: Ears): number {
  const { chance, from, loudMm2 } = knowledge.leakageTest.offTop.value
  if (group.percent === null || group.percent < from || (group.apart === 0 && (group.readings.length > 1 || group.readings[0]!.times > 1))) return 0
  const heard = group.readings[0]!.heard
  const loud = loudMm2 * heardPart(group.percent)
  const elsewhere = knowledge.listening.seepage.value + heardElsewhere(loud, knowledge)
  const through = (port: Place): number => PLACES.reduce((product, place) =>
    heard[place] === undefined || place === 'neighbour' ? product : product * ears.chance(PLACE_INDEX[place], heard[place], place === port ? loud : elsewhere), 1)
  return chance / (100 - from) * (through('intake') + through('exhaust')) / 2
}

function weighPercent(group: RepeatGroup, row: LeakRow, healthyAreas: Float64Array, knowledge: Knowledge, curve: PercentCurve, whenWet: WhenWet, out: Float64Array, at: number): void {
  const { sisters, areaDispersion, anythingElse } = knowledge.leakageTest
  const own = Math.max(0, row.total - (group.slack ? row.stopsWithSlackRockers : 0) - (group.wet ? row.sealedByOil : 0))
  const ownVariance = (areaDispersion.value * own) ** 2
  const odd = anythingElse.value
  for (let l = 0; l < healthyAreas.length; l++) {
    const rings = group.wet ? whenWet.part * healthyAreas[l]! : healthyAreas[l]!
    const total = own + rings
    const x = CURVE_POINTS * total / (total + HALF)
    const i = x >= CURVE_POINTS ? CURVE_POINTS - 1 : Math.floor(x)
    const f = x - i
    const percent = curve.percent[i]! + (curve.percent[i + 1]! - curve.percent[i]!) * f
    const slope = (curve.slope[i]! + (curve.slope[i + 1]! - curve.slope[i]!) * f) / total
    const ringSd = sisters.value * rings, sealSd = group.wet ? whenWet.spread * healthyAreas[l]! : 0
    const variance = group.noise + slope * slope * (ringSd * ringSd + sealSd * sealSd + ownVariance)
    const gap = group.percent! - percent
    out[at + l]! *= (1 - odd) * expMinus(0.5 * gap * gap / variance) / Math.sqrt(2 * Math.PI * variance) + odd / 100
  }
}

/** Leak (mm2) that seems to be at places where it is not. */
export function heardElsewhere(areaMm2: number, { listening }: Knowledge): number {
  const { part, most } = listening.elsewhere.value
  return Math.max(0, Math.min(most, part * areaMm2))
}

/** Part of what crosses the gasket that is heard at each place through open valves of the cylinder behind it, and how likely those are the open ones. */
interface PastNeighbours { readonly chance: number; readonly parts: Float64Array }

/**
 * What may be heard past the gasket: valves of the neighbour that was listened at, else of either; slack rockers shut them. Without a firing order
 * it is one valve or the other, hardly ever none.
 */
function pastNeighbours(index: number, reading: LeakageEvidence, { gaskets, openValves }: Evidence, { listening }: Knowledge): PastNeighbours[] {
  const parts = new Float64Array(PLACES.length)
  const gasket = gaskets.find((list) => list.includes(index)) ?? [], at = gasket.indexOf(index)
  const besides = [gasket[at - 1], gasket[at + 1]].filter((j) => j !== undefined)
  const behind = besides.filter((j) => j === reading.neighbour)
  for (const j of behind.length > 0 ? behind : besides) {
    if (j === reading.neighbour && reading.neighbourSlack) continue
    if (openValves === null) return orderUnknown(listening)
    const part = listening.throughBridge.value / (behind.length > 0 ? 1 : besides.length)
    if (openValves.intake[index]![j] === true) parts[PLACE_INDEX.intake]! += part
    if (openValves.exhaust[index]![j] === true) parts[PLACE_INDEX.exhaust]! += part
  }
  return [{ chance: 1, parts }]
}

function orderUnknown({ throughBridge, openUnknown }: Knowledge['listening']): PastNeighbours[] {
  const through = (place: Place | null): Float64Array => Float64Array.from(PLACES, (each) => (each === place ? throughBridge.value : 0))
  const { intake, exhaust } = openUnknown.value
  return [{ chance: intake, parts: through('intake') }, { chance: exhaust, parts: through('exhaust') }, { chance: 1 - intake - exhaust, parts: through(null) }]
}

function listener(index: number, reading: Noted, group: RepeatGroup, evidence: Evidence, knowledge: Knowledge, ears: Ears, curve: PercentCurve, whenWet: WhenWet) {
  const { seepage, throughOpenValve, sameAgain } = knowledge.listening
  const noiseFrom = (area: number): number => heardElsewhere(area, knowledge)
  const levels = levelsOf(reading)
  const keen = PLACES.map((place) => knowledge.listening.keener.value[place] ?? 1)
  const crankcase = PLACE_INDEX.crankcase, neighbour = PLACE_INDEX.neighbour
  const other = reading.neighbour
  const openIntake = other !== null && !reading.neighbourSlack && evidence.openValves?.intake[index]?.[other] === true ? throughOpenValve.value : 0
  const openExhaust = other !== null && !reading.neighbourSlack && evidence.openValves?.exhaust[index]?.[other] === true ? throughOpenValve.value : 0
  // the same ears at a hiss that neither slack rockers nor oil have changed note the same again, right or wrong
  const same = PLACES.map((_, p) => (group.plain === null || group.plain[p]! < 0 ? null : group.plain[p] === levels[p]))
  const heardAgain = (p: number, unchanged: boolean, chance: number): number =>
    !unchanged || same[p] === null ? chance : (same[p] === true ? sameAgain.value : 0) + (1 - sameAgain.value) * chance
  const pastBridge = pastNeighbours(index, reading, evidence, knowledge)
  const tight: PastNeighbours[] = [{ chance: 1, parts: new Float64Array(PLACES.length) }]
  // of those that cannot be the same leak each stands for itself; the group counts them
  const power = group.tempering * (group.apart > 0 ? 1 : reading.times)
  const shown = group.percent === null ? null : heardPart(group.percent)
  const usual = knowledge.leakageTest.healthyLeak.value.median
  return (row: LeakRow, healthyAreas: Float64Array, out: Float64Array, at: number): void => {
    const stopped = group.slack ? row.stopsWithSlackRockers : 0
    const seal = group.wet ? row.sealedByOil : 0
    const total = Math.max(0, row.total - stopped - seal)
    const flows = shown ?? heardPart(percentOf(curve, total + usual))
    let product = 0
    for (const { chance, parts } of row.at[neighbour]! > 0 ? pastBridge : tight) {
      let here = chance
      for (let p = 0; p < levels.length; p++) {
        if (levels[p]! < 0 || p === crankcase) continue
        let area = row.at[p]!
        if (stopped > 0 && p !== neighbour) area = Math.max(0, area - stopped)
        area += parts[p]! * row.at[neighbour]!
        if (p === neighbour) area += openIntake * row.at[PLACE_INDEX.intake]! + openExhaust * row.at[PLACE_INDEX.exhaust]!
        here *= heardAgain(p, stopped === 0, ears.chance(p, levels[p]!, flows * keen[p]! * area + seepage.value + noiseFrom(flows * (total - row.at[p]!))))
      }
      product += here
    }
    if (power !== 1) product **= power
    const heard = levels[crankcase]!
    if (heard < 0) {
      for (let l = 0; l < healthyAreas.length; l++) out[at + l]! *= product
      return
    }
    const own = flows * Math.max(0, row.at[crankcase]! - seal) + seepage.value + noiseFrom(flows * (total - row.at[crankcase]!))
    const part = flows * (group.wet ? whenWet.part : 1)
    for (let l = 0; l < healthyAreas.length; l++) {
      const chance = heardAgain(crankcase, !group.wet && stopped === 0, ears.chance(crankcase, heard, own + part * healthyAreas[l]!))
      out[at + l]! *= product * (power === 1 ? chance : chance ** power)
    }
  }
}
