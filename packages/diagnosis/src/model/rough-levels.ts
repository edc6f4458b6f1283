import { FAULTS, PLACES } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { CylinderEvidence, Evidence } from './evidence.ts'
import type { EngineClass, GaugeEvidence } from './grid.ts'
import { weighLooks, type Looks } from './looks.ts'
import { densitiesThrough, type Ladder, type Mixture } from './mixture.ts'
import { bankLoss } from './one-bank.ts'
import { faultChance } from './past.ts'
import { OWN_COUNT, type StateSpace } from './states.ts'

/** Levels this many nats below the best cannot come back into play; so many more for each cylinder that is taken for faulty. */
const KEEP_NATS = 8.5
const KEEP_FAULTY = 1
/** A class of engine this far below comes back into play when leakage or signs speak for it; columns so far below its own best do not. */
const KEEP_CLASS = 16
const KEEP_WITHIN = 7

/**
 * Where the level can lie: for each class of engine the first and last step of a coarse lattice that prior and readings leave; first above last where
 * they leave none.
 *
 * @param beforehand logarithm of the prior of class and level, by class, what leakage says of the class included
 */
export function levelsLeft(
  evidence: Evidence, gauge: readonly GaugeEvidence[], dry: readonly Reading[], lattice: Ladder, classes: readonly EngineClass[], beforehand: readonly Float64Array[],
  states: StateSpace, knowledge: Knowledge,
): { first: number; last: number }[] {
  const usual = faultChance(evidence.cylinders.length, knowledge)
  const unknown = dry.map((): Roughly => ({ faulty: usual, inWorn: usual }))
  const guessed = dry.map(({ cylinder }) => roughlyFaulty(evidence.cylinders[cylinder]!, gauge[cylinder]!.rise, usual, states, knowledge))
  // the first guess of who is faulty may be far off: the level is laid where either leaves it, with it and without
  const guesses = guessed.some(({ faulty }) => faulty > usual) ? [unknown, guessed] : [unknown]
  // what else was found out may yet speak for a worn engine or against one
  const moreThanGauge = evidence.engine.length > 0 || evidence.cylinders.some((c) => c.leakage.length > 0)
  const kept = classes.map(() => ({ first: Infinity, last: -Infinity }))
  roughScores(dry, guesses, lattice, classes, states).forEach((rough, g) => {
    const scores = rough.map((row, c) => row.map((r, i) => r + beforehand[c]![i]!))
    const peaks = scores.map((s) => s.reduce((a, b) => Math.max(a, b), -Infinity))
    const best = Math.max(...peaks)
    // of each that is taken for faulty this does not know which fault, and so how much it costs
    const keep = KEEP_NATS + KEEP_FAULTY * guesses[g]!.filter(({ faulty }) => faulty > 0.5).length
    scores.forEach((score, c) => {
      const { tendency, swap } = classes[c]!
      const open = moreThanGauge && tendency === 0 && swap === null && peaks[c]! > best - KEEP_CLASS
      const least = open ? Math.min(best - keep, peaks[c]! - KEEP_WITHIN) : best - keep
      const first = score.findIndex((s) => s > least)
      if (first < 0) return
      kept[c]!.first = Math.min(kept[c]!.first, first)
      kept[c]!.last = Math.max(kept[c]!.last, score.findLastIndex((s) => s > least))
    })
  })
  return kept
}

/** Percent lost by sound cylinders and their scatter, for a first search; what leaks may lose anything. */
const SOUND_PERCENT = { mean: 6, sd: 8 } as const
/** What is clearly heard elsewhere than at the filler is so many times likelier from a fault. */
const HEARD_ODDS = 15
const MOST_ROUGHLY = 0.995
const MOST_ODDS = 1e9

/** A cylinder's dry readings. */
interface Reading { readonly dry: Mixture; readonly cylinder: number }

/** How likely a cylinder is faulty by all but its pressures, in an engine not worn and in an evenly worn one. */
interface Roughly { readonly faulty: number; readonly inWorn: number }

/**
 * A first guess of that: where every cylinder leaks or shows a fault, the level lies above all readings, and must be looked for there. What a
 * cylinder of a worn engine loses past its rings says nothing of it.
 */
