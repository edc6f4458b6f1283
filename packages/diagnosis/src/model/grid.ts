import { CAUSES, type Cause } from '../knowledge/causes.ts'
import { FAULTS, PLACES } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { densitiesThrough, type Ladder, type Mixture } from './mixture.ts'
import type { CylinderEvidence, Evidence, OilRise } from './evidence.ts'
import { healthyLeaks } from './healthy-leak.ts'
import { weighLooks, type Looks } from './looks.ts'
import { lowBanks, type LowBank } from './one-bank.ts'
import { faultChance } from './past.ts'
import { likelySwaps, type Swap } from './swapped.ts'
import { OWN_COUNT, type StateSpace } from './states.ts'

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
  readonly sisterVariance: number
  readonly sealed: number
  readonly sealedVariance: number
  /** The bank whose valve timing alone is off; null in all other engines. */
  readonly lowBank: LowBank | null
  /** Two cylinders whose notes stand the wrong way round; null in all other engines. */
  readonly swap: Swap | null
}

/** What a cylinder of this class reads below the common level, its own state apart. */
export function bankLoss({ lowBank }: EngineClass, cylinder: number): number {
  return lowBank !== null && lowBank.cylinders.has(cylinder) ? lowBank.loss : 0
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

/** Columns this many nats below the best cannot come back into play. */
const KEEP_NATS = 10
/** A class of engine this far below comes back into play when leakage or signs speak for it; columns so far below its own best do not. */
const KEEP_CLASS = 16
const KEEP_WITHIN = 7

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

/** Classes by what their readings look like: all but the tendency and the part of the engines. */
function familiesOf(classes: readonly EngineClass[], leak: { readonly from: Int32Array; readonly to: Int32Array }): number[][] {
  const families = new Map<string, number[]>()
  classes.forEach(({ tendency: _tendency, each: _each, share: _share, ...reads }, c) => {
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
  const healthySeal = knowledge.oil.healthySeal.value * evidence.oilWay.rings * healthyLoss
  const varianceOf = (loss: number, sisters: number): number => sister ** 2 + Math.min(0.15, sisters * loss) ** 2
  const plain = {
    commonLoss: 0, sisterVariance: varianceOf(healthyLoss, knowledge.leakageTest.sisters.value), sealed: healthySeal, sealedVariance: 0, tendency: 0, each: 0,
    leakSisters: knowledge.leakageTest.sisters.value, lowBank: null, swap: null,
  }
  // a tendency needs at least two cylinders, and is as much likelier as the fault itself is made by the engine's past
  const prone = evidence.cylinders.length < 2 ? [] : FAULTS.flatMap((fault, f) => {
    const entry = knowledge.tendencies[fault]
    if (entry === undefined) return []
    const factor = evidence.cylinders.reduce((least, c) => Math.min(least, c.faultFactors[fault] ?? 1), Infinity)
    return [{ ...plain, tendency: f + 1, each: entry.value.each, share: entry.value.chance * factor }]
  })
  const share = prone.reduce((sum, p) => sum + p.share, 0)
  const banks = lowBanks(evidence.banks, gauge.map((g) => g.dry), knowledge)
  const swaps = likelySwaps(evidence, gauge, knowledge)
  const rightlyNoted = 1 - swaps.reduce((sum, swap) => sum + swap.share, 0)
  return [
    { ...plain, share: rightlyNoted / (1 + share) },
    ...prone.map((p) => ({ ...p, share: rightlyNoted * p.share / (1 + share) })),
    ...swaps.map((swap) => ({ ...plain, share: swap.share, swap })),
    ...banks.map((lowBank) => ({ ...plain, share: lowBank.share, lowBank })),
    ...worn.leaks.value.map((leak) => Math.min(MOST_COMMON_LOSS, leak * states.girth / states.areaPerLoss)).map((loss, k) => ({
      ...plain, commonLoss: loss, share: worn.weights.value[k]!, sisterVariance: varianceOf(healthyLoss + loss, worn.leakSisters.value), leakSisters: worn.leakSisters.value,
      sealed: healthySeal + evidence.oilWay.rings * worn.sealedByOil.value.mean * loss, sealedVariance: (worn.sealedByOil.value.spread * loss) ** 2,
    })),
  ]
}

interface CausePrior { readonly prior: number; readonly shift: number; readonly spread: number }

function causePriors(evidence: Evidence, knowledge: Knowledge): CausePrior[] {
  const list = CAUSES.map((cause) => {
    const { prior, shift, spread } = knowledge.causes[cause].value
    const known = cause === 'slow-cranking' && evidence.speedKnown
    return { prior: prior * (evidence.causeFactors[cause] ?? 1), shift: known ? 0 : shift, spread }
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
  const variance = evidence.expected.spread ** 2 + spread ** 2
  const centre = evidence.expected.logPa + shift, half = 0.5 / variance, scale = 1 / Math.sqrt(2 * Math.PI * variance)
  return (m) => Math.exp(-(m - centre) * (m - centre) * half) * scale
}

/** Density of the common level, summed over the causes that engines of a class can have, at steps of `COARSE`; without the share of the class. */
function levelDensities(kind: EngineClass, causes: readonly CausePrior[], evidence: Evidence, knowledge: Knowledge, from: number, count: number): Float64Array {
  const sum = new Float64Array(count)
  CAUSES.forEach((cause, e) => {
    if (classShare(cause, kind) === 0) return
    const at = levelDensity(causes[e]!, kind, evidence, knowledge)
    for (let i = 0; i < count; i++) sum[i]! += causes[e]!.prior * at(from + i * COARSE)
  })
  return sum
}

interface Columns { readonly classOf: Uint8Array; readonly level: Float64Array; readonly steps: readonly number[] }

function layColumns(
  evidence: Evidence, gauge: readonly GaugeEvidence[], states: StateSpace, knowledge: Knowledge,
  classes: readonly EngineClass[], causes: readonly CausePrior[], leakage: Float64Array, refine: number,
): Columns {
  const usual = faultChance(evidence.cylinders.length, knowledge)
  const read = gauge.flatMap(({ dry }, cylinder) => (dry === null ? [] : [{ dry, cylinder, ...roughlyFaulty(evidence.cylinders[cylinder]!, usual, states, knowledge) }]))
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
  const rough = roughScores(read, { first: from, step: COARSE, count: Math.ceil((to - from) / COARSE) + 1 }, classes, states)
  // classes that differ in the prior of own states alone share what is expected of their level
  const expected = new Map<string, Float64Array>()
  const scores = rough.map((row, c) => {
    const kind = classes[c]!
    const key = kind.lowBank === null ? String(kind.commonLoss) : 'bank'
    let densities = expected.get(key)
    if (densities === undefined) expected.set(key, (densities = levelDensities(kind, causes, evidence, knowledge, from, row.length)))
    // wrong notes are rare, and what they explain only air shows: laid as widely as right ones
    const share = kind.swap === null ? kind.share : 1
    return row.map((r, i) => r + leakage[c]! + Math.log(share * densities[i]! + 1e-300))
  })
  const kept: { c: number; first: number; last: number }[] = []
  const peaks = scores.map((s) => s.reduce((a, b) => Math.max(a, b), -Infinity))
  const best = Math.max(...peaks)
  // what else was found out may yet speak for a worn engine or against one
  const moreThanGauge = evidence.engine.length > 0 || evidence.cylinders.some((c) => c.leakage.length > 0)
  scores.forEach((score, c) => {
    const { tendency, swap } = classes[c]!
    const open = moreThanGauge && tendency === 0 && swap === null && peaks[c]! > best - KEEP_CLASS
    const from = open ? Math.min(best, peaks[c]! + KEEP_NATS - KEEP_WITHIN) - KEEP_NATS : best - KEEP_NATS
    const first = score.findIndex((s) => s > from)
    if (first >= 0) kept.push({ c, first, last: score.findLastIndex((s) => s > from) })
  })
  const classOf: number[] = [], level: number[] = []
  for (const { c, first, last } of kept) {
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

/** Percent lost by sound cylinders and their scatter, for a first search; what leaks may lose anything. */
const SOUND_PERCENT = { mean: 6, sd: 8 } as const
/** What is clearly heard elsewhere than at the filler is so many times likelier from a fault. */
const HEARD_ODDS = 15
const MOST_ROUGHLY = 0.95

/** How likely a cylinder is faulty by all but its pressures, in an engine not worn and in an evenly worn one. */
interface Roughly { readonly faulty: number; readonly inWorn: number }

/**
 * A first guess of that: where every cylinder leaks or shows a fault, the level lies above all readings, and must be looked for there. What a
 * cylinder of a worn engine loses past its rings says nothing of it.
 */
function roughlyFaulty(cylinder: CylinderEvidence, usual: number, states: StateSpace, knowledge: Knowledge): Roughly {
  let lost = 1, heard = 1
  for (const { percentAtReference: percent, heard: at } of cylinder.leakage) {
    const away = percent === null ? 0 : Math.max(0, (percent - SOUND_PERCENT.mean) / SOUND_PERCENT.sd)
    if (percent !== null) lost = Math.max(lost, Math.exp(Math.min(30, 0.5 * away * away)) * SOUND_PERCENT.sd * Math.sqrt(2 * Math.PI) / 100)
    if (PLACES.some((place) => place !== 'crankcase' && place !== 'neighbour' && (at[place] ?? 0) >= 2)) heard = HEARD_ODDS
  }
  const seen = heard * faultyByLooks(weighLooks(cylinder, states, knowledge), states)
  const chance = (odds: number): number => Math.max(usual, Math.min(MOST_ROUGHLY, usual * odds / (1 - usual + usual * odds)))
  return { faulty: chance(lost * seen), inWorn: chance(seen) }
}

/** How many times likelier what was seen is from the fault that it fits best than from a sound cylinder. */
function faultyByLooks(looks: Looks | null, { own, weight, bridgeLevel }: StateSpace): number {
  if (looks === null) return 1
  const byOwn = new Float64Array(OWN_COUNT)
  for (let s = 0; s < own.length; s++) if (bridgeLevel[s] === 0) byOwn[own[s]!]! += weight[s]! * looks.both[s]!
  return byOwn.subarray(1).reduce((most, p) => Math.max(most, p), 0) / byOwn[0]!
}

/** Logarithm of the dry readings' likelihood for each class and level, each cylinder's own state summed out roughly. */
function roughScores(read: readonly ({ readonly dry: Mixture; readonly cylinder: number } & Roughly)[], levels: Ladder, classes: readonly EngineClass[], states: StateSpace): Float64Array[] {
  const shapes = lossShapes(states)
  const { count } = levels
  const scores = classes.map(() => new Float64Array(count))
  const density = new Float64Array(count), sound = new Float64Array(count), worn = new Float64Array(count)
  const byOwn = shapes.byOwn.map(() => new Float64Array(count))
  const asked = [0, ...new Set(classes.map((kind) => kind.tendency).filter((t) => t !== 0))]
  for (const { dry: mixture, cylinder, faulty, inWorn } of read) {
    for (const own of asked) byOwn[own]!.fill(0)
    for (let r = 0; r < shapes.loss.length; r++) {
      const into = r === shapes.soundRow ? sound : density
      densitiesThrough(mixture, classes[0]!.sisterVariance + COARSE ** 2 / 4 + shapes.variance[r]!, levels, shapes.loss[r]!, into, 0)
      for (const own of asked) {
        const w = shapes.byOwn[own]![r]!
        if (w !== 0) for (let at = 0; at < count; at++) byOwn[own]![at]! += w * into[at]!
      }
    }
    classes.forEach((kind, c) => {
      const { tendency, each, commonLoss, sisterVariance } = kind
      const lower = bankLoss(kind, cylinder)
      if (commonLoss > 0 || lower > 0) densitiesThrough(mixture, sisterVariance + COARSE ** 2 / 4, levels, lower, worn, 0)
      const own = commonLoss > 0 || lower > 0 ? worn : sound
      const prone = byOwn[tendency]!, chance = commonLoss > 0 ? inWorn : faulty
      for (let at = 0; at < count; at++) {
        const base = (1 - chance) * own[at]! + chance * byOwn[0]![at]!
        scores[c]![at]! += Math.log(1e-30 + (tendency === 0 ? base : (1 - each) * base + each * prone[at]!))
      }
    })
  }
  return scores
}

interface Shapes { readonly loss: Float64Array; readonly variance: Float64Array; readonly soundRow: number; readonly byOwn: readonly Float64Array[] }
const shapesOf = new WeakMap<StateSpace, Shapes>()

/** Distribution of losses by own fault over the single states; `byOwn[0]` is the mean over all faults. */
function lossShapes(states: StateSpace): Shapes {
  const known = shapesOf.get(states)
  if (known !== undefined) return known
  const rows = [...new Set(Array.from(states.lossRow).filter((_, s) => states.bridgeLevel[s] === 0 && states.second[s] === 0))]
  const place = new Map(rows.map((r, i) => [r, i]))
  const byOwn = Array.from({ length: FAULTS.length + 1 }, () => new Float64Array(rows.length))
  for (let s = 0; s < states.count; s++) {
    if (states.bridgeLevel[s] !== 0 || states.second[s] !== 0 || states.own[s] === 0) continue
    byOwn[states.own[s]!]![place.get(states.lossRow[s]!)!]! += states.weight[s]!
    byOwn[0]![place.get(states.lossRow[s]!)!]! += states.weight[s]! / FAULTS.length
  }
  const shapes = {
    loss: Float64Array.from(rows, (r) => states.lossRows[r]!.mean), variance: Float64Array.from(rows, (r) => states.lossRows[r]!.sd ** 2),
    soundRow: rows.findIndex((r) => states.lossRows[r]!.mean === 0), byOwn,
  }
  shapesOf.set(states, shapes)
  return shapes
}

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
