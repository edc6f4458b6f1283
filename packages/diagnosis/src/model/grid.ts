import { CAUSES, type Cause, type CauseTraits } from '../knowledge/causes.ts'
import { FAULTS } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Ladder, Mixture } from './mixture.ts'
import type { Evidence, OilRise } from './evidence.ts'
import { healthyLeaks } from './healthy-leak.ts'
import { lowBanks, type LowBank } from './one-bank.ts'
import { levelsLeft } from './rough-levels.ts'
import { oilyTogether, plugsSpeak } from './oily-plugs.ts'
import { likelySwaps, type Swap } from './swapped.ts'
import type { StateSpace } from './states.ts'

/** Mean and spread of the part of a leak past the rings that remains when oil is in. */
export interface WhenWet { readonly part: number; readonly spread: number }

/** A kind of engine as far as a cylinder's readings go: not worn, or one of the degrees of even wear. */
export interface EngineClass {
  readonly commonLoss: number
  /** Own state (index as in states) that several cylinders are prone to, 0 for none, and the chance of it in each. */
  readonly tendency: number
  readonly each: number
  /** Part of the engines without even wear (or of those with it) that are of this class. */
  readonly share: number
  /** Scatter of the healthy leak among sisters, as a standard deviation of the logarithm. */
  readonly leakSisters: number
  /** Chance that any plug is oily because the whole engine burns oil. */
  readonly oilyPlug: number
  /** Part of the leak past the rings that remains when oil is in, and its spread. */
  readonly leakWhenWet: WhenWet
  readonly sisterVariance: number
  readonly sealed: number
  readonly sealedVariance: number
  /** The bank whose valve timing alone is off; null in all other engines. */
  readonly lowBank: LowBank | null
  /** Two cylinders whose notes stand the wrong way round; null in all other engines. */
  readonly swap: Swap | null
}

/**
 * The cells of the common unknowns. A column q is a class of engine with a common level m (logarithm of the healthy reading);
 * within it stand the rise v by the room that oil takes and the healthy leak l of that class:
 * cell = offset[q] + v * width(class) + (l - leakFrom[class]). `prior[cause]` sums to the prior of that cause.
 */
export interface Grid {
  readonly classes: readonly EngineClass[]
  /** Classes that differ in the prior of a cylinder's own states alone. */
  readonly families: readonly (readonly number[])[]
  readonly columns: number
  readonly classOf: Uint8Array
  /** Columns of class c: from `columnFrom[c]` to below `columnFrom[c + 1]`. */
  readonly columnFrom: Int32Array
  readonly level: Float64Array
  /** All levels that the classes of each family have; where those of each family begin in the list of all, and at last their number. */
  readonly ladders: readonly Ladder[]
  readonly ladderFrom: Int32Array
  /** Place of each column's level in that list. */
  readonly levelOf: Int32Array
  readonly offset: Int32Array
  readonly rises: Float64Array
  /** Healthy leak area in mm2 for each l, and the part of that grid each class can have: l from `leakFrom[c]` to below `leakTo[c]`. */
  readonly healthyAreas: Float64Array
  readonly leakCount: number
  readonly leakFrom: Int32Array
  readonly leakTo: Int32Array
  readonly cells: number
  readonly prior: readonly Float64Array[]
}

/** What one cylinder's gauge readings say, ready for the grid. */
export interface GaugeEvidence {
  readonly dry: Mixture | null
  /** Logarithm of the dry pressure, of repeats the higher ones. */
  readonly before: number | null
  /** Rise from dry to wet and its variance; null unless both were read. */
  readonly rise: { readonly log: number; readonly variance: number; readonly expected: OilRise } | null
}

/** Lays the grid where the prior and the readings leave any probability. */
export function layGrid(evidence: Evidence, gauge: readonly GaugeEvidence[], states: StateSpace, knowledge: Knowledge, refine = 1): Grid {
  const classes = engineClasses(evidence, gauge, states, knowledge)
  const causes = causePriors(evidence, knowledge)
  const leak = healthyLeaks(evidence, states, knowledge, classes, refine)
  const columns = layColumns(evidence, gauge, states, knowledge, classes, causes, leak.speaks, refine)
  const rises = layRises(gauge, classes, refine)
  const count = columns.level.length
  const offset = new Int32Array(count)
  let cells = 0
  for (let q = 0; q < count; q++) {
    offset[q] = cells
    const c = columns.classOf[q]!
    cells += rises.points.length * (leak.to[c]! - leak.from[c]!)
  }
  const prior = CAUSES.map((cause, e) => {
    const array = new Float64Array(cells)
    const densities = classes.map((kind) => levelDensity(causes[e]!, kind, evidence, knowledge))
    for (let q = 0; q < count; q++) {
      const c = columns.classOf[q]!
      const share = classShare(cause, classes[c]!)
      if (share === 0) continue
      const density = causes[e]!.prior * share * columns.steps[c]! * densities[c]!(columns.level[q]!)
      const width = leak.to[c]! - leak.from[c]!
      for (let v = 0; v < rises.points.length; v++) {
        for (let l = 0; l < width; l++) array[offset[q]! + v * width + l] = density * rises.weights[v]! * leak.weights[c]![leak.from[c]! + l]!
      }
    }
    return array
  })
  const families = familiesOf(classes, leak), columnFrom = columnStarts(columns.classOf, classes.length)
  return {
    classes, families, columns: count, classOf: columns.classOf, columnFrom, level: columns.level, ...laddersOf(families, columnFrom, columns), offset, rises: rises.points,
    healthyAreas: leak.areas, leakCount: leak.areas.length, leakFrom: leak.from, leakTo: leak.to, cells, prior,
  }
}

