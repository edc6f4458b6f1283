import { FAULTS, PLACES } from '../knowledge/faults.ts'
import { heardElsewhere, heardPart, percentOf } from '../model/leakage.ts'
import { PLACE_INDEX } from '../model/listening.ts'
import { isDead, pullOf, runningWhenDead } from '../model/valve-train.ts'
import type { Inference } from '../model/posterior.ts'
import type { Outcomes } from './information.ts'
import { normalBelow } from '../rules/normal.ts'

/** Edges of the percentage at the reference tester between outcomes of a leakage test. */
const PERCENT_EDGES = [7, 12, 18, 26, 40, 65]

/** How a leakage test is done: with the rockers slack, with oil in. */
export interface LeakageManner {
  readonly slack?: boolean
  readonly wet?: boolean
}

/** Leakage with listening: band of percent x where it is heard clearest (or nowhere). */
export function leakageOutcomes(inference: Inference, { slack = false, wet = false }: LeakageManner = {}): Outcomes {
  const { space } = inference
  const { states, knowledge, ears } = space
  const bands = PERCENT_EDGES.length + 1
  const spots = PLACES.length + 1
  const count = bands * spots
  const memo = new Map<number, Float64Array>()
  const heard = new Float64Array(PLACES.length), spot = new Float64Array(spots)
  const compute = (rowIndex: number, worn: number): Float64Array => {
    const healthy = inference.healthy[worn]!.area * (wet ? (space.grid.classes.find(({ commonLoss }) => commonLoss > 0 === (worn === 1)) ?? space.grid.classes[0]!).leakWhenWet.part : 1)
    const row = states.leaks[rowIndex]!
    const stopped = slack ? row.stopsWithSlackRockers : 0, sealed = wet ? row.sealedByOil : 0
    const left = Math.max(0, row.total - stopped - sealed)
    const total = left + healthy
    const percent = percentOf(space.curve, total)
    const slope = percentOf(space.curve, total * 1.1) - percent
    const sdLog = Math.hypot(knowledge.leakageTest.sisters.value * healthy, knowledge.leakageTest.areaDispersion.value * left) / total
    const sd = Math.hypot(knowledge.leakageTest.percentNoise.value, slope / 0.0953 * sdLog)
    // chance that a place is heard clearly or louder, alone: the others are not
    const flows = heardPart(percent)
    let quiet = 1
    for (let p = 0; p < PLACES.length; p++) {
      const own = Math.max(0, row.at[p]! - (p === PLACE_INDEX.crankcase ? sealed : p === PLACE_INDEX.neighbour ? 0 : stopped))
      const area = flows * (own + (p === PLACE_INDEX.crankcase ? healthy : 0)) + knowledge.listening.seepage.value + heardElsewhere(flows * (left - own), knowledge)
      heard[p] = ears.chance(p, 2, area) + ears.chance(p, 3, area)
      quiet *= 1 - heard[p]!
    }
    let sum = 0
    for (let p = 0; p < spots; p++) {
      spot[p] = (p < PLACES.length ? quiet * heard[p]! / Math.max(1e-9, 1 - heard[p]!) : quiet) + 0.002
      sum += spot[p]!
    }
    const out = new Float64Array(count)
    let below = 0
    for (let b = 0; b < bands; b++) {
      const upTo = b < PERCENT_EDGES.length ? normalBelow((PERCENT_EDGES[b]! - percent) / sd) : 1
      for (let p = 0; p < spots; p++) out[b * spots + p] = Math.max(0, upTo - below) * spot[p]! / sum
      below = upTo
    }
    return out
  }
  return {
    count,
    table: (s, worn, out) => {
      const row = 2 * states.leakRow[s]! + worn
      let known = memo.get(row)
      if (known === undefined) memo.set(row, (known = compute(states.leakRow[s]!, worn)))
      out.set(known)
    },
  }
}

/** Rise with oil in eight bands beyond what the room of the oil makes. Where next to nothing is compressed a gauge shows no rise. */
export function wetOutcomes(inference: Inference): Outcomes {
  const edges = [-0.04, 0.03, 0.08, 0.14, 0.22, 0.34, 0.5]
  const { states, knowledge } = inference.space
  const mark = knowledge.noise.additivePa.value / 4, { spread } = knowledge.noise.belowFirstMark.value
  return {
    count: edges.length + 1,
    table: (s, worn, out) => {
      const coarse = Math.min(spread, mark / Math.exp(inference.level - states.loss[s]!))
      const sd = Math.hypot(0.035, Math.SQRT2 * coarse, knowledge.oil.noise.value, states.sealedScatter[s]!)
      bandsOf(edges, states.sealed[s]! + inference.healthy[worn]!.sealed - inference.healthy[0].sealed, sd, out)
    },
  }
}

/** Edges of lost pressure (natural logarithm) between outcomes. */
const LOSS_EDGES = [-0.06, 0.05, 0.09, 0.14, 0.22, 0.35, 0.55, 0.9, 1.5]

/** Dry pressure against its sisters, in ten bands of lost pressure. */
export function dryOutcomes(inference: Inference): Outcomes {
  const { states, knowledge } = inference.space
  return {
    count: LOSS_EDGES.length + 1,
    table: (s, _worn, out) => bandsOf(LOSS_EDGES, states.loss[s]!, Math.hypot(knowledge.noise.sisters.value, 0.015, states.scatter[s]!), out),
  }
}

/** A repeat within so much of the first reading (logarithm) agrees with it. */
const SAME = 0.05