function roughlyFaulty(cylinder: CylinderEvidence, rise: GaugeEvidence['rise'], usual: number, states: StateSpace, knowledge: Knowledge): Roughly {
  let lost = 1, heard = 1
  for (const { percentAtReference: percent, heard: at } of cylinder.leakage) {
    const away = percent === null ? 0 : Math.max(0, (percent - SOUND_PERCENT.mean) / SOUND_PERCENT.sd)
    if (percent !== null) lost = Math.max(lost, Math.exp(Math.min(30, 0.5 * away * away)) * SOUND_PERCENT.sd * Math.sqrt(2 * Math.PI) / 100)
    if (PLACES.some((place) => place !== 'crankcase' && place !== 'neighbour' && (at[place] ?? 0) >= 2)) heard = HEARD_ODDS
  }
  // oil that brings back more than its room takes up seals rings
  const sealed = rise === null ? 0 : Math.max(0, (rise.log - rise.expected.mean) / Math.hypot(Math.sqrt(rise.variance), rise.expected.scatter, rise.expected.spread))
  lost *= Math.exp(Math.min(30, 0.5 * sealed * sealed))
  const seen = heard * faultyByLooks(weighLooks(cylinder, states, knowledge), states)
  const chance = (odds: number): number => Math.max(usual, Math.min(MOST_ROUGHLY, usual * odds / (1 - usual + usual * odds)))
  return { faulty: chance(lost * seen), inWorn: chance(seen) }
}

/** How many times likelier what was seen is from the fault that it fits best than from a sound cylinder. */
function faultyByLooks(looks: Looks | null, { own, weight, bridgeLevel }: StateSpace): number {
  if (looks === null) return 1
  const byOwn = new Float64Array(OWN_COUNT)
  for (let s = 0; s < own.length; s++) if (bridgeLevel[s] === 0) byOwn[own[s]!]! += weight[s]! * looks.both[s]!
  return Math.min(MOST_ODDS, byOwn.subarray(1).reduce((most, p) => Math.max(most, p), 0) / byOwn[0]!)
}

/** Logarithm of the dry readings' likelihood for each guess of who is faulty, class and level, each cylinder's own state summed out roughly. */
function roughScores(read: readonly Reading[], guesses: readonly (readonly Roughly[])[], levels: Ladder, classes: readonly EngineClass[], states: StateSpace): Float64Array[][] {
  const shapes = lossShapes(states)
  const { count } = levels
  const scores = guesses.map(() => classes.map(() => new Float64Array(count)))
  const density = new Float64Array(count), sound = new Float64Array(count), worn = new Float64Array(count)
  const byOwn = shapes.byOwn.map(() => new Float64Array(count))
  const asked = [0, ...new Set(classes.map((kind) => kind.tendency).filter((t) => t !== 0))]
  read.forEach(({ dry: mixture, cylinder }, k) => {
    for (const own of asked) byOwn[own]!.fill(0)
    for (let r = 0; r < shapes.loss.length; r++) {
      const into = r === shapes.soundRow ? sound : density
      densitiesThrough(mixture, classes[0]!.sisterVariance + levels.step ** 2 / 4 + shapes.variance[r]!, levels, shapes.loss[r]!, into, 0)
      for (const own of asked) {
        const w = shapes.byOwn[own]![r]!
        if (w !== 0) for (let at = 0; at < count; at++) byOwn[own]![at]! += w * into[at]!
      }
    }
    classes.forEach((kind, c) => {
      const { tendency, each, commonLoss, sisterVariance } = kind
      const lower = bankLoss(kind, cylinder)
      if (commonLoss > 0 || lower > 0) densitiesThrough(mixture, sisterVariance + levels.step ** 2 / 4, levels, lower, worn, 0)
      const own = commonLoss > 0 || lower > 0 ? worn : sound
      const prone = byOwn[tendency]!
      guesses.forEach((guess, g) => {
        const chance = commonLoss > 0 ? guess[k]!.inWorn : guess[k]!.faulty, into = scores[g]![c]!
        for (let at = 0; at < count; at++) {
          const base = (1 - chance) * own[at]! + chance * byOwn[0]![at]!
          into[at]! += Math.log(1e-30 + (tendency === 0 ? base : (1 - each) * base + each * prone[at]!))
        }
      })
    })
  })
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