/** Worn engines of absurdly small displacement: nothing is left to lose. */
const MOST_COMMON_LOSS = 2

/** Classes by what their readings look like: all but the tendency, oily plugs and the part of the engines. */
function familiesOf(classes: readonly EngineClass[], leak: { readonly from: Int32Array; readonly to: Int32Array }): number[][] {
  const families = new Map<string, number[]>()
  classes.forEach(({ tendency: _tendency, each: _each, share: _share, oilyPlug: _oily, ...reads }, c) => {
    const key = JSON.stringify([reads, leak.from[c], leak.to[c]])
    families.set(key, [...(families.get(key) ?? []), c])
  })
  return [...families.values()]
}

/** Columns stand in the order of their classes. */
function columnStarts(classOf: Uint8Array, classes: number): Int32Array {
  const from = new Int32Array(classes + 1)
  for (const c of classOf) from[c + 1]!++
  for (let c = 0; c < classes; c++) from[c + 1]! += from[c]!
  return from
}

/** The classes of a family share one lattice of levels: what readings say of it is worked out once. */
function laddersOf(families: readonly (readonly number[])[], columnFrom: Int32Array, { level, steps }: Columns): Pick<Grid, 'ladders' | 'ladderFrom' | 'levelOf'> {
  const ladderFrom = new Int32Array(families.length + 1)
  const levelOf = new Int32Array(level.length)
  const ladders = families.map((classes, f): Ladder => {
    const some = classes.filter((c) => columnFrom[c]! < columnFrom[c + 1]!)
    const step = steps[classes[0]!]!
    const first = some.reduce((least, c) => Math.min(least, level[columnFrom[c]!]!), Infinity)
    let count = 0
    for (const c of some) {
      for (let q = columnFrom[c]!; q < columnFrom[c + 1]!; q++) {
        const place = Math.round((level[q]! - first) / step)
        levelOf[q] = ladderFrom[f]! + place
        count = Math.max(count, place + 1)
      }
    }
    ladderFrom[f + 1] = ladderFrom[f]! + count
    return { first, step, count }
  })
  return { ladders, ladderFrom, levelOf }
}

function classShare(cause: Cause, kind: EngineClass): number {
  if (kind.lowBank !== null) return cause === 'valve-timing' ? kind.share : 0
  return (kind.commonLoss > 0) === (cause === 'worn-evenly') ? kind.share : 0
}

