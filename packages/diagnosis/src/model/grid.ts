import { CAUSES } from '../knowledge/causes.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { densityThrough, type Mixture } from './mixture.ts'
import type { Evidence } from './evidence.ts'
import type { StateSpace } from './states.ts'

/** A kind of engine as far as a cylinder's readings go: not worn, or one of the degrees of even wear. */
export interface EngineClass {
  readonly commonLoss: number
  readonly sisterVariance: number
  readonly sealed: number
  readonly sealedVariance: number
}

/**
 * The cells of the common unknowns: class of engine x level m (logarithm of the healthy reading) x rise v by the room oil
 * takes x healthy leak. Cell index = ((class * levels + m) * rises + v) * leaks + l. `prior[cause]` sums to the prior of
 * that cause over the classes it may have.
 */
export interface Grid {
  readonly classes: readonly EngineClass[]
  readonly levels: Float64Array
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
  /** Rise from dry to wet and its variance; null unless both were read. */
  readonly rise: { readonly log: number; readonly variance: number; readonly expected: { readonly mean: number; readonly spread: number } } | null
}

const KEEP_NATS = 16
/** Step of the healthy leak in its logarithm: below the scatter of sisters with the gauge's error. */
const LEAK_STEP = 0.35

/** Lays the grid where the prior and the readings leave any probability. */
export function layGrid(evidence: Evidence, gauge: readonly GaugeEvidence[], states: StateSpace, knowledge: Knowledge, refine = 1): Grid {
  const classes = engineClasses(knowledge)
  const causes = causePriors(evidence, knowledge)
  const levels = layLevels(evidence, gauge, states, knowledge, causes, refine)
  const rises = layRises(gauge, states, knowledge, refine)
  const anyLeak = evidence.cylinders.some((c) => c.leakage.length > 0)
  const leak = healthyLeaks(states, knowledge, classes, anyLeak, refine)
  const leakCount = leak.areas.length
  const cells = classes.length * levels.points.length * rises.points.length * leakCount
  const prior = CAUSES.map((cause, e) => {
    const array = new Float64Array(cells)
    classes.forEach((_, c) => {
      const share = cause === 'worn-evenly' ? (c === 0 ? 0 : knowledge.wornEvenly.weights.value[c - 1]!) : c === 0 ? 1 : 0
      if (share === 0) return
      for (let m = 0; m < levels.points.length; m++) {
        for (let v = 0; v < rises.points.length; v++) {
          for (let l = leak.from[c]!; l < leak.to[c]!; l++) {
            array[((c * levels.points.length + m) * rises.points.length + v) * leakCount + l] =
              causes[e]!.prior * share * levelDensity(levels.points[m]!, causes[e]!, classes[c]!, evidence, knowledge) * levels.step *
              rises.weights[v]! * leak.weights[c]![l]!
          }
        }
      }
    })
    return array
  })
  return { classes, levels: levels.points, rises: rises.points, healthyAreas: leak.areas, leakCount, leakFrom: leak.from, leakTo: leak.to, cells, prior }
}

