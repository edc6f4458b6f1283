import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Evidence } from './evidence.ts'
import type { EngineClass } from './grid.ts'
import { percentOf, tabulatePercent } from './leakage.ts'
import type { StateSpace } from './states.ts'

/** The grid of the healthy leak: areas in mm2, and for each class its weights and the part of the grid it can have. */
export interface HealthyLeaks {
  readonly areas: Float64Array
  readonly weights: readonly Float64Array[]
  readonly from: Int32Array
  readonly to: Int32Array
  /** What the readings speak for each class, roughly (natural logarithm). */
  readonly speaks: Float64Array
}

/** Areas this many nats below a class's best cannot come back into play. */
const KEEP_NATS = 8
/** Step against the width that prior and readings leave to the logarithm: a Gaussian sum this fine is good to 4e-5 of its value; readings of faulty cylinders cut sharper than they are counted. */
const STEP = 1.35
/** A cylinder that loses less says that the engine is not worn. */
const TIGHT_PERCENT = 12
/** The search for where the leak can lie takes this part of the readings for those of faulty or seeping cylinders, anywhere in so many percent. */
const OTHERWISE = { part: 0.5, percent: 30 } as const

/** Lays the grid of the leak that a sound cylinder of this engine has, where prior and readings leave any probability. */
export function healthyLeaks(evidence: Evidence, states: StateSpace, knowledge: Knowledge, classes: readonly EngineClass[], refine: number): HealthyLeaks {
  const { healthyLeak, sisters, percentNoise } = knowledge.leakageTest
  const base = healthyLeak.value.median * states.girth
  const count = classes.length
  if (evidence.cylinders.every((c) => c.leakage.length === 0)) {
    return { areas: Float64Array.of(base), weights: classes.map(() => Float64Array.of(1)), from: new Int32Array(count), to: new Int32Array(count).fill(1), speaks: new Float64Array(count) }
  }
  const curve = tabulatePercent(evidence)
  const slopeAt = (area: number): number => (percentOf(curve, area * 1.01) - percentOf(curve, area * 0.99)) / 0.02
  const read = evidence.cylinders.flatMap((c) => c.leakage.flatMap((r) => (r.percentAtReference === null ? [] : [{ percent: r.percentAtReference, part: r.wet ? classes[0]!.leakWhenWet.part : 1 }])))
  const centers = classes.map((kind) => base + kind.commonLoss * states.areaPerLoss)
  const sds = classes.map((kind) => (kind.commonLoss > 0 ? knowledge.wornEvenly.leakSpread.value : healthyLeak.value.spread))
  const one = Math.hypot(sisters.value, percentNoise.value / slopeAt(2 * base))
  // where no cylinder is tight the sum goes over the edge at which engines are called worn
  const edge = read.every(({ percent }) => percent > TIGHT_PERCENT) ? healthyLeak.value.sharpness ** 2 / 4 : 0
  const step = STEP / Math.sqrt(read.length / one ** 2 + 1 / Math.min(...sds) ** 2 + edge) / refine
  const low = Math.log(base) - 4.3 * healthyLeak.value.spread, high = Math.max(...centers.map((c, i) => Math.log(c) + 4.3 * sds[i]!))
  const areas = Float64Array.from({ length: Math.ceil((high - low) / step) + 1 }, (_, i) => Math.exp(low + i * step))
  const likelihood = Float64Array.from(areas, (area) => read.reduce((sum, { percent, part }) => {
    const sd = Math.hypot(percentNoise.value, sisters.value * slopeAt(part * area))
    const gap = (percent - percentOf(curve, part * area)) / sd
    return sum + Math.log((1 - OTHERWISE.part) * Math.exp(-0.5 * gap * gap) / sd + OTHERWISE.part / OTHERWISE.percent)
  }, 0))
  const from = new Int32Array(count), to = new Int32Array(count), speaks = new Float64Array(count)
  const weights = classes.map((_, c) => {
    const prior = Float64Array.from(areas, (a) => -0.5 * (Math.log(a / centers[c]!) / sds[c]!) ** 2 - (classes[c]!.commonLoss > 0 ? 0 : calledWorn(a / states.girth, knowledge)))
    const best = prior.reduce((most, p, i) => Math.max(most, p + likelihood[i]!), -Infinity)
    from[c] = prior.findIndex((p, i) => p + likelihood[i]! > best - KEEP_NATS)
    to[c] = prior.findLastIndex((p, i) => p + likelihood[i]! > best - KEEP_NATS) + 1
    const total = prior.reduce((sum, p) => sum + Math.exp(p), 0)
    speaks[c] = best + Math.log(prior.reduce((sum, p, i) => sum + Math.exp(p + likelihood[i]! - best), 0) / total)
    return prior.map((p) => Math.exp(p) / total)
  })
  return { areas, weights, from, to, speaks }
}

/** Nats by which a leak common to all cylinders (mm2 on 400 cm3) is less likely in an engine that nobody calls worn. */
function calledWorn(area: number, { leakageTest }: Knowledge): number {
  const { wornFrom, sharpness } = leakageTest.healthyLeak.value
  return Math.log1p((area / wornFrom) ** sharpness)
}