function engineClasses(evidence: Evidence, gauge: readonly GaugeEvidence[], states: StateSpace, knowledge: Knowledge): EngineClass[] {
  const sister = knowledge.noise.sisters.value
  const worn = knowledge.wornEvenly
  // what sisters leak differently they also read differently
  const healthyLoss = knowledge.leakageTest.healthyLeak.value.median * states.girth / states.areaPerLoss
  const healthySeal = knowledge.oil.healthySeal.value.mean * evidence.oilWay.rings * healthyLoss
  const varianceOf = (loss: number, sisters: number): number => sister ** 2 + Math.min(0.15, sisters * loss) ** 2
  const plain = {
    commonLoss: 0, sisterVariance: varianceOf(healthyLoss, knowledge.leakageTest.sisters.value), sealed: healthySeal, sealedVariance: 0, tendency: 0, each: 0,
    leakSisters: knowledge.leakageTest.sisters.value, leakWhenWet: whenWet(knowledge.oil.healthySeal.value, evidence), oilyPlug: 0, lowBank: null, swap: null,
  }
  // a tendency needs at least two cylinders, and is as much likelier as the fault itself is made by the engine's past
  const prone = evidence.cylinders.length < 2 ? [] : FAULTS.flatMap((fault, f) => {
    const entry = knowledge.tendencies[fault]
    if (entry === undefined) return []
    const factor = evidence.cylinders.reduce((least, c) => Math.min(least, c.faultFactors[fault] ?? 1), Infinity)
    return [{ ...plain, tendency: f + 1, each: entry.value.each, share: entry.value.chance * factor }]
  })
  const share = prone.reduce((sum, p) => sum + p.share, 0)
  const banks = lowBanks(evidence.timedBanks, gauge.map((g) => g.dry), knowledge)
  const swaps = likelySwaps(evidence, gauge, knowledge)
  const rightlyNoted = 1 - swaps.reduce((sum, swap) => sum + swap.share, 0)
  const { otherOil } = knowledge, oily = oilyTogether(evidence.cylinders) ? otherOil.chance.value : 0
  return [
    { ...plain, share: (1 - oily) * rightlyNoted / (1 + share) },
    ...(oily > 0 ? [{ ...plain, share: oily * rightlyNoted / (1 + share), oilyPlug: otherOil.plug.value }] : []),
    ...prone.map((p) => ({ ...p, share: rightlyNoted * p.share / (1 + share) })),
    ...swaps.map((swap) => ({ ...plain, share: swap.share, swap })),
    ...banks.map((lowBank) => ({ ...plain, share: lowBank.share, lowBank })),
    ...worn.leaks.value.map((leak) => Math.min(MOST_COMMON_LOSS, leak * states.girth / states.areaPerLoss)).map((loss, k) => ({
      ...plain, commonLoss: loss, share: worn.weights.value[k]!, sisterVariance: varianceOf(healthyLoss + loss, worn.leakSisters.value), leakSisters: worn.leakSisters.value, leakWhenWet: whenWet(worn.sealedByOil.value, evidence), oilyPlug: worn.plugOil.value,
      sealed: healthySeal + evidence.oilWay.rings * worn.sealedByOil.value.mean * loss, sealedVariance: (worn.sealedByOil.value.spread * loss) ** 2,
    })),
  ]
}

function whenWet({ mean, spread }: { readonly mean: number; readonly spread: number }, { oilWay }: Evidence): WhenWet {
  return { part: 1 - oilWay.rings * mean, spread: oilWay.rings * spread }
}

type CausePrior = CauseTraits

function causePriors(evidence: Evidence, knowledge: Knowledge): CausePrior[] {
  const list = CAUSES.map((cause) => {
    const traits = knowledge.causes[cause].value
    const known = cause === 'slow-cranking' && evidence.speedKnown
    return { ...traits, prior: traits.prior * (evidence.causeFactors[cause] ?? 1), ...(known ? { shift: 0 } : {}) }
  })
  const sum = list.reduce((total, c) => total + c.prior, 0)
  return list.map((c) => ({ ...c, prior: c.prior / sum }))
}

/** Prior density of the common level under a cause, for engines of a class. */
function levelDensity(cause: CausePrior, kind: EngineClass, evidence: Evidence, knowledge: Knowledge): (m: number) => number {
  const worn = kind.commonLoss > 0
  // the other bank is as it should be
  const common = kind.lowBank === null ? cause : knowledge.causes.none.value
  const shift = worn ? -kind.commonLoss : common.shift
  const spread = worn ? knowledge.noise.lossDispersion.value * kind.commonLoss : common.spread
  const { logPa, spread: open } = evidence.expected
  const far = worn ? undefined : common.far
  const near = normalDensity(logPa + shift, open ** 2 + spread ** 2)
  if (far === undefined) return near
  const away = normalDensity(logPa + far.shift, open ** 2 + far.spread ** 2)
  return (m) => (1 - far.part) * near(m) + far.part * away(m)
}

function normalDensity(centre: number, variance: number): (x: number) => number {
  const half = 0.5 / variance, scale = 1 / Math.sqrt(2 * Math.PI * variance)
  return (x) => Math.exp(-(x - centre) * (x - centre) * half) * scale
}

/** Density of the common level, summed over the causes that engines of a class can have, at the levels of a lattice; without the share of the class. */
function levelDensities(kind: EngineClass, causes: readonly CausePrior[], evidence: Evidence, knowledge: Knowledge, { first, step, count }: Ladder): Float64Array {
  const sum = new Float64Array(count)
  CAUSES.forEach((cause, e) => {
    if (classShare(cause, kind) === 0) return
    const at = levelDensity(causes[e]!, kind, evidence, knowledge)
    for (let i = 0; i < count; i++) sum[i]! += causes[e]!.prior * at(first + i * step)
  })
  return sum
}

interface Columns { readonly classOf: Uint8Array; readonly level: Float64Array; readonly steps: readonly number[] }