function engineClasses(knowledge: Knowledge): EngineClass[] {
  const sister = knowledge.noise.sisters.value
  const worn = knowledge.wornEvenly
  return [
    { commonLoss: 0, sisterVariance: sister ** 2, sealed: knowledge.oil.healthySeal.value, sealedVariance: 0 },
    ...worn.losses.value.map((loss) => ({
      commonLoss: loss, sisterVariance: worn.sisterSpread.value ** 2,
      sealed: knowledge.oil.healthySeal.value + worn.sealedByOil.value.mean * loss, sealedVariance: (worn.sealedByOil.value.spread * loss) ** 2,
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

function levelDensity(m: number, cause: CausePrior, kind: EngineClass, evidence: Evidence, knowledge: Knowledge): number {
  const worn = kind.commonLoss > 0
  const shift = worn ? -kind.commonLoss : cause.shift
  const spread = worn ? knowledge.noise.lossDispersion.value * kind.commonLoss : cause.spread
  const variance = evidence.expected.spread ** 2 + spread ** 2
  const gap = m - evidence.expected.logPa - shift
  return Math.exp(-0.5 * gap * gap / variance) / Math.sqrt(2 * Math.PI * variance)
}

function layLevels(
  evidence: Evidence, gauge: readonly GaugeEvidence[], states: StateSpace, knowledge: Knowledge, causes: readonly CausePrior[], refine: number,
): { points: Float64Array; step: number } {
  const read = gauge.filter((g) => g.dry !== null)
  if (read.length === 0) return { points: Float64Array.of(evidence.expected.logPa), step: 1 }
  const noise = knowledge.noise
  const scatter = Math.sqrt(noise.sisters.value ** 2 + noise.repeatability.value ** 2)
  const step = 0.9 * scatter / Math.sqrt(read.length) / refine
  const deepest = Math.max(0, ...knowledge.wornEvenly.losses.value)
  const widest = Math.max(...causes.map((c) => Math.hypot(c.spread, evidence.expected.spread)))
  const low = evidence.expected.logPa - 4 * widest - deepest
  const high = evidence.expected.logPa + 4 * widest
  const highest = Math.max(...read.map((g) => g.dry![1]!))
  const from = Math.min(low, highest - 0.1)
  const to = Math.max(high, highest + 0.1)
  const coarse = 0.03
  const count = Math.ceil((to - from) / coarse) + 1
  const score = new Float64Array(count)
  const singles = marginalLosses(states)
  let best = -Infinity
  for (let i = 0; i < count; i++) {
    const m = from + i * coarse
    let sum = Math.log(widestPrior(m, causes, evidence, knowledge) + 1e-12)
    for (const g of read) {
      let p = 0
      for (let r = 0; r < singles.loss.length; r++) {
        p += singles.weight[r]! * densityThrough(g.dry!, m - singles.loss[r]!, noise.sisters.value ** 2 + singles.scatter[r]! ** 2 + coarse ** 2 / 4)
      }
      sum += Math.log(p + 1e-30)
    }
    score[i] = sum
    if (sum > best) best = sum
  }
  let first = count, last = 0
  for (let i = 0; i < count; i++) {
    if (score[i]! > best - KEEP_NATS) {
      first = Math.min(first, i)
      last = Math.max(last, i)
    }
  }
  const start = from + (first - 0.5) * coarse
  const points = Math.max(3, Math.ceil((last - first + 1) * coarse / step))
  return { points: Float64Array.from({ length: points }, (_, i) => start + (i + 0.5) * step), step }
}

function widestPrior(m: number, causes: readonly CausePrior[], evidence: Evidence, knowledge: Knowledge): number {
  let sum = 0
  const plain = { commonLoss: 0, sisterVariance: 0, sealed: 0, sealedVariance: 0 }
  for (let e = 0; e < causes.length; e++) {
    if (CAUSES[e] !== 'worn-evenly') sum += causes[e]!.prior * levelDensity(m, causes[e]!, plain, evidence, knowledge)
    else for (const loss of knowledge.wornEvenly.losses.value) sum += causes[e]!.prior * levelDensity(m, causes[e]!, { ...plain, commonLoss: loss }, evidence, knowledge) / 3
  }
  return sum
}

/** Distribution of losses over all single states, faults by their prior: enough to see where the level can lie. */
function marginalLosses(states: StateSpace): { loss: number[]; weight: number[]; scatter: number[] } {
  const byLoss = new Map<number, { weight: number; scatter: number }>()
  for (let s = 0; s < states.count; s++) {
    if (states.bridgeLevel[s] !== 0 || states.second[s] !== 0) continue
    const w = states.own[s] === 0 ? 0.85 : 0.01 * states.weight[s]!
    const at = byLoss.get(states.loss[s]!)
    if (at) at.weight += w
    else byLoss.set(states.loss[s]!, { weight: w, scatter: states.scatter[s]! })
  }
  return { loss: [...byLoss.keys()], weight: [...byLoss.values()].map((v) => v.weight), scatter: [...byLoss.values()].map((v) => v.scatter) }
}

function layRises(gauge: readonly GaugeEvidence[], states: StateSpace, knowledge: Knowledge, refine: number): { points: Float64Array; weights: Float64Array } {
  const wet = gauge.filter((g) => g.rise !== null)
  if (wet.length === 0) return { points: Float64Array.of(0), weights: Float64Array.of(1) }
  const prior = wet[0]!.rise!.expected
  const step = 0.9 * Math.sqrt(knowledge.oil.noise.value ** 2 + 0.02 ** 2) / Math.sqrt(Math.min(4, wet.length)) / refine
  // the part that stays is between nothing and all of it: cut the normal at zero
  const from = Math.max(0, prior.mean - 3 * prior.spread)
  const count = Math.max(3, Math.ceil((prior.mean + 3 * prior.spread - from) / step))
  const all = Array.from({ length: count }, (_, i) => from + (i + 0.5) * step)
  const seals = marginalSeals(states)
  const worn = knowledge.wornEvenly
  const scores = all.map((v) => {
    let sum = -0.5 * ((v - prior.mean) / prior.spread) ** 2
    for (const g of wet) {
      const { log, variance, expected } = g.rise!
      const center = v + expected.mean - prior.mean
      let p = 1e-4
      for (let r = 0; r < seals.length; r++) {
        for (let c = 0; c <= worn.losses.value.length; c++) {
          const extra = knowledge.oil.healthySeal.value + (c === 0 ? 0 : worn.sealedByOil.value.mean * worn.losses.value[c - 1]!)
          const z = log - center - extra - seals[r]!
          p += 0.05 * Math.exp(-0.5 * z * z / (variance + 0.003))
        }
      }
      sum += Math.log(p)
    }
    return sum
  })
  const best = Math.max(...scores)
  const points = all.filter((_, i) => scores[i]! > best - KEEP_NATS / 2)
  const weights = points.map((v) => Math.exp(-0.5 * ((v - prior.mean) / prior.spread) ** 2))
  const total = all.reduce((s, v) => s + Math.exp(-0.5 * ((v - prior.mean) / prior.spread) ** 2), 0)
  return { points: Float64Array.from(points), weights: Float64Array.from(weights, (w) => w / total) }
}

function marginalSeals(states: StateSpace): number[] {
  const seen = new Set<number>()
  for (let s = 0; s < states.count; s++) if (states.bridgeLevel[s] === 0 && states.second[s] === 0) seen.add(Math.round(states.sealed[s]! * 50) / 50)
  return [...seen].filter((v) => v < 1)
}

function healthyLeaks(
  states: StateSpace, knowledge: Knowledge, classes: readonly EngineClass[], any: boolean, refine: number,
): { areas: Float64Array; weights: Float64Array[]; from: Int32Array; to: Int32Array } {
  const { median, spread } = knowledge.leakageTest.healthyAreaShare.value
  const base = median * states.areaPerLoss * knowledge.noise.crankingLossPerLeak.value
  const centers = classes.map((kind) => base + kind.commonLoss * states.areaPerLoss)
  const sds = classes.map((kind) => kind.commonLoss > 0 ? knowledge.wornEvenly.leakSpread.value : spread)
  const from = new Int32Array(classes.length)
  const to = new Int32Array(classes.length).fill(1)
  if (!any) return { areas: Float64Array.of(base), weights: classes.map(() => Float64Array.of(1)), from, to }
  const step = LEAK_STEP / refine
  const low = Math.log(base) - 2.6 * spread
  const high = Math.log(Math.max(...centers)) + 2.2 * sds[sds.length - 1]!
  const areas = Float64Array.from({ length: Math.ceil((high - low) / step) + 1 }, (_, i) => Math.exp(low + i * step))
  const weights = classes.map((_, c) => {
    const w = Float64Array.from(areas, (a) => Math.exp(-0.5 * (Math.log(a / centers[c]!) / sds[c]!) ** 2))
    const sum = w.reduce((t, x) => t + x, 0)
    return w.map((x) => (x < 0.02 * w.reduce((t, y) => Math.max(t, y), 0) ? 0 : x / sum))
  })
  weights.forEach((w, c) => {
    from[c] = w.findIndex((x) => x > 0)
    to[c] = w.length - [...w].reverse().findIndex((x) => x > 0)
  })
  return { areas, weights, from, to }
}
