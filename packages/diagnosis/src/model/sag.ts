import type { CompressionEvidence } from '../admission/types.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'

/** What a reading lost because the starter had slowed down by then: mean and variance of a logarithm. */
export interface Sag {
  readonly shift: number
  readonly variance: number
}

/**
 * What each reading (by its number) lost to a tiring battery or a cooling engine, from the order taken: every cranking costs the next one
 * a little. How much is weighed over a grid (Bayes' rule): by how well the cylinders agree once it is given back, a faulty one standing out
 * either way, and by what a cylinder read twice has lost in between.
 *
 * @param readings cranking readings of the judged session, dry and wet; without the order of all of them nothing is known
 */
export function sagOf(readings: readonly CompressionEvidence[], knowledge: Knowledge): ReadonlyMap<number, Sag> {
  const found = new Map<number, Sag>()
  if (readings.length < LEAST_READINGS || readings.some(({ seq, pa }) => seq === null || pa <= 0)) return found
  const order = readings.toSorted((a, b) => a.seq! - b.seq!)
  if (order.some(({ seq }, i) => i > 0 && seq === order[i - 1]!.seq)) return found
  const dry = order.flatMap(({ kind, cylinder, pa, sdPa, resolutionPa }, at): Point[] => (kind === 'dry' ? [{ at, cylinder, log: Math.log(pa), variance: Math.hypot(sdPa, resolutionPa / Math.sqrt(12)) ** 2 / pa ** 2 + knowledge.noise.repeatability.value ** 2 }] : []))
  const firsts = dry.filter(({ cylinder }, i) => dry.findIndex((other) => other.cylinder === cylinder) === i)
  let total = 0, none = 0, mean = 0, square = 0
  for (const [each, before] of knowledge.noise.sag.value.chances) {
    const weight = before * agreement(firsts, each, knowledge) * lostBetween(dry, each, knowledge)
    total += weight
    if (each === 0) none += weight
    mean += weight * each
    square += weight * each * each
  }
  if (!(1 - none / total >= LEAST_CHANCE)) return found
  mean /= total
  const variance = Math.max(0, square / total - mean * mean)
  order.forEach(({ reading }, at) => found.set(reading, { shift: mean * at, variance: variance * at * at }))
  return found
}

interface Point {
  /** How many crankings came before. */
  readonly at: number
  readonly cylinder: number
  readonly log: number
  readonly variance: number
}

const LEAST_READINGS = 3
/** A sag less likely than this moves nothing: what sisters differ by is most of it. */
const LEAST_CHANCE = 0.3
const LEVELS = 41

/** Likelihood of the cylinders' readings once the sag is given back, summed over the level that they share. */
function agreement(firsts: readonly Point[], sag: number, knowledge: Knowledge): number {
  const logs = firsts.map(({ log, at }) => log + sag * at)
  const top = Math.max(...logs)
  const sisters = knowledge.noise.sisters.value ** 2
  const { oddChance, oddRange } = knowledge.noise.sag.value
  let sum = 0
  for (let l = 0; l < LEVELS; l++) {
    const level = top + 0.05 - (0.25 * l) / (LEVELS - 1)
    sum += firsts.reduce((product, { variance }, i) => {
      const gap = logs[i]! - level
      return product * ((1 - oddChance) * normal(gap, sisters + variance) + (gap < 0 && gap > -oddRange ? oddChance / oddRange : 1e-3))
    }, 1)
  }
  return sum
}

/** Likelihood of what cylinders read more than once have lost in between. */
function lostBetween(dry: readonly Point[], sag: number, knowledge: Knowledge): number {
  const { wrongChance, wrongSpread } = knowledge.noise.sag.value
  let product = 1
  dry.forEach((again, i) => {
    const first = dry.findIndex(({ cylinder }) => cylinder === again.cylinder)
    if (first === i) return
    const { log, at, variance } = dry[first]!
    const gap = again.log - log + sag * (again.at - at)
    product *= (1 - wrongChance) * normal(gap, variance + again.variance) + wrongChance * normal(gap, wrongSpread ** 2)
  })
  return product
}

function normal(gap: number, variance: number): number {
  return Math.exp((-0.5 * gap * gap) / variance) / Math.sqrt(2 * Math.PI * variance)
}