function layColumns(
  evidence: Evidence, gauge: readonly GaugeEvidence[], states: StateSpace, knowledge: Knowledge,
  classes: readonly EngineClass[], causes: readonly CausePrior[], leakage: Float64Array, refine: number,
): Columns {
  const read = gauge.flatMap(({ dry }, cylinder) => (dry === null ? [] : [{ dry, cylinder }]))
  if (read.length === 0) {
    const level = Float64Array.from(classes, (kind) => evidence.expected.logPa - kind.commonLoss)
    return { classOf: Uint8Array.from(classes, (_, c) => c), level, steps: classes.map(() => 2.5 * evidence.expected.spread) }
  }
  const { repeatability } = knowledge.noise
  const steps = classes.map((kind) => LEVEL_STEP * Math.hypot(Math.sqrt(kind.sisterVariance), repeatability.value) / Math.sqrt(read.length) / refine)
  const deepest = Math.max(0, ...classes.map((kind) => kind.commonLoss))
  const widest = Math.max(...causes.map((c) => Math.hypot(c.spread, evidence.expected.spread)))
  const highest = Math.max(...read.map(({ dry }) => dry[1]!))
  const from = Math.min(evidence.expected.logPa - 3.5 * widest - deepest, highest - 0.1)
  const to = Math.max(evidence.expected.logPa + 3.5 * widest, highest + 0.1)
  const lattice = { first: from, step: COARSE, count: Math.ceil((to - from) / COARSE) + 1 }
  // classes that differ in the prior of own states alone share what is expected of their level
  const expected = new Map<string, Float64Array>()
  const beforehand = classes.map((kind, c) => {
    const key = kind.lowBank === null ? String(kind.commonLoss) : 'bank'
    let densities = expected.get(key)
    if (densities === undefined) expected.set(key, (densities = levelDensities(kind, causes, evidence, knowledge, lattice)))
    // wrong notes are rare, and what they explain only air shows: laid as widely as right ones
    const share = kind.swap === null ? kind.share : 1
    const plugs = plugsSpeak(evidence.cylinders, kind.oilyPlug, knowledge)
    return densities.map((d) => leakage[c]! + plugs + Math.log(share * d + 1e-300))
  })
  const kept = levelsLeft(evidence, gauge, read, lattice, classes, beforehand, states, knowledge)
  const classOf: number[] = [], level: number[] = []
  for (const [c, { first, last }] of kept.entries()) {
    if (first > last) continue
    const step = steps[c]!
    const low = Math.floor((first - 0.5) * COARSE / step), high = Math.max(low + 3, Math.ceil((last + 0.5) * COARSE / step))
    for (let i = low; i < high; i++) {
      classOf.push(c)
      level.push(from + (i + 0.5) * step)
    }
  }
  return { classOf: Uint8Array.from(classOf), level: Float64Array.from(level), steps }
}

/** Step of the level against the scatter of one reading over the root of their number: a Gaussian sum this fine is good to .003 of its value. */
const LEVEL_STEP = 1.7
/** Step of the first search for where the level can lie. */
const COARSE = 0.025

/** Rises with oil this many nats below the best cannot come back into play: more than for columns, since what else is known of the cylinders moves them. */
const KEEP_RISES = 10

/** How much room the oil takes in this engine, in standard deviations of what is expected: common to all wet readings. */
function layRises(gauge: readonly GaugeEvidence[], classes: readonly EngineClass[], refine: number): { points: Float64Array; weights: Float64Array } {
  const wet = gauge.flatMap((g) => (g.rise === null ? [] : [g.rise]))
  if (wet.length === 0) return { points: Float64Array.of(0), weights: Float64Array.of(1) }
  // the scatter of one cylinder against the common spread says how fine the sum must be
  const sharpest = Math.min(...wet.map((r) => Math.hypot(Math.sqrt(r.variance), r.expected.scatter) / r.expected.spread))
  const step = LEVEL_STEP / Math.sqrt(wet.length / sharpest ** 2 + 1) / refine
  const half = Math.ceil(MOST_RISE / step)
  const all = Array.from({ length: 2 * half + 1 }, (_, i) => (i - half) * step)
  const extras = [...new Set(classes.map((kind) => kind.sealed)), ...SEALS]
  const scores = all.map((z) => wet.reduce((sum, r) => {
    const variance = r.variance + r.expected.scatter ** 2
    const p = extras.reduce((most, extra) => {
      const gap = r.log - r.expected.mean - z * r.expected.spread - extra
      return Math.max(most, Math.exp(-0.5 * gap * gap / (variance + 0.04 * extra * extra)))
    }, 1e-3)
    return sum + Math.log(p)
  }, -0.5 * z * z))
  const best = Math.max(...scores)
  const points = Float64Array.from(all.filter((_, i) => scores[i]! > best - KEEP_RISES))
  const total = all.reduce((sum, z) => sum + Math.exp(-0.5 * z * z), 0)
  return { points, weights: points.map((z) => Math.exp(-0.5 * z * z) / total) }
}

/** Returns with oil that faults may add, for the search of where the common room can lie. */
const SEALS = [0.1, 0.2, 0.4, 0.8]

/** The common room of the oil is summed to so many standard deviations. */
const MOST_RISE = 3.2