/**
 * The same reading again: if the first was right it shows the same; if it was a bad seat, a slip or did not hold, it shows what the cylinder
 * has, in bands of lost pressure, or now and then the same once more.
 */
export function repeatOutcomes(inference: Inference, cylinder: number): Outcomes | null {
  const dry = inference.gauge[cylinder]!.dry
  if (dry === null) return null
  const { states, knowledge } = inference.space
  const { level } = inference
  const lost = level - dry[1]!
  const edges = [...LOSS_EDGES.filter((edge) => Math.abs(edge - lost) > SAME), lost - SAME, lost + SAME].sort((a, b) => a - b)
  const repeatability = knowledge.noise.repeatability.value, wrongAgain = knowledge.noise.wrongAgain.value
  const same = new Float64Array(edges.length + 1)
  bandsOf(edges, lost, Math.SQRT2 * repeatability, same)
  return {
    count: edges.length + 1,
    table: (s, _worn, out) => {
      const expected = level - states.loss[s]!
      const variance = knowledge.noise.sisters.value ** 2 + states.scatter[s]! ** 2
      let good = 0, all = 0
      for (let i = 0; i < dry.length; i += 3) {
        const v = dry[i + 2]! + variance
        const density = dry[i]! * Math.exp(-0.5 * (expected - dry[i + 1]!) ** 2 / v) / Math.sqrt(v)
        all += density
        if (i === 0) good = density
      }
      const trust = all > 0 ? good / all : 1
      const again = trust + (1 - trust) * wrongAgain
      bandsOf(edges, states.loss[s]!, Math.hypot(repeatability, Math.sqrt(variance)), out)
      for (let o = 0; o < out.length; o++) out[o] = again * same[o]! + (1 - again) * out[o]!
    },
  }
}

/** Cranking current against the sisters: as dry pressure, with the scatter of the trace. */
export function currentOutcomes(inference: Inference): Outcomes {
  const { states, knowledge } = inference.space
  const { traceSpread, traceUsable } = knowledge.stopping
  const bands = LOSS_EDGES.length + 1
  return {
    count: bands + 1,
    table: (s, _worn, out) => {
      bandsOf(LOSS_EDGES, states.loss[s]!, Math.hypot(traceSpread.value, knowledge.noise.sisters.value, states.scatter[s]!), out)
      for (let b = 0; b < bands; b++) out[b]! *= traceUsable.value
      out[bands] = 1 - traceUsable.value
    },
  }
}

/** Running compression against the sisters: a leak costs less when the engine turns fast. */
export function runningOutcomes(inference: Inference): Outcomes {
  const { states, knowledge } = inference.space
  const part = knowledge.running.leakPart.value, partSpread = knowledge.running.leakPartSpread.value
  return {
    count: LOSS_EDGES.length + 1,
    table: (s, _worn, out) => {
      if (isDead(states.own[s]!)) {
        const sum = new Float64Array(out.length)
        for (const [weight, mean, sd] of runningWhenDead(s, states, knowledge)) {
          bandsOf(LOSS_EDGES, -mean, sd, out)
          for (let o = 0; o < out.length; o++) sum[o]! += weight * out[o]!
        }
        out.set(sum)
        return
      }
      const scatter = part * states.scatter[s]! + partSpread * states.loss[s]!
      bandsOf(LOSS_EDGES, part * states.loss[s]!, Math.hypot(0.03, knowledge.noise.sisters.value, scatter), out)
    },
  }
}

/** Power balance: speed falls not at all, little, or as with the sisters. An ignition fault imitates a dead cylinder. */
export function balanceOutcomes(inference: Inference): Outcomes {
  const { states, knowledge } = inference.space
  const { prior, deadDrop, dropSpread } = knowledge.ignition
  const ill = new Float64Array(3), well = new Float64Array(3)
  return {
    count: 3,
    table: (s, _worn, out) => {
      const pull = pullOf(s, states, knowledge)
      bandsOf([0.35, 0.75], pull, Math.hypot(dropSpread.value, 0.3 * (1 - pull)), well)
      bandsOf([0.35, 0.75], deadDrop.value, 1.5 * dropSpread.value, ill)
      for (let o = 0; o < 3; o++) out[o] = (1 - prior.value) * well[o]! + prior.value * ill[o]!
    },
  }
}

/** Outcomes that depend on the own fault alone: chances by fault index (0 sound). */
export function byFault(inference: Inference, chances: readonly (readonly number[])[]): Outcomes {
  const { states } = inference.space
  const count = chances[0]!.length
  return {
    count,
    table: (s, _worn, out) => {
      const first = chances[states.own[s]!]!
      const second = states.second[s] === 0 ? first : chances[states.second[s]!]!
      for (let o = 0; o < count; o++) out[o] = (first[o]! + second[o]!) / 2
    },
  }
}

/** Yes or no, with a chance that may depend on everything about the state. */
export function yesNo(chance: (s: number) => number): Outcomes {
  return { count: 2, table: (s, _worn, out) => { out[0] = chance(s); out[1] = 1 - out[0] } }
}

/** Index of a fault in labels and own states. */
export const OWN_INDEX = Object.fromEntries(FAULTS.map((f, i) => [f, i + 1])) as Readonly<Record<(typeof FAULTS)[number], number>>

/** Probability of each band between edges, under a normal distribution, into `out`. */
export function bandsOf(edges: readonly number[], mean: number, sd: number, out: Float64Array): void {
  let below = 0
  for (let b = 0; b <= edges.length; b++) {
    const upTo = b < edges.length ? normalBelow((edges[b]! - mean) / sd) : 1
    out[b] = Math.max(0, upTo - below)
    below = upTo
  }
}
